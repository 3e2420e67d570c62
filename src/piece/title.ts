/** A title made of an id: `neck-left` is "Neck left". */
export function titleOf(id: string): string {
  const words = id.replace(/[-_\s]+/g, ' ').trim();
  return words === '' ? id : words.charAt(0).toUpperCase() + words.slice(1);
}
