import { shelf } from '../units';
import type { PlannedEdge, Selection } from './plan';
import { ratioChoices } from './ratios';
import type { WorkedStretch } from './stretches';
import type { Want } from './wants';

const kept = shelf<WorkedStretch, PlannedEdge>(1);

/**
 * What a plan tells of one stretch: what was wanted of it, and what its chosen openings give.
 *
 * @param planned the count that was settled, which holes may exceed and openings fall short of
 */
export function plannedEdge(
  one: WorkedStretch,
  want: Want,
  selection: Selection,
  planned: number,
  twin: number,
  firstPoint: number,
): PlannedEdge {
  return kept(one, [want, selection, planned, twin, firstPoint], () =>
    told(one, want, selection, planned, twin, firstPoint),
  );
}

function told(
  one: WorkedStretch,
  want: Want,
  selection: Selection,
  planned: number,
  twin: number,
  firstPoint: number,
): PlannedEdge {
  const count = selection.usedAt.length;
  const { measured, measuredMm, piece, stretch, stitches, rows } = one;
  const { byLength, first, most } = want;
  return {
    stretch,
    piece,
    measured,
    shape: measured.shape,
    stitches,
    rows,
    edgeMm: measured.hasGauge ? one.edgeMm : null,
    joinMm: measured.hasGauge ? one.joinMm : null,
    lengthMm: want.lengthMm,
    measuredMm,
    places: first,
    openings: planned > first ? most : first,
    unit: selection.unit,
    rate: want.bare ? { kind: 'count', count } : want.rate,
    wanted: byLength,
    count,
    changed: byLength !== null && byLength > 0 ? count / byLength - 1 : null,
    rhythm: selection.rhythm,
    ratios: ratioChoices(first, (byLength ?? count) / first, byLength, most),
    twin,
    firstPoint,
    pointsEnd: firstPoint + selection.used.length,
    selection,
  };
}
