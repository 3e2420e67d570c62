import type { MeasuredPiece } from '../pickup';
import type { MeasuredEdge } from '../shaping';
import { shelf } from '../units';
import { stairOf } from './outline';
import { gridToSheet } from './place';
import { marksOf } from './pickup';
import type { DrawOptions } from './options';
import type { DrawnPoints } from './points';
import { chainPath, linesPath } from './toPath';
import type { Group, Mark, Place } from './marks';

/** What an edge is drawn from besides itself. */
interface EdgeGround {
  readonly place: Place;
  readonly picked: boolean;
  readonly detail: DrawOptions['detail'];
  readonly points: readonly DrawnPoints[];
}

const leaves = shelf<readonly Mark[], Group>(1);
const edges = shelf<MeasuredEdge, Group>(2);
const pieces = shelf<MeasuredPiece['edges'], Group>(1);

/** A group without groups in it. */
export function leafGroup(name: Group['name'], id: string, marks: readonly Mark[]): Group {
  return leaves(marks, [name, id], () => ({ name, id, data: {}, marks, groups: [] }));
}

/** An edge with its points. */
export function edgeGroup(edge: MeasuredEdge, id: string, { place, picked, detail, points }: EdgeGround): Group {
  const { piece, x, y, scale, cell } = place;
  return edges(edge, [id, piece, x, y, scale, cell.width, cell.height, picked, detail, ...points], () => ({
    name: 'edge',
    id,
    data: { piece, edge: edge.id, shape: edge.shape, ...(picked ? { picked: 'yes' } : {}) },
    marks: [...drawEdge(place, edge, detail), ...marksOf(points)],
    groups: [],
  }));
}

export function pieceGroup({ piece, edges }: MeasuredPiece, id: string, groups: readonly Group[]): Group {
  return pieces(edges, [id, ...groups], () => ({ name: 'piece', id, data: { piece: piece.id }, marks: [], groups }));
}

/** The smooth line of an edge, and in stitch detail the steps as worked. */
function drawEdge(place: Place, edge: MeasuredEdge, detail: DrawOptions['detail']): Mark[] {
  const outline: Mark = { kind: 'path', role: 'outline', d: chainPath(place, edge.line), count: 1 };
  if (detail === 'shape' || edge.shape === 'horizontal' || edge.shape === 'vertical') return [outline];
  const stair = stairOf(edge).map(([x, y]) => gridToSheet(place, x, y));
  return [outline, { kind: 'path', role: 'worked', d: linesPath(stair), count: edge.worked.length }];
}
