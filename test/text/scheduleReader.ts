/** What a written schedule does to its fabric, clause by clause, counted from its own words. */
export interface ReadSchedule {
  /** Below 0 taken in, above 0 brought out. */
  readonly stitches: number;
  readonly rows: number;
}

const ORDINALS = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth', 'ninth', 'tenth'];

function interval(words: string): number {
  if (words === '') return 1;
  const at = ORDINALS.indexOf(words);
  return at >= 0 ? at + 1 : Number(/^(\d+)(?:st|nd|rd|th)$/.exec(words)![1]);
}

function times(words: string): number {
  return words === 'once' ? 1 : Number(/^(\d+) times$/.exec(words)![1]);
}

/** Reads the schedule of one side; `bind off` or `cast off` and `decrease` take in, `cast on` and `increase` bring out. */
export function readSchedule(text: string): ReadSchedule {
  let stitches = 0;
  let rows = 0;
  for (const clause of text.split('; ')) {
    const even = /^work (\d+) rows? (?:even|straight)$/.exec(clause);
    if (even) {
      rows += Number(even[1]);
      continue;
    }
    const [, verb, rest] = /^(bind off|cast off|cast on|decrease|increase) (.*)$/.exec(clause)!;
    const sign = verb === 'cast on' || verb === 'increase' ? 1 : -1;
    const said = rest!.replace(/ at the (?:right|left|neck) edge/, '').replace(/ \(at the start of [a-z-]+ rows\)/, '');
    const single = /^(\d+)(?: on the next row| at the start of the next [a-z-]+ row)$/.exec(said);
    const list = /^((?:\d+(?: \(\d+ times\))?(?:, )?)+) on every (?:([a-z0-9]+) )?row(?: (\d+ times))?$/.exec(said);
    const last = /^(\d+)(?: together)?$/.exec(said);
    if (single ?? last) {
      stitches += sign * Number((single ?? last)![1]);
      rows += single ? 1 : 0;
    } else if (list) {
      const amounts = list[1]!.split(', ').flatMap((word) => {
        const again = /^(\d+)(?: \((\d+) times\))?$/.exec(word)!;
        return Array.from({ length: Number(again[2] ?? 1) }, () => Number(again[1]));
      });
      const all = list[3] === undefined ? amounts : Array.from({ length: times(list[3]) }, () => amounts[0]!);
      stitches += sign * all.reduce((sum, amount) => sum + amount, 0);
      rows += all.length * interval(list[2] ?? '');
    } else {
      const rates = /^1 (.*)$/.exec(said)![1]!.split(', ');
      for (const rate of rates) {
        const [, every, often] = /^every (?:([a-z0-9]+) )?row (once|\d+ times)$/.exec(rate)!;
        stitches += sign * times(often!);
        rows += times(often!) * interval(every ?? '');
      }
    }
  }
  return { stitches, rows };
}
