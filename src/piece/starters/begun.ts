import { fillDesign } from '../defaults';
import type { Design, Piece } from '../design';
import type { RawPickup } from '../schema';
import type { StarterWords } from './kinds';

/** A design of one piece that is made here and not read from a file, its pick-ups filled in with every default. */
export function begunDesign(words: StarterWords, piece: Piece, pickups: RawPickup[]): Design {
  const { name, units, terms, hand } = words;
  const design = fillDesign({ format: 'edgewise', version: 1, name, units, terms, hand, pieces: [], pickups });
  return { ...design, pieces: [piece] };
}
