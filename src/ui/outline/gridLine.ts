import type { Segment } from '../../geometry';
import { gridToSheet, type Place } from '../../renderer';

/** A chain on the stitch grid as the `d` of a path on the sheet. */
export function gridLine(place: Place, path: readonly Segment[]): string {
  const at = ({ x, y }: { readonly x: number; readonly y: number }) =>
    gridToSheet(place, x, y)
      .map((value) => value.toFixed(2))
      .join(' ');
  return path
    .map((segment, i) => {
      const start = i === 0 ? `M${at(segment.from)}` : '';
      if (segment.kind === 'line') return `${start}L${at(segment.to)}`;
      return `${start}C${at(segment.c1)} ${at(segment.c2)} ${at(segment.to)}`;
    })
    .join('');
}
