import type { EdgeRef, Pickup, Rate, StatedRatio, Stretch } from '../../piece';
import type { Traces } from './trace';

/** What became of an old edge of a run: an edge it is part of now, and the share of the old edge that lies there. */
export interface Heir {
  readonly old: string;
  readonly now: string;
  readonly share: number;
}

type Lists = Pick<Pickup, 'rates' | 'measured' | 'stated' | 'statedRatios'>;

/** An old edge of a new one, with what was said of it. */
interface Source<T> {
  readonly entry: T | undefined;
  /** Which part of what was worked along the old edge lies on the new one. */
  readonly from: number;
  readonly to: number;
}

/**
 * What is said of edges, after some were split or run together. Rates and stated ratios go along to every part; a number of stitches is
 * shared out by length, or summed. A tape's length or a stated number stays where it tells of the same fabric as
 * before, or all of it can be summed; else it goes, since nothing is known of the parts.
 *
 * @param along the run as it is now, which must hold every edge of which something is said
 */
export function inherited(
  pickup: Pickup,
  along: readonly Stretch[],
  concerns: (ref: EdgeRef) => boolean,
  heirs: readonly Heir[],
  traces: Traces,
): Lists {
  const carry = <T extends EdgeRef>(
    list: readonly T[],
    join: (sources: readonly Source<T>[], now: string) => T | null,
  ) => carriedList(list, along, concerns, heirs, join);
  return {
    rates: carry(pickup.rates, (sources) => {
      const rate = rateOf(sources.map(({ entry, from, to }) => ({ rate: entry?.rate, from, to })));
      const first = sources.find(({ entry }) => entry)?.entry;
      return rate && first ? { ...first, rate } : null;
    }),
    measured: carry(pickup.measured, (sources, now) =>
      sources.every(isWhole) && sources.length === sourcesIn(traces, now)
        ? summed(
            sources,
            ({ mm }) => mm,
            (entry, mm) => ({ ...entry, mm }),
          )
        : null,
    ),
    stated: carry(pickup.stated, (sources) =>
      sources.every(isWhole)
        ? summed(
            sources,
            ({ count }) => count,
            (entry, count) => ({ ...entry, count }),
          )
        : null,
    ),
    ...(pickup.statedRatios && {
      statedRatios: carry(pickup.statedRatios, (sources) => {
        const [first] = sources.map(({ entry }) => entry);
        return first && sources.every(({ entry }) => entry && sameRatio(entry, first)) ? first : null;
      }),
    }),
  };
}

function sameRatio(a: StatedRatio, b: StatedRatio): boolean {
  return a.pick === b.pick && a.of === b.of && a.per === b.per;
}

function carriedList<T extends EdgeRef>(
  list: readonly T[],
  along: readonly Stretch[],
  concerns: (ref: EdgeRef) => boolean,
  heirs: readonly Heir[],
  join: (sources: readonly Source<T>[], now: string) => T | null,
): readonly T[] {
  if (!list.some(concerns)) return list;
  const done = new Set<string>();
  const result = list.flatMap((entry): T[] => {
    if (!concerns(entry)) return [entry];
    return heirs.flatMap(({ old, now }) => {
      if (old !== entry.edge || done.has(now)) return [];
      done.add(now);
      const joined = join(sourcesOf(list.filter(concerns), heirs, now), now);
      return joined ? [{ ...joined, edge: now }] : [];
    });
  });
  return result.filter((entry) => along.some(({ piece, edge }) => piece === entry.piece && edge === entry.edge));
}

function sourcesOf<T extends EdgeRef>(list: readonly T[], heirs: readonly Heir[], now: string): Source<T>[] {
  const olds = [...new Set(heirs.filter((heir) => heir.now === now).map(({ old }) => old))];
  return olds.map((old) => {
    const own = heirs.filter((heir) => heir.old === old);
    const length = (some: readonly Heir[]) => some.reduce((sum, { share }) => sum + share, 0);
    const places = [...new Set(own.map((heir) => heir.now))];
    const before = places.slice(0, places.indexOf(now));
    const whole = length(own);
    const from = length(own.filter((heir) => before.includes(heir.now))) / whole;
    const here = length(own.filter((heir) => heir.now === now)) / whole;
    return { entry: list.find(({ edge }) => edge === old), from, to: from + here };
  });
}

/** Whether all that was worked along the old edge lies on the new one. */
function isWhole({ from, to }: { readonly from: number; readonly to: number }): boolean {
  return to - from > 1 - 1e-9;
}

/** From how many old edges an edge is made. */
function sourcesIn(traces: Traces, now: string): number {
  return [...traces.values()].filter((parts) => parts.some(({ edge }) => edge === now)).length;
}

/** The first of the entries with the sum of all; null where an edge has none. */
function summed<T>(
  sources: readonly Source<T>[],
  numberOf: (entry: T) => number,
  withNumber: (entry: T, sum: number) => T,
): T | null {
  const entries = sources.map(({ entry }) => entry);
  if (!entries.every((entry) => entry !== undefined)) return null;
  const [first] = entries;
  const sum = entries.reduce((total, entry) => total + numberOf(entry), 0);
  return first === undefined ? null : withNumber(first, sum);
}

/** The rate of an edge made of old ones: theirs where it is one, or the sum of their counts; else null. */
function rateOf(sources: readonly { rate: Rate | undefined; from: number; to: number }[]): Rate | null {
  const rates = sources.map(({ rate, from, to }): Rate | undefined =>
    rate?.kind === 'count' ? { ...rate, count: Math.round(rate.count * to) - Math.round(rate.count * from) } : rate,
  );
  const [first] = rates;
  if (first?.kind === 'count' && rates.every((rate) => rate?.kind === 'count')) {
    return { ...first, count: rates.reduce((sum, rate) => sum + rate.count, 0) };
  }
  return first && rates.every((rate) => JSON.stringify(rate) === JSON.stringify(first)) ? first : null;
}
