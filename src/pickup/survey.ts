import type { Design, Piece } from '../piece';
import { cellOf, measurePiece, type MeasuredEdge } from '../shaping';
import type { Mm } from '../units';
import { unitOf } from './openingList';
import { openingsOf, type NeedleChoice } from './openings';
import type { OpeningKind } from './plan';

/** One edge of a piece, measured for itself, whether it is picked up from or not. */
export interface SurveyedEdge {
  readonly piece: Piece;
  readonly measured: MeasuredEdge;
  /** Null where the piece has no gauge. */
  readonly edgeMm: Mm | null;
  readonly joinMm: Mm | null;
  /** First places; second ones are brought in only by a plan. */
  readonly openings: number;
  /** How many of them are stitches of bound-off or cast-on steps, on an edge that climbs. */
  readonly stepStitches: number;
  /** What the edge is counted in. */
  readonly unit: OpeningKind;
}

/** A whole stitch in, as most knitters work. */
const USUAL: NeedleChoice = { inset: 1, garterAt: 'bump', stepHoles: false, halfLoop: false };

/** Every edge of a design, piece by piece in outline order, joined a whole stitch in. */
export function surveyDesign(design: Design): SurveyedEdge[] {
  return design.pieces.flatMap((piece) =>
    measurePiece(piece).map((measured) => {
      const { list, edgeMm, joinMm } = openingsOf(measured, cellOf(piece), USUAL);
      const first = list.sort.filter(({ second }) => !second);
      return {
        piece,
        measured,
        edgeMm: measured.hasGauge ? edgeMm : null,
        joinMm: measured.hasGauge ? joinMm : null,
        openings: first.length,
        stepStitches: measured.shape === 'horizontal' ? 0 : first.filter(({ kind }) => kind === 'stitch').length,
        unit: unitOf(list),
      };
    }),
  );
}
