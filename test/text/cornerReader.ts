/** What the words on a group of corners come to. Knows nothing of how they were written. */
export interface ReadCorners {
  /** The marked stitches. */
  readonly marked: number[];
  /** Stitches gained or lost on one side of one corner, row by row. */
  readonly rows: Map<number, number>;
  /** What the work said for one row makes of the count: of one, and of two on each side. */
  readonly change: number[];
}

/** Reads a paragraph or a short line on corners of a band of so many rows. */
export function readCorners(words: string, total: number): ReadCorners {
  const marked = numbers(/stitch(?:es)? ([\d, and]+?)(?: as you pick|:)/.exec(words)![1]!);
  const said =
    /(?:[Ii]ncrease|[Dd]ecrease|stitch(?:es)? [\d, and]+:) ([12])(?: on)? each side(?: of \w+)? on (.*?): (.*?)\.(?: |$)/.exec(
      words,
    );
  if (!said) throw new Error(`No work in "${words}"`);
  const [, each = '', when = '', works = ''] = said;
  const rows = new Map<number, number>();
  const [first = '', second] = when.split(', and a second one on ');
  for (const row of readRows(first, total)) rows.set(row, Number(each));
  for (const row of second === undefined ? [] : readRows(second, total)) rows.set(row, (rows.get(row) ?? 0) + 1);
  return { marked, rows, change: works.split('; for two, ').map(changeOf) };
}

function readRows(words: string, total: number): number[] {
  const all = Array.from({ length: total }, (_, i) => i + 1);
  if (/^every (row|round)$/.test(words)) return all;
  const but = /^every (?:row|round) but (.*)$/.exec(words);
  if (but) return all.filter((row) => !numbers(but[1]!).includes(row));
  const every = /^every (\w+) (?:row|round), (\d+) times, beginning with (?:row|round) (\d+)$/.exec(words);
  if (every) {
    const names = ['', '', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth', 'ninth', 'tenth'];
    const gap = names.includes(every[1]!) ? names.indexOf(every[1]!) : parseInt(every[1]!, 10);
    return Array.from({ length: Number(every[2]) }, (_, i) => Number(every[3]) + i * gap);
  }
  const list = /^(?:row|round)s? ([\d, and]+?)(?: of every (\d+))?$/.exec(words);
  if (!list) throw new Error(`No rows in "${words}"`);
  const period = Number(list[2] ?? total);
  const inside = numbers(list[1]!);
  return all.filter((row) => inside.includes(((row - 1) % period) + 1));
}

/** What one row's work at a corner makes of the count. */
function changeOf(works: string): number {
  const made = works.split(', ').map((work) => {
    if (work.startsWith('work ')) return 0;
    const [, name = '', twice] = /^(.*?)( twice)?$/.exec(work)!;
    const one = { m1: 1, k2tog: -1, ssk: -1, skpo: -1, s2kp2: -2, 'sl2tog k1 psso': -2 }[name];
    if (one === undefined) throw new Error(`Odd work "${work}"`);
    return twice ? 2 * one : one;
  });
  return made.reduce((sum, one) => sum + one, 0);
}

function numbers(list: string): number[] {
  return [...list.matchAll(/\d+/g)].map(([n]) => Number(n));
}
