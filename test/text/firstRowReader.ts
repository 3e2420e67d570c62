/** Counts a written first row out by its own words. */
export function countFirstRow(words: string): { readonly uses: number; readonly leaves: number } {
  const starred = /^(?:(.*), )?\*(.*); repeat from \* (?:once|(\d+)) more(?: times)?(?:; (.*))?$/.exec(words);
  if (starred) {
    const [, before, inside = '', more, after] = starred;
    return sum([
      ...(before === undefined ? [] : [works(before)]),
      ...Array.from({ length: Number(more ?? 1) + 1 }, () => works(inside)),
      ...(after === undefined ? [] : [works(after)]),
    ]);
  }
  const parts = words.match(/\([^)]*\) (?:twice|\d+ times)|[^,(]+(?=,|$)/g) ?? [];
  return sum(
    parts.map((part) => {
      const repeat = /^\((.*)\) (?:twice|(\d+) times)$/.exec(part);
      if (!repeat) return works(part.trim());
      return sum(Array.from({ length: Number(repeat[2] ?? 2) }, () => works(repeat[1] ?? '')));
    }),
  );
}

function works(words: string): { uses: number; leaves: number } {
  return sum(
    words.split(', ').map((word) => {
      const plain = /^(?:k|rib )(\d+)$/.exec(word);
      if (plain) return { uses: Number(plain[1]), leaves: Number(plain[1]) };
      const work = /^(m1p?|k2tog|p2tog)(?: (?:twice|(\d+) times))?$/.exec(word);
      if (!work) throw new Error(`"${word}" is no work in "${words}"`);
      const times = work[2] === undefined ? (word.endsWith('twice') ? 2 : 1) : Number(work[2]);
      return { uses: times * (work[1]?.startsWith('m1') ? 0 : 2), leaves: times };
    }),
  );
}

function sum(counts: readonly { uses: number; leaves: number }[]): { uses: number; leaves: number } {
  return counts.reduce((all, one) => ({ uses: all.uses + one.uses, leaves: all.leaves + one.leaves }), {
    uses: 0,
    leaves: 0,
  });
}
