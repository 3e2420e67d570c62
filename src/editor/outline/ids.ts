/** An id that is not taken yet: the base itself, or the base with the lowest number from 2 on that is free. */
export function freshId(base: string, taken: Iterable<string>): string {
  const known = new Set(taken);
  if (!known.has(base)) return base;
  // What was numbered before is numbered on: neck-2 is followed by neck-3, not by neck-2-2.
  const stem = base.replace(/-\d+$/, '');
  let number = 2;
  while (known.has(`${stem}-${number}`)) number++;
  return `${stem}-${number}`;
}

/** An id made of a name: its letters and digits in lower case, hyphens between. */
export function idOf(name: string, otherwise: string): string {
  const words = name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .match(/[\p{L}\p{N}]+/gu);
  return words?.join('-') ?? otherwise;
}
