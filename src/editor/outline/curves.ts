import { cubic, distance, leftOf, mix, nearestOn, pointAt, scale, unitTangentAt, type Point } from '../../geometry';
import { resolveOutline, type GridPoint, type Piece, type SteppedEdge } from '../../piece';
import { cellOf } from '../../shaping';
import { pointOf, type GridPlace, type Handles } from './paths';
import { singlesOf } from './reschedule';

/**
 * The handle of a quarter ellipse as a share of its half axis, 4/3 (sqrt 2 - 1): with it the middle of the cubic lies on
 * the ellipse, from (1 + 3 + 3 k) / 8 = sqrt(1/2) for the unit circle.
 */
const QUARTER = (4 / 3) * (Math.SQRT2 - 1);

/** The handles of an S from plumb to plumb, as a share of its height. */
const ESS = 1 / 2;

/** How far the handles of a curve without a natural bend stand off its chord, as a share of its length. */
const BOW = 1 / 10;

/** Rounds of fitting the places anew before the handles are solved for again. */
const ROUNDS = 4;

/** Into how many parts of its length the line of a schedule is cut to be fitted, at least. */
const PLACES = 24;

type Bend = 'plumb' | 'level';

/** Handles at thirds of the way: a curve that still runs straight. */
export function thirds(from: GridPoint, to: GridPoint): Handles {
  const at = (share: number): GridPlace => [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share];
  return [at(1 / 3), at(2 / 3)];
}

/**
 * The handles that a straight edge of a piece gets when it becomes a curve. Where the outline runs on plumb or level
 * into one of its ends, or the end lies on the middle of a symmetric piece, the curve goes on so there and the other
 * way at its other end, a quarter of an ellipse, as a neckline does; between two plumb or two level ends it is an S.
 * With neither it bows gently into the fabric.
 */
export function naturalHandles(piece: Piece, index: number, middle: number | null): Handles {
  const { from, to } = resolveOutline(piece)[index]!;
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const [start, end] = dx === 0 || dy === 0 ? [null, null] : bendsOf(piece, index, middle);
  const first = start ?? other(end);
  const last = end ?? other(start);
  if (first === null || last === null) return bowed(piece, from, to);
  const share = first === last ? ESS : QUARTER;
  const off = (bend: Bend, way: number): GridPlace =>
    bend === 'plumb' ? [0, dy * share * way] : [dx * share * way, 0];
  const [a, b] = [off(first, 1), off(last, -1)];
  return [
    [from[0] + a[0], from[1] + a[1]],
    [to[0] + b[0], to[1] + b[1]],
  ];
}

function other(bend: Bend | null): Bend | null {
  if (bend === null) return null;
  return bend === 'plumb' ? 'level' : 'plumb';
}

/** How the outline runs into an edge's beginning and out of its end, where that is plumb or level. */
function bendsOf(piece: Piece, index: number, middle: number | null): [Bend | null, Bend | null] {
  const edges = resolveOutline(piece);
  const { from, to } = edges[index]!;
  const way = { x: to[0] - from[0], y: to[1] - from[1] };
  const before = edges[(index + edges.length - 1) % edges.length]!;
  const after = edges[(index + 1) % edges.length]!;
  const bend = (tangent: Point, corner: GridPoint): Bend | null => {
    if (middle !== null && 2 * corner[0] === middle) return 'level';
    if (Math.abs(tangent.x) < 1e-9) return tangent.y * way.y > 0 ? 'plumb' : 'level';
    if (Math.abs(tangent.y) < 1e-9) return tangent.x * way.x > 0 ? 'level' : 'plumb';
    return null;
  };
  return [bend(unitTangentAt(before.path.at(-1)!, 1), from), bend(unitTangentAt(after.path[0]!, 0), to)];
}

/** Handles at thirds, moved off the chord to the left of the outline, where the fabric is. */
function bowed(piece: Piece, from: GridPoint, to: GridPoint): Handles {
  const { width, height } = cellOf(piece);
  const chord = { x: (to[0] - from[0]) * width, y: (to[1] - from[1]) * height };
  const aside = scale(leftOf(chord), BOW);
  const [a, b] = thirds(from, to);
  const moved = ([x, y]: GridPlace): GridPlace => [x + aside.x / width, y + aside.y / height];
  return [moved(a), moved(b)];
}

/**
 * The handles of the cubic that comes nearest to the line of a schedule: least squares over its corners and places
 * between them, with the ends fixed and their tangents free, on parameters by length, then by the nearest place on the
 * curve found. Source: Schneider, "An algorithm for automatically fitting digitized curves", Graphics Gems (1990),
 * there with fixed tangents.
 */
export function fittedHandles(piece: Piece, edge: SteppedEdge, to: GridPoint): Handles {
  const { width, height } = cellOf(piece);
  const places = sampled(corners(edge, to).map(({ x, y }) => ({ x: x * width, y: y * height })));
  let parameters = byLength(places);
  let handles = solved(places, parameters);
  for (let round = 0; round < ROUNDS && handles; round++) {
    const curve = cubic(places[0]!, handles[0], handles[1], places.at(-1)!);
    parameters = places.map((place) => nearestOn(curve, place).t);
    handles = solved(places, parameters) ?? handles;
  }
  if (!handles) return thirds(edge.from, to);
  const [a, b] = handles;
  return [
    [a.x / width, a.y / height],
    [b.x / width, b.y / height],
  ];
}

/** Where the steps of a schedule begin and end, in the direction of the outline. */
function corners(edge: SteppedEdge, to: GridPoint): Point[] {
  const climbs = to[1] > edge.from[1];
  let { x, y } = pointOf(climbs ? edge.from : to);
  const places = [{ x, y }];
  for (const { stitches, every } of singlesOf(edge.steps)) {
    x += climbs ? stitches : 0 - stitches;
    y += every;
    places.push({ x, y });
  }
  return climbs ? places : places.reverse();
}

/** The corners of a line and places between them, so that a long step weighs as much as many short ones. */
function sampled(line: readonly Point[]): Point[] {
  const apart = line.slice(1).map((corner, i) => distance(line[i]!, corner));
  const most = apart.reduce((sum, length) => sum + length, 0) / PLACES;
  return line.slice(0, 1).concat(
    apart.flatMap((length, i) => {
      const parts = Math.max(1, Math.ceil(length / most));
      return Array.from({ length: parts }, (_, k) => mix(line[i]!, line[i + 1]!, (k + 1) / parts));
    }),
  );
}

function byLength(places: readonly Point[]): number[] {
  const lengths = places.map((place, i) => (i === 0 ? 0 : distance(places[i - 1]!, place)));
  const total = lengths.reduce((sum, length) => sum + length, 0);
  let done = 0;
  return lengths.map((length) => (done += length) / total);
}

/** The two handles by the normal equations; null where they don't tell the handles apart. */
function solved(places: readonly Point[], parameters: readonly number[]): [Point, Point] | null {
  const [from, to] = [places[0]!, places.at(-1)!];
  const ends = cubic(from, { x: 0, y: 0 }, { x: 0, y: 0 }, to);
  let [aa, ab, bb] = [0, 0, 0];
  const [a, b] = [
    { x: 0, y: 0 },
    { x: 0, y: 0 },
  ];
  places.forEach((place, i) => {
    const t = parameters[i]!;
    const [wa, wb] = [3 * (1 - t) * (1 - t) * t, 3 * (1 - t) * t * t];
    const rest = pointAt(ends, t);
    aa += wa * wa;
    ab += wa * wb;
    bb += wb * wb;
    a.x += wa * (place.x - rest.x);
    a.y += wa * (place.y - rest.y);
    b.x += wb * (place.x - rest.x);
    b.y += wb * (place.y - rest.y);
  });
  const determinant = aa * bb - ab * ab;
  if (!(determinant > 1e-9 * aa * bb)) return null;
  return [
    { x: (a.x * bb - b.x * ab) / determinant, y: (a.y * bb - b.y * ab) / determinant },
    { x: (b.x * aa - a.x * ab) / determinant, y: (b.y * aa - a.y * ab) / determinant },
  ];
}
