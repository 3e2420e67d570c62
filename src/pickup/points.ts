import type { Mm } from '../units';
import type { PlanPoint, Section, Selection } from './plan';
import { lastAtMost } from './search';
import type { UsedPlaces } from './sections';
import type { WorkedStretch } from './stretches';

/** The chosen openings of one stretch and what lies before it in the pick-up. */
export interface Leg {
  readonly selection: Selection;
  /** How long the join is up to here, how many stitches are picked up and how many openings are shown. */
  readonly before: Mm;
  readonly pickedBefore: number;
  readonly firstPoint: number;
}

/** The selections of a pick-up end to end. */
export function legsOf(stretches: readonly WorkedStretch[], selections: readonly Selection[]): Leg[] {
  let [before, pickedBefore, firstPoint] = [0, 0, 0];
  return selections.map((selection, i) => {
    const leg = { selection, before, pickedBefore, firstPoint };
    before += stretches[i]!.joinMm;
    pickedBefore += selection.usedAt.length;
    firstPoint += selection.used.length;
    return leg;
  });
}

/** Where the used points lie along the join. */
export function usedPlaces(legs: readonly Leg[]): UsedPlaces {
  const starts = legs.map((leg) => leg.pickedBefore);
  const last = legs.at(-1);
  return {
    length: last ? last.pickedBefore + last.selection.usedAt.length : 0,
    at(i) {
      const leg = legs[lastAtMost(starts, i)];
      const opening = leg?.selection.usedAt[i - leg.pickedBefore];
      return leg && opening !== undefined ? leg.before + leg.selection.openings.joinAt[opening]! : undefined;
    },
  };
}

/**
 * Every opening of a pick-up in working order, numbered through, with its section: used ones by the running counts,
 * skipped ones by the marker's place.
 */
export function pointsOf(legs: readonly Leg[], sections: readonly Section[]): PlanPoint[] {
  const points: PlanPoint[] = [];
  let picked = 0;
  let s = 0;
  legs.forEach(({ selection: { openings, used }, before }, edge) => {
    const { sort, row, x, y, edgeAt, joinAt } = openings;
    for (let i = 0; i < used.length; i++) {
      const n = used[i] === true ? (picked += 1) : null;
      const alongMm = before + joinAt[i]!;
      while (s < sections.length - 1 && (n !== null ? n > sections[s]!.running : alongMm > sections[s]!.marker.alongMm))
        s += 1;
      const { kind, second } = sort[i]!;
      points.push({
        kind,
        second,
        column: Math.floor(x[i]!),
        row: row[i]!,
        x: x[i]!,
        y: y[i]!,
        edgeAt: edgeAt[i]!,
        joinAt: joinAt[i]!,
        n,
        edge,
        alongMm,
        section: s + 1,
      });
    }
  });
  return points;
}
