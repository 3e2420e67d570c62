/** A point on the sheet in mm, y down, and its depth: the greater, the nearer to the viewer. */
export interface Place {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** What a strand is: fabric yarn is white between two lines, the new yarn is solid, the needle tapers. */
export type StrandKind = 'fabric' | 'new' | 'needle';

/** A body with a centre-line through places, and a width at each of them, mm. */
export interface Strand {
  readonly kind: StrandKind;
  readonly places: readonly Place[];
  readonly widths: readonly number[];
}

/** A stretch of a strand between two neighbouring places: a cubic curve. */
export interface Piece {
  readonly strand: number;
  /** Counted along its strand. */
  readonly index: number;
  readonly from: Place;
  readonly c1: Place;
  readonly c2: Place;
  readonly to: Place;
  /** Distance of its ends from the start of the strand, mm. */
  readonly start: number;
  readonly end: number;
  readonly width: number;
  /** Mean depth. */
  readonly z: number;
}

/**
 * The pieces of a strand: cubic curves that meet with one tangent (Catmull and Rom's spline in Hermite form, the
 * tangent at a place being the mean of its two chords' directions weighted by the length of the other chord).
 */
export function piecesOf(strand: Strand, number: number): Piece[] {
  const { places, widths } = strand;
  const chord = places.slice(1).map((to, i) => Math.hypot(to.x - places[i]!.x, to.y - places[i]!.y));
  const slopes = places.map((_, i) => slopeAt(places, chord, i));
  let start = 0;
  return chord.map((length, i) => {
    const [from, to] = [places[i]!, places[i + 1]!];
    const [a, b] = [slopes[i]!, slopes[i + 1]!];
    const third = length / 3;
    const end = start + length;
    const piece: Piece = {
      strand: number,
      index: i,
      from,
      c1: { x: from.x + a.x * third, y: from.y + a.y * third, z: from.z },
      c2: { x: to.x - b.x * third, y: to.y - b.y * third, z: to.z },
      to,
      start,
      end,
      width: (widths[i]! + widths[i + 1]!) / 2,
      z: (from.z + to.z) / 2,
    };
    start = end;
    return piece;
  });
}

function slopeAt(places: readonly Place[], chord: readonly number[], i: number): { x: number; y: number } {
  const slope = (k: number) => ({
    x: (places[k + 1]!.x - places[k]!.x) / chord[k]!,
    y: (places[k + 1]!.y - places[k]!.y) / chord[k]!,
  });
  if (i === 0) return slope(0);
  if (i === places.length - 1) return slope(i - 1);
  const [before, after] = [slope(i - 1), slope(i)];
  const [b, a] = [chord[i - 1]!, chord[i]!];
  return { x: (before.x * a + after.x * b) / (a + b), y: (before.y * a + after.y * b) / (a + b) };
}

/** A point of a piece, 0 at its start and 1 at its end (Bernstein's form). */
export function pointOn({ from, c1, c2, to }: Piece, t: number): Place {
  const s = 1 - t;
  const [a, b, c, d] = [s * s * s, 3 * s * s * t, 3 * s * t * t, t * t * t];
  return {
    x: a * from.x + b * c1.x + c * c2.x + d * to.x,
    y: a * from.y + b * c1.y + c * c2.y + d * to.y,
    z: s * from.z + t * to.z,
  };
}
