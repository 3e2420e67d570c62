import { describe, expect, it } from 'vitest';
import { placeOf, quoted } from '../../src/piece/place';
import { GOOD } from './good';

describe('placeOf', () => {
  it.each([
    [[], ''],
    [['units'], 'units'],
    [['pieces', 0], 'pieces[0] "front"'],
    [['pieces', 0, 'gauge', 'rows'], 'pieces[0] "front" > gauge.rows'],
    [['pieces', 1, 'outline', 1, 'steps', 1, 'every'], 'pieces[1] "sleeve" > outline[1] "slope" > steps[1].every'],
    [['pieces', 0, 'outline', 3, 'handles', 1, 0], 'pieces[0] "front" > outline[3] "neck-right" > handles[1][0]'],
    [['pieces', 9, 'toString', 'made by'], 'pieces[9].toString."made by"'],
  ])('writes the way %j', (keys, place) => {
    expect(placeOf(GOOD, keys)).toBe(place);
  });

  it('leaves out an id that is empty or no text', () => {
    expect(placeOf([{ id: '' }, { id: 3 }], [0, 'x'])).toBe('[0].x');
    expect(placeOf([{ id: '' }, { id: 3 }], [1])).toBe('[1]');
  });
});

describe('quoted', () => {
  it('keeps to one line and cuts short', () => {
    expect(quoted('a\nb\u2028c"')).toBe('"a\\nb\\u2028c\\""');
    expect(quoted('x'.repeat(61))).toBe(`"${'x'.repeat(60)}…"`);
  });
});
