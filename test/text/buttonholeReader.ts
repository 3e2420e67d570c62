/** Counts a row of buttonholes out of its own words: the holes' first stitches and all stitches it uses. */
export function countOutHoles(words: string): { readonly total: number; readonly firsts: number[] } {
  const over = Number(/buttonhole over (\d+)/.exec(words)?.[1]);
  const plain = words.replace(/buttonhole over \d+/, 'buttonhole');
  const flat = plain.replace(
    /\(([^)]*)\) (once|twice|(\d+) times)/g,
    (_all, inside: string, said: string, n?: string) =>
      Array.from({ length: n ? Number(n) : said === 'twice' ? 2 : 1 }, () => inside).join(', '),
  );
  let total = 0;
  const firsts: number[] = [];
  for (const part of flat.split(', ')) {
    const work = /^work (\d+)$/.exec(part);
    if (work) total += Number(work[1]);
    else if (part === 'buttonhole') {
      firsts.push(total + 1);
      total += over;
    } else throw new Error(`Odd words "${part}" in "${words}"`);
  }
  return { total, firsts };
}
