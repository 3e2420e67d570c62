import { cornerLabel, nowAt, nowIs } from '../../text';
import type { Workbench } from '../workbench.svelte';
import type { Chosen } from './chosen';
import { edgeNow, pieceNow } from './now';

/** What a screen reader hears of the corner or the edge that is chosen, as it is now; empty for several corners. */
export function whereNow(bench: Workbench, { piece: id, corners, edge }: Chosen): string {
  const measured = edge === null ? undefined : edgeNow(bench, { piece: id, edge });
  if (measured) return nowIs(measured, bench.design.units);
  const outline = pieceNow(bench, id)?.outline ?? [];
  const index = corners.length === 1 ? outline.findIndex((one) => one.id === corners[0]) : -1;
  const corner = outline[index];
  if (!corner) return '';
  const [left, bottom] = [0, 1].map((axis) => Math.min(...outline.map(({ from }) => from[axis]!))) as [number, number];
  return nowAt(cornerLabel(index, outline.length, corner), corner.from[0] - left, corner.from[1] - bottom);
}
