import { describe, expect, it } from 'vitest';
import { changed, type Change } from '../../src/editor';
import { checkDesign, DEFAULT_HANDOUT, readDesign, type Design, type EdgeRef } from '../../src/piece';
import { readSample } from '../samples/sample';

const { design } = readSample('pullover');
const edge: EdgeRef = { piece: 'front', edge: 'neck-curve-left' };
const other: EdgeRef = { piece: 'back', edge: 'neck-center' };
const band = (d: Design) => d.pickups[0]!;

const neckband = 'neckband';

/** Every kind of change, each to something that the sample is not. */
const CHANGES: readonly Change[] = [
  { kind: 'rename', name: 'Another' },
  { kind: 'units', units: 'in' },
  { kind: 'terms', terms: 'UK' },
  { kind: 'hand', hand: 'left' },
  { kind: 'gauge', piece: 'front', gauge: { stitches: 20, rows: 28, over: 100 }, keep: 'counts' },
  { kind: 'gauge', piece: 'front', gauge: { stitches: 20, rows: 28, over: 100 }, keep: 'size' },
  { kind: 'rate', pickup: neckband, edge, rate: { kind: 'ratio', pick: 3, of: 4 } },
  { kind: 'measured', pickup: neckband, edge, mm: 70 },
  { kind: 'stated', pickup: neckband, edge, count: 15 },
  { kind: 'stated-ratio', pickup: neckband, edge, ratio: { pick: 3, of: 4, per: 'row' } },
  { kind: 'first-row', pickup: neckband, firstRow: { by: 'sections', clear: true, rib: false } },
  { kind: 'buttonholes', pickup: neckband, buttonholes: { holes: 5, stitches: 2, from: 3, to: 4 } },
  { kind: 'band', pickup: neckband, band: { multiple: 3, plus: 1 } },
  { kind: 'sections', pickup: neckband, sections: { by: 'length', parts: 4, counts: 'exact' } },
  { kind: 'sections', pickup: neckband, sections: null },
  { kind: 'handout', handout: { ...DEFAULT_HANDOUT, paper: 'Letter', note: 'Tuesday' } },
  { kind: 'pickup', pickup: neckband, fields: { target: 88, joined: false } },
];

describe('every change', () => {
  it.each(CHANGES)('$kind makes a valid design and leaves the old one alone', (change) => {
    const before = structuredClone(design);
    const next = changed(design, change);
    expect(next).not.toBe(design);
    expect(() => checkDesign(next)).not.toThrow();
    expect(design).toEqual(before);
  });

  it.each(CHANGES)('$kind made twice is made once: the second gives the very same design', (change) => {
    const once = changed(design, change);
    expect(changed(once, change)).toBe(once);
  });
});

describe('what does not change', () => {
  it('stays the same object', () => {
    const next = changed(design, { kind: 'rate', pickup: neckband, edge, rate: { kind: 'each' } });
    expect(next.pieces).toBe(design.pieces);
    expect(band(next).along).toBe(band(design).along);
    const gauged = changed(design, CHANGES[4]!);
    expect(gauged.pickups).toBe(design.pickups);
    expect(gauged.pieces[1]).toBe(design.pieces[1]);
  });

  it('is everything, where the piece or the pick-up is not there', () => {
    expect(changed(design, { kind: 'rate', pickup: 'none', edge, rate: { kind: 'each' } })).toBe(design);
    expect(
      changed(design, { kind: 'gauge', piece: 'none', gauge: { stitches: 1, rows: 1, over: 10 }, keep: 'counts' }),
    ).toBe(design);
  });

  it('is everything, where a rate is taken from an edge that has none of its own', () => {
    expect(changed(design, { kind: 'rate', pickup: neckband, edge, rate: null })).toBe(design);
  });
});

describe('a list about edges', () => {
  const rate = (d: Design, at: EdgeRef, pick: number) =>
    changed(d, { kind: 'rate', pickup: neckband, edge: at, rate: { kind: 'ratio', pick, of: 5 } });

  it('holds one entry for each edge, in the order in which they came', () => {
    const next = rate(rate(rate(design, edge, 1), other, 2), edge, 3);
    expect(band(next).rates).toEqual([
      { ...edge, rate: { kind: 'ratio', pick: 3, of: 5 } },
      { ...other, rate: { kind: 'ratio', pick: 2, of: 5 } },
    ]);
  });

  it('loses the entry of one edge and keeps the rest', () => {
    const next = changed(rate(rate(design, edge, 1), other, 2), { kind: 'rate', pickup: neckband, edge, rate: null });
    expect(band(next).rates).toEqual([{ ...other, rate: { kind: 'ratio', pick: 2, of: 5 } }]);
  });

  it('keeps fields of other hands on its entries', () => {
    const text = JSON.stringify({
      ...design,
      pickups: [{ ...band(design), stated: [{ ...edge, count: 14, from: 'page 3' }] }],
    });
    const next = changed(readDesign(text).design, { kind: 'stated', pickup: neckband, edge, count: 15 });
    expect(band(next).stated).toEqual([{ ...edge, count: 15, from: 'page 3' }]);
  });
});

it('a band that changes in one field keeps its others', () => {
  const next = changed(design, { kind: 'band', pickup: neckband, band: { drawIn: 10 } });
  expect(band(next).band).toEqual({ ...band(design).band, drawIn: 10 });
});

it('no sections means no field, so that the file says nothing of them', () => {
  const none = changed(design, { kind: 'sections', pickup: neckband, sections: null });
  expect('sections' in band(none)).toBe(false);
  expect(changed(none, { kind: 'sections', pickup: neckband, sections: null })).toBe(none);
});

it('a handout that is as it comes means no field, and nothing is planned anew for it', () => {
  expect(changed(design, { kind: 'handout', handout: null })).toBe(design);
  const some = changed(design, { kind: 'handout', handout: { ...DEFAULT_HANDOUT, paper: 'Letter' } });
  expect([some.pieces, some.pickups]).toEqual([design.pieces, design.pickups]);
  expect(some.pickups).toBe(design.pickups);
  expect(changed(some, { kind: 'handout', handout: null })).toEqual(design);
});

it('no buttonholes and no stated ratios mean no field', () => {
  expect(changed(design, { kind: 'buttonholes', pickup: neckband, buttonholes: null })).toBe(design);
  expect(changed(design, { kind: 'stated-ratio', pickup: neckband, edge, ratio: null })).toBe(design);
  const some = changed(design, {
    kind: 'buttonholes',
    pickup: neckband,
    buttonholes: { holes: 5, stitches: 2, from: 3, to: 4 },
  });
  expect('buttonholes' in band(changed(some, { kind: 'buttonholes', pickup: neckband, buttonholes: null }))).toBe(
    false,
  );
});
