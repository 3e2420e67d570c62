import type { Design, Edge, EdgeRef, Fabric, GridPoint, Pickup, Piece, ScheduleStep } from '../piece';
import { alike } from './outline/alike';
import { withEdgeFields, type EdgeFields } from './outline/fields';
import { freshId } from './outline/ids';
import { withoutCorners } from './outline/merge';
import { counterclockwise, mirroredPickup, mirroredPiece } from './outline/mirror';
import { movedCorners } from './outline/move';
import { withBend, withHandle, withPath, type Path } from './outline/path';
import { withSize, withSteps } from './outline/size';
import { withCorner, type Remade } from './outline/split';
import { isSymmetric, madeSymmetric } from './outline/symmetric';
import { mirrorOf } from './outline/symmetry';
import { carried, type Traces } from './outline/trace';

export interface PieceFields {
  readonly name?: string;
  readonly fabric?: Fabric;
  readonly symmetric?: boolean;
}

/** A change of one edge, or of what begins at it. On a symmetric piece its twin changes too. */
export type EdgeChange =
  | { readonly kind: 'insert-corner'; readonly piece: string; readonly edge: string; readonly at: GridPoint }
  | { readonly kind: 'edge-path'; readonly piece: string; readonly edge: string; readonly path: Path }
  | {
      readonly kind: 'edge-handle';
      readonly piece: string;
      readonly edge: string;
      readonly handle: 0 | 1;
      readonly at: readonly [number, number];
    }
  | {
      readonly kind: 'edge-bend';
      readonly piece: string;
      readonly edge: string;
      readonly through: readonly [number, number];
    }
  | {
      readonly kind: 'edge-size';
      readonly piece: string;
      readonly edge: string;
      readonly stitches?: number;
      readonly rows?: number;
      readonly along: boolean;
    }
  | {
      readonly kind: 'edge-steps';
      readonly piece: string;
      readonly edge: string;
      readonly steps: readonly ScheduleStep[];
      readonly fit: boolean;
    }
  | { readonly kind: 'edge-fields'; readonly piece: string; readonly edge: string; readonly fields: EdgeFields };

/** A change of a whole outline, or of several of its corners, which are named by the edges that begin at them. */
export type OutlineChange =
  | EdgeChange
  | {
      readonly kind: 'move-corners';
      readonly piece: string;
      readonly corners: readonly string[];
      readonly dx: number;
      readonly dy: number;
    }
  | { readonly kind: 'remove-corners'; readonly piece: string; readonly corners: readonly string[] }
  | { readonly kind: 'outline'; readonly piece: string; readonly outline: readonly Edge[] }
  | { readonly kind: 'piece-fields'; readonly piece: string; readonly fields: PieceFields }
  | { readonly kind: 'mirror-piece'; readonly piece: string };

/** A change of pieces. Whatever it does, no pick-up is left pointing at an edge that is gone. */
export type PieceChange =
  | OutlineChange
  | { readonly kind: 'add-piece'; readonly piece: Piece }
  | { readonly kind: 'paste'; readonly pieces: readonly Piece[]; readonly pickups: readonly Pickup[] }
  | { readonly kind: 'remove-piece'; readonly piece: string }
  | { readonly kind: 'duplicate-piece'; readonly piece: string; readonly name: string };

/** The design after a change of its pieces; the very same design where nothing changes or there is no such piece. */
export function pieceChanged(design: Design, change: PieceChange): Design {
  if (change.kind === 'add-piece') return withPieceAfter(design, change.piece, design.pieces.length);
  if (change.kind === 'paste') return withPasted(design, change.pieces, change.pickups);
  const index = design.pieces.findIndex(({ id }) => id === change.piece);
  const piece = design.pieces[index];
  if (!piece) return design;
  switch (change.kind) {
    case 'duplicate-piece':
      return withPieceAfter(design, { ...piece, name: change.name }, index + 1);
    case 'remove-piece':
      return withPieces(
        design,
        design.pieces.filter((one) => one !== piece),
        piece.id,
        new Map(piece.outline.map(({ id }) => [id, []])),
      );
    case 'mirror-piece': {
      const mirrored = pieceSettled(design, piece, mirroredPiece(piece));
      if (mirrored === design) return design;
      const pickups = design.pickups.map((pickup) => mirroredPickup(pickup, piece.id));
      return { ...mirrored, pickups: pickups.every((one, i) => one === design.pickups[i]) ? design.pickups : pickups };
    }
    default: {
      const made = outlineChanged(piece, change);
      return made ? pieceSettled(design, piece, made.piece, made.traces) : design;
    }
  }
}

interface Made {
  readonly piece: Piece;
  readonly traces?: Traces;
}

function outlineChanged(piece: Piece, change: Exclude<OutlineChange, { kind: 'mirror-piece' }>): Made | null {
  const indexOf = (id: string) => piece.outline.findIndex((edge) => edge.id === id);
  const remade = (made: Remade | null): Made | null =>
    made && { piece: { ...piece, outline: made.outline }, traces: made.traces };
  switch (change.kind) {
    case 'move-corners':
      return { piece: movedCorners(piece, change.corners, change.dx, change.dy) };
    case 'remove-corners':
      return remade(
        withoutCorners(
          piece,
          change.corners.map(indexOf).filter((i) => i >= 0),
        ),
      );
    case 'outline':
      return outlineReplaced(piece, change.outline);
    case 'piece-fields':
      return fieldsChanged(piece, change.fields);
    default: {
      const index = indexOf(change.edge);
      if (index < 0) return null;
      if (change.kind === 'insert-corner') return remade(withCorner(piece, index, change.at));
      return { piece: edgeChanged(piece, index, change) };
    }
  }
}

function edgeChanged(piece: Piece, index: number, change: Exclude<EdgeChange, { kind: 'insert-corner' }>): Piece {
  switch (change.kind) {
    case 'edge-path':
      return withPath(piece, index, change.path);
    case 'edge-handle':
      return withHandle(piece, index, change.handle, change.at);
    case 'edge-bend':
      return withBend(piece, index, change.through);
    case 'edge-size':
      return withSize(piece, index, change);
    case 'edge-steps':
      return withSteps(piece, index, change.steps, change.fit);
    case 'edge-fields':
      return edgeFieldsChanged(piece, index, change.fields);
  }
}

/** A name belongs to one edge, a finish or a selvage to its twin too. */
function edgeFieldsChanged(piece: Piece, index: number, fields: EdgeFields): Piece {
  const twin = mirrorOf(piece)?.edge(index);
  const { name: _name, ...make } = fields;
  const outline = piece.outline.map((edge, i) => {
    if (i === index) return withEdgeFields(edge, fields);
    return i === twin ? withEdgeFields(edge, make) : edge;
  });
  return { ...piece, outline };
}

function outlineReplaced(piece: Piece, outline: readonly Edge[]): Made {
  const ids = new Set(outline.map(({ id }) => id));
  const gone = piece.outline.filter(({ id }) => !ids.has(id));
  return { piece: { ...piece, outline: counterclockwise(outline) }, traces: new Map(gone.map(({ id }) => [id, []])) };
}

/** A piece that is to be symmetric and is not yet is made so from one of its halves; where it can't, nothing changes. */
function fieldsChanged(piece: Piece, fields: PieceFields): Made | null {
  const next = { ...piece, ...fields };
  if (fields.symmetric && !piece.symmetric && !isSymmetric(piece)) {
    const made = madeSymmetric(piece);
    return made && { piece: { ...next, outline: made.outline }, traces: made.traces };
  }
  return { piece: fields.fabric === undefined ? next : { ...next, outline: selvagesShared(piece) } };
}

/** Twins of which only one says its selvage say the same before another fabric changes what the other one means. */
function selvagesShared(piece: Piece): readonly Edge[] {
  const mirror = mirrorOf(piece);
  if (!mirror) return piece.outline;
  return piece.outline.map((edge, i) => {
    const selvage = edge.selvage ?? piece.outline[mirror.edge(i)]!.selvage;
    return selvage === edge.selvage ? edge : withEdgeFields(edge, { selvage });
  });
}

function withPieceAfter(design: Design, piece: Piece, index: number): Design {
  const id = freshId(
    piece.id,
    design.pieces.map((one) => one.id),
  );
  const named = id === piece.id ? piece : { ...piece, id };
  return { ...design, pieces: [...design.pieces.slice(0, index), named, ...design.pieces.slice(index)] };
}

/** Pieces and pick-ups from elsewhere, behind what is there; what they are called is made unique. */
function withPasted(design: Design, pieces: readonly Piece[], pickups: readonly Pickup[]): Design {
  if (pieces.length === 0) return design;
  const taken = design.pieces.map(({ id }) => id);
  const names = new Map<string, string>();
  for (const { id } of pieces) names.set(id, freshId(id, [...taken, ...names.values()]));
  const renamed = <T extends EdgeRef>(list: readonly T[]) =>
    list.map((ref) => ({ ...ref, piece: names.get(ref.piece) ?? ref.piece }));
  const known = design.pickups.map(({ id }) => id);
  const added = pickups.map((pickup): Pickup => {
    const id = freshId(pickup.id, known);
    known.push(id);
    const { along, rates, measured, stated, statedRatios } = pickup;
    const lists = { rates: renamed(rates), measured: renamed(measured), stated: renamed(stated) };
    const ratios = statedRatios && { statedRatios: renamed(statedRatios) };
    return { ...pickup, id, along: renamed(along), ...lists, ...ratios };
  });
  return {
    ...design,
    pieces: [...design.pieces, ...pieces.map((piece) => ({ ...piece, id: names.get(piece.id) ?? piece.id }))],
    pickups: added.length === 0 ? design.pickups : [...design.pickups, ...added],
  };
}

/** Puts a changed piece in the place of the old one. Edges that are alike, and a piece that is, stay the same objects. */
function pieceSettled(design: Design, old: Piece, next: Piece, traces: Traces = new Map()): Design {
  const known = new Map(old.outline.map((edge) => [edge.id, edge]));
  const outline = next.outline.map((edge) => {
    const before = known.get(edge.id);
    return before && alike(before, edge) ? before : edge;
  });
  const sameOutline = outline.length === old.outline.length && outline.every((edge, i) => edge === old.outline[i]);
  const piece = { ...next, outline: sameOutline ? old.outline : outline };
  if (sameOutline && alike({ ...piece, outline: null }, { ...old, outline: null })) return design;
  return withPieces(
    design,
    design.pieces.map((one) => (one === old ? piece : one)),
    old.id,
    traces,
  );
}

/** The design with other pieces, its pick-ups carried along; one that has nothing left to go along is removed. */
function withPieces(design: Design, pieces: readonly Piece[], piece: string, traces: Traces): Design {
  const next = { ...design, pieces };
  if (traces.size === 0) return next;
  const pickups = design.pickups
    .map((pickup) => carried(pickup, piece, traces))
    .filter(({ along }) => along.length > 0);
  const same = pickups.length === design.pickups.length && pickups.every((one, i) => one === design.pickups[i]);
  return same ? next : { ...next, pickups };
}
