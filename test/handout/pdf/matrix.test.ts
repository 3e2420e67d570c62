import { describe, expect, it } from 'vitest';
import { growth, readTransform, times } from '../../../src/handout/pdf/matrix';

const at = (transform: string, x: number, y: number): number[] => {
  const [a, b, c, d, e, f] = readTransform(transform);
  return [a * x + c * y + e, b * x + d * y + f].map((one) => Math.round(one * 1e9) / 1e9 + 0);
};

describe('readTransform', () => {
  it.each([
    ['translate(3 4)', [4, 6]],
    ['translate(3)', [4, 2]],
    ['scale(2)', [2, 4]],
    ['scale(-1,1)', [-1, 2]],
    ['rotate(90)', [-2, 1]],
    ['rotate(90 1 1)', [0, 1]],
    ['matrix(1 2 3 4 5 6)', [1 + 6 + 5, 2 + 8 + 6]],
    ['translate(10,0) scale(2)', [12, 4]],
    ['scale(2) translate(10 0)', [22, 4]],
    ['', [1, 2]],
  ])('takes %j', (transform, place) => {
    expect(at(transform, 1, 2)).toEqual(place);
  });

  it.each(['skewX(3)', 'rotate(1 2)', 'translate(a b)', 'scale', 'matrix(1 2 3)'])('refuses %j', (transform) => {
    expect(() => readTransform(transform)).toThrow(RangeError);
  });
});

it('times puts the second inside the first', () => {
  const both = times(readTransform('translate(10 0)'), readTransform('scale(2)'));
  expect(both).toEqual([...readTransform('translate(10 0) scale(2)')]);
});

it('growth is how much longer lengths get, whichever way they turn', () => {
  expect(growth(readTransform('rotate(30) scale(-3 3)'))).toBeCloseTo(3, 12);
});
