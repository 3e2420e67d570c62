import type { Gauge } from '../../units';
import { begunDesign } from './begun';
import type { MeasureValues, StartedDesign, StarterKind, StarterPickup, StarterWords } from './kinds';
import { startPiece } from './piece';
import { STARTER_PICKUPS } from './pickups';
import { STARTERS } from './starters';

function rawPickup(piece: string, pickup: StarterPickup, name: string) {
  const { key, along, joined, multiple, plus, fabric, drawIn, rows, rate } = pickup;
  const rates = rate ? along.map(({ edge }) => ({ piece, edge, rate })) : [];
  return {
    id: key,
    name,
    along: along.map(({ edge, backwards, part }) => ({ piece, edge, backwards, part: [...part] as [number, number] })),
    joined,
    band: {
      fabric,
      multiple,
      plus,
      ...(rows === undefined ? {} : { rows }),
      ...(drawIn === undefined ? {} : { drawIn }),
    },
    rates,
  };
}

/** A whole design that starts from one piece, with the pick-ups it is usually given; as `startPiece` otherwise. */
export function starterDesign(
  kind: StarterKind,
  values: MeasureValues,
  gauge: Gauge | null,
  words: StarterWords,
): StartedDesign {
  const started = startPiece(kind, values, gauge, words.piece, STARTERS[kind].id, words.edges);
  if (!started.ok) return started;
  const { piece } = started;
  const pickups = STARTER_PICKUPS[kind].map((pickup) => rawPickup(piece.id, pickup, words.pickups(pickup.key)));
  return { ok: true, design: begunDesign(words, piece, pickups) };
}
