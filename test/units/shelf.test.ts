import { describe, expect, it } from 'vitest';
import { shelf } from '../../src/units';

/** A shelf, and what was made for it so far. */
function counting(most: number) {
  const kept = shelf<object, string>(most);
  const made: string[] = [];
  const get = (holder: object, from: readonly unknown[]) =>
    kept(holder, from, () => {
      made.push(from.join());
      return from.join();
    });
  return { get, made };
}

describe('shelf', () => {
  it('makes a thing once for a holder and the same values', () => {
    const { get, made } = counting(2);
    const [a, b] = [{}, {}];
    expect([get(a, [1, 'x']), get(a, [1, 'x']), get(a, [1, 'y']), get(b, [1, 'x'])]).toEqual([
      '1,x',
      '1,x',
      '1,y',
      '1,x',
    ]);
    expect(made).toEqual(['1,x', '1,y', '1,x']);
  });

  it('compares by object, and by how many there are', () => {
    const { get, made } = counting(2);
    const [holder, one] = [{}, {}];
    for (const from of [[one], [one], [{}], [one, undefined], [one]]) get(holder, from);
    expect(made).toHaveLength(4);
  });

  it('tells minus zero from zero, and finds what is not a number again', () => {
    const { get, made } = counting(2);
    const holder = {};
    for (const from of [[0], [-0], [0], [NaN], [NaN]]) get(holder, from);
    expect(made).toHaveLength(3);
  });

  it('keeps the latest few', () => {
    const { get, made } = counting(2);
    const holder = {};
    for (const value of [1, 2, 1, 2, 3, 2, 3, 1]) get(holder, [value]);
    expect(made).toEqual(['1', '2', '3', '1']);
  });

  it('keeps nothing where the making fails', () => {
    const kept = shelf<object, number>(1);
    const holder = {};
    const fail = () => {
      throw new RangeError('no');
    };
    expect(() => kept(holder, [], fail)).toThrow(RangeError);
    expect(kept(holder, [], () => 4)).toBe(4);
  });
});
