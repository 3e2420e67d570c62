import fc from 'fast-check';
import { cubic, line, type Cubic, type Line, type Point, type Segment } from '../../src/geometry';

/** Random places, directions and segments for the properties, and the movements of the plane that they are put to. */
const coordinate = fc
  .double({ min: -100, max: 100, noNaN: true })
  // Nothing here is made for lengths whose squares are no numbers any more.
  .map((value) => (Math.abs(value) < 1e-12 ? 0 : value));

export const points: fc.Arbitrary<Point> = fc.record({ x: coordinate, y: coordinate });

/** Corners and handles on whole numbers: many curves with coinciding, level and collinear points. */
const gridPoints: fc.Arbitrary<Point> = fc.record({
  x: fc.integer({ min: -4, max: 4 }),
  y: fc.integer({ min: -4, max: 4 }),
});

export const anyCubics: fc.Arbitrary<Cubic> = fc.oneof(
  fc.tuple(points, points, points, points).map((p) => cubic(...p)),
  fc.tuple(gridPoints, gridPoints, gridPoints, gridPoints).map((p) => cubic(...p)),
);

export const anyLines: fc.Arbitrary<Line> = fc.tuple(points, points).map((p) => line(...p));

export const anySegments: fc.Arbitrary<Segment> = fc.oneof({ weight: 4, arbitrary: anyCubics }, anyLines);

/** Parameters, both ends among them. */
export const parameters: fc.Arbitrary<number> = fc.oneof(
  { weight: 6, arbitrary: fc.double({ min: 1e-9, max: 1, noNaN: true }) },
  fc.constantFrom(0, 0.5, 1),
);

export function mapped<S extends Segment>(seg: S, move: (p: Point) => Point): S;
export function mapped(seg: Segment, move: (p: Point) => Point): Segment {
  return seg.kind === 'line'
    ? line(move(seg.from), move(seg.to))
    : cubic(move(seg.from), move(seg.c1), move(seg.c2), move(seg.to));
}

/** Turned about the origin, counterclockwise. */
export function rotated<S extends Segment>(seg: S, angle: number): S {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return mapped(seg, (p) => ({ x: c * p.x - s * p.y, y: s * p.x + c * p.y }));
}

export function shifted<S extends Segment>(seg: S, by: Point): S {
  return mapped(seg, (p) => ({ x: p.x + by.x, y: p.y + by.y }));
}
