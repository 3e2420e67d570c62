import type { Gauge } from '../../../src/units';
import {
  startPiece,
  starterDesign,
  STARTERS,
  type MeasureValues,
  type StarterKind,
  type StarterWords,
} from '../../../src/piece/starters';
import type { Design, Piece } from '../../../src/piece';

export const KINDS = Object.keys(STARTERS) as StarterKind[];

export const WORDS: StarterWords = {
  name: 'A start',
  piece: 'A piece',
  pickups: (key) => key,
  units: 'cm',
  terms: 'US',
  hand: 'right',
};

/** The piece of a starter, which must be one. */
export function pieceOf(kind: StarterKind, values: MeasureValues = {}, gauge: Gauge | null = null): Piece {
  const started = startPiece(kind, values, gauge, 'A piece', 'piece');
  if (!started.ok) throw new Error(JSON.stringify(started));
  return started.piece;
}

export function designOf(kind: StarterKind, values: MeasureValues = {}, gauge: Gauge | null = null): Design {
  const started = starterDesign(kind, values, gauge, WORDS);
  if (!started.ok) throw new Error(JSON.stringify(started));
  return started.design;
}

/** Every edge by id with how far it goes in x and y, a string each: `side-left 0,106`. */
export function moves({ outline }: Piece): string[] {
  return outline.map(({ id, from }, i) => {
    const to = outline[(i + 1) % outline.length]!.from;
    return `${id} ${to[0] - from[0]},${to[1] - from[1]}`;
  });
}
