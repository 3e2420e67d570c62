import type { EdgeRef, Pickup, Stretch } from '../../piece';
import { inherited, type Heir } from './heirs';

/** Where a part of an old edge is now: both parts as fractions of length in the direction of the outline. */
export interface Trace {
  readonly part: readonly [from: number, to: number];
  readonly edge: string;
  readonly now: readonly [from: number, to: number];
}

/** Where old edges of a piece are now, by id, in the direction of the outline; those that stay as they are have none. */
export type Traces = ReadonlyMap<string, readonly Trace[]>;

/** Shares of a length nearer to one another than this are the same. */
const TOUCH = 1e-9;

/**
 * A pick-up after edges of a piece were split, run together or taken away: it goes along the same fabric as before,
 * less what is gone. The very same pick-up where it runs along none of them.
 */
export function carried(pickup: Pickup, piece: string, traces: Traces): Pickup {
  const concerns = (ref: EdgeRef) => ref.piece === piece && traces.has(ref.edge);
  if (!pickup.along.some(concerns)) return pickup;
  const heirs: Heir[] = [];
  const run = pickup.along.flatMap((stretch): Followed[] => {
    if (!concerns(stretch)) return [{ now: stretch, old: null }];
    const parts = followed(stretch, traces.get(stretch.edge)!);
    heirs.push(...parts.map(({ now, share }) => ({ old: stretch.edge, now: now.edge, share })));
    const worked = parts.map(({ now }) => ({ now, old: stretch.edge }));
    return stretch.backwards ? worked.reverse() : worked;
  });
  const next = { ...pickup, along: united(run, pickup.joined) };
  return { ...next, ...inherited(pickup, next.along, concerns, heirs, traces) };
}

/** The stretches that a stretch has become, in the direction of the outline, each with its share of the old edge. */
function followed(stretch: Stretch, traces: readonly Trace[]): { readonly now: Stretch; readonly share: number }[] {
  return traces.flatMap(({ part: [from, to], edge, now }) => {
    const start = Math.max(from, stretch.part[0]);
    const end = Math.min(to, stretch.part[1]);
    if (end - start <= TOUCH) return [];
    const at = (share: number) => tidy(now[0] + ((share - from) / (to - from)) * (now[1] - now[0]));
    return [{ now: { ...stretch, edge, part: [at(start), at(end)] }, share: end - start }];
  });
}

/** A share that is an end but for the error of its arithmetic is that end. */
function tidy(share: number): number {
  if (share < TOUCH) return 0;
  return share > 1 - TOUCH ? 1 : share;
}

/** A stretch with the old edge that it comes from, or null where that is as it was. */
interface Followed {
  readonly now: Stretch;
  readonly old: string | null;
}

/**
 * Old neighbours that touch on one edge now become one; so do the last and the first of a run that is worked in the
 * round. A run that began within an edge still does.
 */
function united(run: readonly Followed[], joined: boolean): Stretch[] {
  const result: Followed[] = [];
  for (const stretch of run) {
    const last = result.at(-1);
    const union = last ? unionOf(last, stretch) : null;
    if (union) result[result.length - 1] = { now: union, old: stretch.old };
    else result.push(stretch);
  }
  const along = result.map(({ now }) => now);
  const around = joined && result.length > 1 ? unionOf(result.at(-1)!, result[0]!) : null;
  return around ? [around, ...along.slice(1, -1)] : along;
}

/** Two stretches from two old edges, one worked after the other, as one; null where they are not one. */
function unionOf({ now: first, old }: Followed, { now: second, old: other }: Followed): Stretch | null {
  if (old === null || other === null || old === other) return null;
  if (first.edge !== second.edge || first.backwards !== second.backwards) return null;
  const [low, high] = first.backwards ? [second, first] : [first, second];
  return Math.abs(low.part[1] - high.part[0]) <= TOUCH ? { ...first, part: [low.part[0], high.part[1]] } : null;
}
