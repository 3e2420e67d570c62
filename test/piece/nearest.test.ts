import { describe, expect, it } from 'vitest';
import { nearest } from '../../src/piece';

const EDGES = ['neck-left', 'neck-right', 'armhole', 'cast-on', 'a'];

describe('nearest', () => {
  it.each([
    ['neck-lef', 'neck-left'],
    ['neckleft', 'neck-left'],
    ['NECK-RIGHT', 'neck-right'],
    ['armhloe', 'armhole'],
    ['cst-onn', 'cast-on'],
    ['shoulder', null],
    ['', null],
    ['b', null],
    ['x'.repeat(5000), null],
  ])('takes %j for %j', (word, candidate) => {
    expect(nearest(word, EDGES)).toBe(candidate);
  });

  it('takes swapped neighbours for one slip', () => {
    expect(nearest('hnad', ['hand'])).toBe('hand');
    expect(nearest('hndas', ['hand'])).toBeNull();
  });

  it('takes the earlier of two that are as near', () => {
    expect(nearest('edge-3', ['edge-1', 'edge-2'])).toBe('edge-1');
  });
});
