import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  chainJoinLength,
  chainLength,
  chainPointAt,
  cornerAngle,
  cubic,
  lengthOf,
  line,
  pointAt,
  type Chain,
  type Point,
} from '../../src/geometry';
import { points } from './arbitrary';

const at = (x: number, y: number): Point => ({ x, y });
const stairs: Chain = [line(at(0, 0), at(3, 0)), line(at(3, 0), at(3, 4)), line(at(3, 4), at(9, 4))];

describe('a chain', () => {
  it('is as long as its segments', () => {
    expect(chainLength(stairs)).toBe(13);
    expect(chainLength([])).toBe(0);
  });

  it('turns at its corners', () => {
    expect(cornerAngle(stairs[0]!, stairs[1]!)).toBeCloseTo(Math.PI / 2, 12);
    expect(cornerAngle(stairs[1]!, stairs[2]!)).toBeCloseTo(-Math.PI / 2, 12);
  });

  it('has a parallel that gains at one corner what it loses at the other', () => {
    expect(chainJoinLength(stairs, 1)).toBeCloseTo(13, 12);
    expect(chainJoinLength(stairs.slice(0, 2), 1)).toBeCloseTo(7 - 2, 12);
    expect(chainJoinLength(stairs.slice(1), 1)).toBeCloseTo(10 + 2, 12);
    expect(chainJoinLength([], 1)).toBe(0);
  });

  it('has the parallel of a polygon: model formula against measured corners', () => {
    // A regular 12-gon of circumradius 10, counterclockwise; its inner parallel is the same shape, smaller.
    const corner = (i: number): Point => at(10 * Math.cos((i * Math.PI) / 6), 10 * Math.sin((i * Math.PI) / 6));
    const ring = Array.from({ length: 13 }, (_, i) => line(corner(i), corner(i + 1)));
    const side = 20 * Math.sin(Math.PI / 12);
    const inradius = 10 * Math.cos(Math.PI / 12);
    // Thirteen sides have twelve corners between them; the first and the last are whole at their outer ends.
    expect(chainJoinLength(ring, 2)).toBeCloseTo(12 * side * (1 - 2 / inradius) + side, 10);
  });

  it('passes over segments of no length, and keeps the corner round them', () => {
    const dot = line(at(3, 0), at(3, 0));
    expect(chainJoinLength([stairs[0]!, dot, stairs[1]!], 1)).toBeCloseTo(5, 12);
    expect(chainLength([stairs[0]!, dot, stairs[1]!])).toBe(7);
  });
});

describe('chainPointAt', () => {
  it('walks round corners', () => {
    expect(chainPointAt(stairs, 5)).toEqual({ index: 1, t: 0.5, point: at(3, 2), tangent: at(0, 1) });
    expect(chainPointAt(stairs, 3)).toMatchObject({ index: 0, t: 1, point: at(3, 0) });
    expect(chainPointAt(stairs, 3.001).index).toBe(1);
  });

  it('keeps to its ends', () => {
    expect(chainPointAt(stairs, -1)).toMatchObject({ index: 0, t: 0, point: at(0, 0) });
    expect(chainPointAt(stairs, 13)).toMatchObject({ index: 2, t: 1, point: at(9, 4) });
    expect(chainPointAt(stairs, 99)).toMatchObject({ index: 2, t: 1 });
    expect(() => chainPointAt([], 0)).toThrow(RangeError);
  });

  it('finds the place at any distance, with the lengths given or not', () => {
    fc.assert(
      fc.property(
        fc.array(points, { minLength: 7, maxLength: 7 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (p, share) => {
          const chain: Chain = [cubic(p[0]!, p[1]!, p[2]!, p[3]!), cubic(p[3]!, p[4]!, p[5]!, p[6]!)];
          const length = chainLength(chain);
          const place = chainPointAt(chain, share * length);
          expect(chainPointAt(chain, share * length, chain.map(lengthOf))).toEqual(place);
          expect(pointAt(chain[place.index]!, place.t)).toEqual(place.point);
          const first = lengthOf(chain[0]!);
          expect(place.index).toBe(share * length > first ? 1 : 0);
        },
      ),
    );
  });
});
