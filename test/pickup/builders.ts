import { readDesign, type Design, type Pickup } from '../../src/piece';
import { openingsOf, planDesign, type NeedleChoice, type Opening, type PickupPlan } from '../../src/pickup';
import type { MeasuredEdge } from '../../src/shaping';

/** Fields of a raw document, as a file has them. */
export type Raw = Record<string, unknown>;

export type Corner = readonly [number, number];

/** A gauge of 20 stitches and 28 rows over 10 cm: a stitch is 5 mm wide, a row 3.571 mm high. */
export const GAUGE = { stitches: 20, rows: 28 };

/** A piece of straight edges named after their sides; `fields` goes over each edge by its id. */
export function rectangle(stitches: number, rows: number, fields: Record<string, Raw> = {}, piece: Raw = {}): Raw {
  const edge = (id: string, from: Corner): Raw => ({ id, from, path: 'straight', ...fields[id] });
  return {
    id: 'piece',
    gauge: GAUGE,
    outline: [
      edge('bottom', [0, 0]),
      edge('right', [stitches, 0]),
      edge('top', [stitches, rows]),
      edge('left', [0, rows]),
    ],
    ...piece,
  };
}

/** A piece from an outline of raw edges; ids are given where they are missing. */
export function piece(outline: readonly Raw[], fields: Raw = {}): Raw {
  return {
    id: 'piece',
    gauge: GAUGE,
    outline: outline.map((edge, i) => ({ id: `edge-${i}`, path: 'straight', ...edge })),
    ...fields,
  };
}

/** A whole design from raw pieces and pick-ups. */
export function design(pieces: Raw | readonly Raw[], pickups: Raw | readonly Raw[] = [], fields: Raw = {}): Design {
  const list = (value: Raw | readonly Raw[]): Raw[] =>
    (Array.isArray(value) ? value : [value]).map((one: Raw, i) => ({ id: `pickup-${i}`, ...one }));
  return readDesign(
    JSON.stringify({ format: 'edgewise', version: 1, pieces: list(pieces), pickups: list(pickups), ...fields }),
  ).design;
}

/** A pick-up along edges of the piece "piece". */
export function along(edges: readonly (string | Raw)[], fields: Raw = {}): Raw {
  return {
    along: edges.map((edge) => (typeof edge === 'string' ? { piece: 'piece', edge } : { piece: 'piece', ...edge })),
    ...fields,
  };
}

/** The one plan of a piece with one pick-up. */
export function plan(pieces: Raw | readonly Raw[], pickup: Raw, fields: Raw = {}): PickupPlan {
  return planDesign(design(pieces, pickup, fields)).pickups[0]!;
}

/** A rate for one edge of the piece "piece". */
export function rate(edge: string, value: Raw): Raw {
  return { piece: 'piece', edge, rate: value };
}

/** An opening of an edge as one record. */
export type EdgeOpening = Opening & { readonly hole: boolean };

/** The openings of an edge, each as one record. */
export function recorded(
  edge: MeasuredEdge,
  cell: { readonly width: number; readonly height: number },
  choice: NeedleChoice,
) {
  const { list, edgeMm, joinMm } = openingsOf(edge, cell, choice);
  const all = list.x.map((x, i): EdgeOpening => {
    const [row, y] = [list.row[i]!, list.y[i]!];
    return { ...list.sort[i]!, column: Math.floor(x), row, x, y, edgeAt: list.edgeAt[i]!, joinAt: list.joinAt[i]! };
  });
  return { all, edgeMm, joinMm };
}

/** Whether each opening of an edge is used, in working order. */
export function usedOn(made: PickupPlan, edge: number): boolean[] {
  const { firstPoint, pointsEnd } = made.edges[edge]!;
  return made.points.slice(firstPoint, pointsEnd).map((point) => point.n !== null);
}

/** The same pick-up with other fields, as a fresh object. */
export function withPickup(whole: Design, fields: Partial<Pickup>): Design {
  return { ...whole, pickups: whole.pickups.map((pickup) => ({ ...pickup, ...fields })) };
}
