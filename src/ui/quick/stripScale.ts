import type { PlanPoint } from '../../pickup';

/** How far apart neighbouring places are drawn, mm of the sheet: so that a whole strip is in sight where it can be. */
const APART = { least: 1.4, most: 3 };
/** A strip is drawn this long where its places allow, mm of the sheet. */
const WISHED = 116;

/** Sheet mm to one fabric mm for a strip with these places, whose every place is told apart. */
export function stripScale(points: readonly Pick<PlanPoint, 'alongMm'>[]): number {
  const [first, last] = [points[0], points.at(-1)];
  const gap = first && last && points.length > 1 ? (last.alongMm - first.alongMm) / (points.length - 1) : 1;
  return Math.min(APART.most, Math.max(APART.least, WISHED / points.length)) / gap;
}
