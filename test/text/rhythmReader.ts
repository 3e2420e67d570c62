/** Reads the words of a rhythm back to used and skipped openings. Knows nothing of how they were written. */
export function readRhythm(words: string): boolean[] {
  const whole = /^(?:pick up|knit up|knit) every [a-z ]+ \((\d+)\)$/.exec(words) ?? /^all (\d+)$/.exec(words);
  if (whole) return Array.from({ length: Number(whole[1]) }, () => true);
  return /repeat|times|twice|up/.test(words) ? readLong(words) : readShort(words);
}

function readLong(words: string): boolean[] {
  const used: boolean[] = [];
  let rest = words;
  const take = (pattern: RegExp): RegExpExecArray | null => {
    const found = pattern.exec(rest);
    if (found) rest = rest.slice(found[0].length);
    return found;
  };
  const times = (): number => {
    const found = take(/^(?:twice|(\d+) times)/);
    if (!found) throw new Error(`No number of times at "${rest}" in "${words}"`);
    return found[1] === undefined ? 2 : Number(found[1]);
  };
  const run = (): boolean[] => {
    const both = take(/^(?:pick up|knit up|knit) (\d+)(?:, skip (\d+))?/);
    if (both) return [...flags(Number(both[1]), true), ...flags(Number(both[2] ?? 0), false)];
    const skip = take(/^skip (\d+)/);
    if (!skip) throw new Error(`No run at "${rest}" in "${words}"`);
    return flags(Number(skip[1]), false);
  };
  while (rest !== '') {
    take(/^(?:; then |; )/);
    const star = take(/^(\*+)/)?.[1];
    if (star === undefined) {
      const once = run();
      const again = /^, (?:twice|\d+ times)/.test(rest) && take(/^, /) ? times() : 1;
      for (let i = 0; i < again; i++) used.push(...once);
      continue;
    }
    const inside: boolean[] = [];
    do {
      const bracket = take(/^\(/);
      const once = run();
      const again = bracket && take(/^\) /) ? times() : 1;
      for (let i = 0; i < again; i++) inside.push(...once);
    } while (take(/^, /));
    const more = take(/^; repeat from (\*+) (?:once|(\d+)) more(?: times)?/);
    if (more?.[1] !== star) throw new Error(`A repeat that goes back to another star in "${words}"`);
    for (let i = 0; i <= Number(more[2] ?? 1); i++) used.push(...inside);
  }
  return used;
}

/** Short form, by brackets: `[(4, skip 1) ×2, 3, skip 1] ×6, 4`. */
function readShort(words: string): boolean[] {
  const tokens = words.match(/[[\]()]|×\d+|skip \d+|\d+/g) ?? [];
  if (tokens.join('').replaceAll(' ', '') !== words.replaceAll(/[ ,]/g, '')) throw new Error(`Odd words in "${words}"`);
  const open: boolean[][] = [[]];
  let closed: boolean[] = [];
  for (const token of tokens) {
    const top = open.at(-1)!;
    if (token === '[' || token === '(') open.push([]);
    else if (token === ']' || token === ')') closed = open.pop()!;
    else if (token.startsWith('×')) for (let i = 0; i < Number(token.slice(1)); i++) top.push(...closed);
    else if (token.startsWith('skip')) top.push(...flags(Number(token.slice(5)), false));
    else top.push(...flags(Number(token), true));
  }
  return open[0]!;
}

function flags(count: number, used: boolean): boolean[] {
  return Array.from({ length: count }, () => used);
}
