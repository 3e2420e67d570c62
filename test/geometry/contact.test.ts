import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cubic, findCrossing, line, nearestOn, pointAt, reversed, type Point, type Segment } from '../../src/geometry';
import { APART, contactOf } from '../../src/geometry/contact';
import { shifted } from './arbitrary';

const at = (x: number, y: number): Point => ({ x, y });

describe('contact of two segments', () => {
  const arch = cubic(at(0, 0), at(0, 10), at(20, 10), at(20, 0));

  it('of lines: crossing, touching, lying on each other, apart', () => {
    const contact = (b: Segment): Point | null => contactOf(line(at(0, 0), at(10, 0)), b, APART, 1e-9);
    expect(contact(line(at(4, -2), at(4, 2)))).toEqual(at(4, 0));
    expect(contact(line(at(4, 0), at(4, 2)))).toEqual(at(4, 0));
    expect(contact(line(at(10, 0), at(12, 2)))).toEqual(at(10, 0));
    expect(contact(line(at(6, 0), at(16, 0)))).not.toBeNull();
    expect(contact(line(at(-5, 0), at(16, 0)))).not.toBeNull();
    expect(contact(line(at(4, 1e-6), at(4, 2)))).toBeNull();
    expect(contact(line(at(10.1, 0), at(16, 0)))).toBeNull();
    expect(contact(line(at(0, 1), at(10, 1)))).toBeNull();
  });

  it('of a line that ends a hair short of another, whichever end and whichever of them', () => {
    const long = line(at(0, 0), at(10, 0));
    for (const [gap, touches] of [
      [5e-10, true],
      [2e-9, false],
    ] as const) {
      const short = line(at(4, gap), at(5, 3));
      for (const [a, b] of [
        [long, short],
        [long, reversed(short)],
        [short, long],
        [reversed(short), long],
      ] as const) {
        expect(contactOf(a, b, APART, 1e-9) !== null).toBe(touches);
      }
    }
  });

  it('of a line and an arch: through it, on its top, just above it', () => {
    const contact = (y: number): Point | null => contactOf(arch, line(at(-5, y), at(25, y)), APART, 1e-9);
    const through = contact(3)!;
    expect(through.y).toBeCloseTo(3, 8);
    expect(nearestOn(arch, through).distance).toBeLessThan(1e-8);
    expect(contact(7.5)).not.toBeNull();
    expect(contact(7.5 + 1e-7)).toBeNull();
  });

  it('takes curves as touching that are closer than can be told', () => {
    const low = cubic(at(0, 0), at(5, 10), at(15, 10), at(20, 0));
    expect(contactOf(low, shifted(low, at(0, 1e-5)), APART, 1e-9)).toBeNull();
    const place = contactOf(low, shifted(low, at(0, 5e-9)), APART, 1e-9)!;
    expect(nearestOn(low, place).distance).toBeLessThan(1e-8);
  });

  it('ends on points that are no numbers', () => {
    const broken = cubic(at(NaN, 0), at(0, NaN), at(NaN, NaN), at(1, 1));
    expect(contactOf(arch, broken, APART, 1e-9)).toBeNull();
    expect(findCrossing([[arch], [broken]])).toBeNull();
  });

  it('near another without touching: a strip as narrow as a thousandth', () => {
    const outer = cubic(at(0, 0), at(30, 40), at(70, 40), at(100, 0));
    const inner = shifted(outer, at(0, 1e-3));
    const strip = (top: Segment): Segment[][] => [
      [outer],
      [line(outer.to, top.to)],
      [reversed(top)],
      [line(top.from, outer.from)],
    ];
    expect(findCrossing(strip(inner))).toBeNull();
    const through = cubic(inner.from, inner.c1, at(inner.c2.x, inner.c2.y - 1), inner.to);
    expect(findCrossing(strip(through))).not.toBeNull();
  });
});

describe('random outlines', () => {
  const turnOf = (a: Point, b: Point, c: Point): number => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
  const corners = fc.uniqueArray(
    fc.record({ x: fc.integer({ min: 0, max: 12 }), y: fc.integer({ min: 0, max: 12 }) }),
    {
      minLength: 3,
      maxLength: 7,
      selector: (p) => `${p.x} ${p.y}`,
    },
  );

  it('of straight edges on the grid: exact arithmetic agrees', () => {
    const onEdge = (p: Point, a: Point, b: Point): boolean =>
      turnOf(a, b, p) === 0 && (p.x - a.x) * (p.x - b.x) + (p.y - a.y) * (p.y - b.y) <= 0;
    const meet = (a: Point, b: Point, c: Point, d: Point): boolean =>
      (turnOf(a, b, c) * turnOf(a, b, d) < 0 && turnOf(c, d, a) * turnOf(c, d, b) < 0) ||
      onEdge(c, a, b) ||
      onEdge(d, a, b) ||
      onEdge(a, c, d) ||
      onEdge(b, c, d);
    fc.assert(
      fc.property(corners, (p) => {
        const n = p.length;
        let wanted = false;
        for (let i = 0; i < n; i++) {
          for (let j = i + 1; j < n; j++) {
            const [a, b, c, d] = [p[i]!, p[(i + 1) % n]!, p[j]!, p[(j + 1) % n]!];
            if (j === i + 1) wanted ||= onEdge(d, a, b) || onEdge(a, c, d);
            else if (i === 0 && j === n - 1) wanted ||= onEdge(c, a, b) || onEdge(b, c, d);
            else wanted ||= meet(a, b, c, d);
          }
        }
        const found = findCrossing(p.map((from, i) => [line(from, p[(i + 1) % n]!)]));
        expect(found !== null).toBe(wanted);
      }),
      { numRuns: 1000 },
    );
  });

  it('of curves: the place found lies on both edges, and without one fine polylines stay apart', () => {
    const bent = fc.tuple(corners, fc.array(fc.integer({ min: -4, max: 4 }), { minLength: 28, maxLength: 28 }));
    fc.assert(
      fc.property(bent, ([p, shifts]) => {
        const n = p.length;
        const edges = p.map((from, i): Segment[] => {
          const to = p[(i + 1) % n]!;
          const [a, b, c, d] = shifts.slice(4 * i, 4 * i + 4) as [number, number, number, number];
          return [
            cubic(
              from,
              at((2 * from.x + to.x) / 3 + a, (2 * from.y + to.y) / 3 + b),
              at((from.x + 2 * to.x) / 3 + c, (from.y + 2 * to.y) / 3 + d),
              to,
            ),
          ];
        });
        const found = findCrossing(edges);
        if (found !== null) {
          for (const i of [found.first, found.second])
            expect(nearestOn(edges[i]![0]!, found.at).distance).toBeLessThan(1e-6);
          return;
        }
        const fine = edges.map(([seg]) => Array.from({ length: 41 }, (_, k) => pointAt(seg!, k / 40)));
        for (let i = 0; i < n; i++) {
          for (let j = i + 1; j < n; j++) {
            for (let k = 1; k <= 40; k++) {
              for (let l = 1; l <= 40; l++) {
                // Chords beside a shared corner may meet where their curves just do not.
                if ((j === i + 1 && k > 30 && l < 10) || (i === 0 && j === n - 1 && k < 10 && l > 30)) continue;
                const [a, b, c, d] = [fine[i]![k - 1]!, fine[i]![k]!, fine[j]![l - 1]!, fine[j]![l]!];
                const crossed = turnOf(a, b, c) * turnOf(a, b, d) < -1e-4 && turnOf(c, d, a) * turnOf(c, d, b) < -1e-4;
                expect(crossed).toBe(false);
              }
            }
          }
        }
      }),
      { numRuns: 200 },
    );
  });
});
