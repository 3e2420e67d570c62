import { gripsOf, type Grip, type PlacedGrip } from '../../editor';
import type { Piece } from '../../piece';
import { cornerLabel, gripPlace, handleLabel, middleLabel } from '../../text';
import { shelf } from '../../units';

/** A grip with all that is drawn and said of it. */
export interface NamedGrip extends PlacedGrip {
  /** Tells it from every other grip of a design. */
  readonly name: string;
  readonly label: string;
  /** The corner that a handle belongs to; null for any other grip. */
  readonly corner: readonly [x: number, y: number] | null;
}

const kept = shelf<PlacedGrip, NamedGrip>(1);

/** The grips of a piece by their names; those of which nothing has changed are the same objects as before. */
export function namedGrips(piece: Piece, chosen: string | null): NamedGrip[] {
  const { name, outline } = piece;
  const left = Math.min(...outline.map(({ from }) => from[0]));
  const foot = Math.min(...outline.map(({ from }) => from[1]));
  const index = new Map(outline.map((edge, i) => [edge.id, i]));
  return gripsOf(piece, chosen).map((placed) => {
    const { grip, at } = placed;
    const i = index.get(grip.edge)!;
    const edge = outline[i]!;
    const corner = grip.kind === 'handle' ? outline[(i + grip.handle) % outline.length]!.from : null;
    return kept(placed, [name, i, outline.length, left, foot, edge, corner], () => ({
      grip,
      at,
      name: nameOf(grip),
      label: `${name}: ${labelOf(grip, piece, i)}, ${gripPlace(at[0] - left, at[1] - foot)}`,
      corner,
    }));
  });
}

export function nameOf(grip: Grip): string {
  return `${grip.kind} ${grip.piece} ${grip.edge}${grip.kind === 'handle' ? ` ${grip.handle}` : ''}`;
}

function labelOf(grip: Grip, { outline }: Piece, index: number): string {
  const edge = outline[index]!;
  switch (grip.kind) {
    case 'corner':
      return cornerLabel(index, outline.length, edge);
    case 'middle':
      return middleLabel(edge);
    case 'handle':
      return handleLabel(edge, grip.handle);
  }
}
