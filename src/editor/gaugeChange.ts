import type { Design } from '../piece';
import type { Gauge } from '../units';
import { onPiece, withFields } from './records';
import { regridded } from './regrid';

/** Another gauge for a piece: its size stays and the outline is drawn on the new grid, or its stitches and rows stay. */
export interface GaugeChange {
  readonly kind: 'gauge';
  readonly piece: string;
  readonly gauge: Gauge;
  readonly keep: 'size' | 'counts';
}

export function gaugeChanged(design: Design, change: GaugeChange): Design {
  return onPiece(design, change.piece, (piece) => {
    const gauged = withFields(piece, { gauge: change.gauge });
    return gauged !== piece && change.keep === 'size' ? regridded(piece, change.gauge) : gauged;
  });
}
