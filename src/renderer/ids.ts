/** Makes ids that hold only letters, figures, hyphens and underlines, each once: a second alike gets a number. */
export function idMaker(): (wish: string) => string {
  const made = new Set<string>();
  return (wish) => {
    const plain = wish.replaceAll(/[^A-Za-z0-9_-]+/g, '_');
    let id = plain;
    for (let n = 2; made.has(id); n++) id = `${plain}-${n}`;
    made.add(id);
    return id;
  };
}
