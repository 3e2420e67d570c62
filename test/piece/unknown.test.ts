import { describe, expect, it } from 'vitest';
import { readDesign, writeDesign } from '../../src/piece';
import { GOOD } from './good';

describe('fields of other hands', () => {
  it('are kept wherever they stand, and told of in one notice', () => {
    const document = structuredClone(GOOD) as unknown as Record<string, never[]>;
    Object.assign(document, { handout: { paper: 'A4', gauges: [{ stitches: 22, rows: 30 }] } });
    const odd = (object: object, field = 'x') => Object.assign(object, { [field]: { any: [1, null, { x: 'y' }] } });
    const { pieces, pickups } = document as unknown as { pieces: object[]; pickups: object[] };
    const inside = (object: object | undefined, ...keys: string[]) =>
      keys.reduce<unknown>((inner, key) => (inner as Record<string, unknown>)[key], object) as object;
    const places: [object, string][] = [
      [inside(pieces[0], 'gauge'), 'pieces[0] "front" > gauge.x'],
      [inside(pieces[0], 'outline', '3'), 'pieces[0] "front" > outline[3] "neck-right" > x'],
      [inside(pieces[1], 'outline', '1', 'steps', '0'), 'pieces[1] "sleeve" > outline[1] "slope" > steps[0].x'],
      [inside(pieces[2]), 'pieces[2] "strip" > x'],
      [inside(pickups[0], 'along', '1'), 'pickups[0] "neckband" > along[1].x'],
      [inside(pickups[0], 'measured', '0'), 'pickups[0] "neckband" > measured[0].x'],
      [inside(pickups[0], 'band', 'gauge'), 'pickups[0] "neckband" > band.gauge.x'],
      [inside(pickups[0], 'band'), 'pickups[0] "neckband" > band.x'],
      [inside(pickups[0], 'rates', '0', 'rate'), 'pickups[0] "neckband" > rates[0].rate.x'],
      [inside(pickups[0], 'rates', '0'), 'pickups[0] "neckband" > rates[0].x'],
      [inside(pickups[0], 'sections'), 'pickups[0] "neckband" > sections.x'],
      [inside(pickups[0], 'stated', '0'), 'pickups[0] "neckband" > stated[0].x'],
      [inside(pickups[0], 'flat'), 'pickups[0] "neckband" > flat.x'],
      [inside(document, 'handout', 'gauges', '0'), 'handout.gauges[0].x'],
      [inside(document, 'handout'), 'handout.x'],
      [document, 'x'],
    ];
    for (const [object] of places) odd(object);
    const { design, notices } = readDesign(JSON.stringify(document));
    expect(notices).toEqual([{ kind: 'unknown-fields', fields: places.map(([, at]) => ({ at, nearest: null })) }]);
    expect(JSON.parse(writeDesign(design))).toMatchObject(document);
  });

  it('may be misspelt ones, which is said; but not of a field that is there', () => {
    const { notices } = readDesign(
      JSON.stringify({ ...GOOD, pieces: GOOD.pieces.slice(2), pickups: undefined, pikcups: [], nam: '' }),
    );
    expect(notices).toEqual([
      { kind: 'unknown-fields', fields: [{ at: 'pikcups', nearest: 'pickups' }, { at: 'nam', nearest: null }] },
    ]); // prettier-ignore
  });

  it('may have the names of built-in properties', () => {
    const text = JSON.stringify(GOOD).replace('{', '{"__proto__": {"name": 1}, "constructor": 2, "toString": 3, ');
    const { design, notices } = readDesign(text);
    expect(notices[0]).toMatchObject({ fields: [{ at: '__proto__' }, { at: 'constructor' }, { at: 'toString' }] });
    expect(Object.getPrototypeOf(design)).toBe(Object.prototype);
    expect(writeDesign(design)).toContain('"__proto__": { "name": 1 },\n  "constructor": 2,\n  "toString": 3,');
  });

  it('of another kind of edge count as such', () => {
    const document = structuredClone(GOOD);
    Object.assign(document.pieces[2]!.outline[1]!, { handles: [[0, 0], [1, 1]] }); // prettier-ignore
    expect(readDesign(JSON.stringify(document)).notices).toMatchObject([
      { fields: [{ at: 'pieces[2] "strip" > outline[1] "side" > handles' }] },
    ]);
  });
});
