import { describe, expect, test } from 'vitest';
import { startPiece, type MeasureValues, type StarterKind } from '../../src/piece/starters';
import { starterFaultText, TERMS } from '../../src/text';
import type { Gauge } from '../../src/units';

describe('what is wrong with measures', () => {
  const said = (kind: StarterKind, values: MeasureValues, gauge: Gauge | null = null, units: 'cm' | 'in' = 'cm') => {
    const started = startPiece(kind, values, gauge, '', 'piece');
    if (started.ok) throw new Error('nothing is wrong');
    return starterFaultText(started, { terms: TERMS.US, units });
  };

  test.each<[StarterKind, MeasureValues, string]>([
    ['rectangle', { width: 5 }, 'Width: 0.5 cm is too little; give 2.0 cm to 250.0 cm.'],
    ['strip', { rows: 2001 }, 'Rows: 2001 is too much; give 2 to 2000.'],
    ['strip', { rows: NaN }, 'Rows: this is no number; give 2 to 2000.'],
    ['strip', { stitches: 10.5 }, 'Stitches: 10.5 is not whole; give 10 or 11.'],
    [
      'round-neck',
      { 'neck-width': 350 },
      'A neck of 35.0 cm and two shoulders of 9.5 cm each are wider than the chest of 50.0 cm; make the chest wider, or the neck or the shoulders narrower.',
    ],
    [
      'cardigan-right',
      { 'half-neck': 200 },
      'Half a neck of 20.0 cm and a shoulder of 9.5 cm are wider than the front of 24.0 cm; make the front wider, or the neck or the shoulder narrower.',
    ],
    [
      'sleeve',
      { wrist: 400 },
      'A wrist of 40.0 cm is wider than the upper arm of 35.0 cm; make the wrist narrower or the upper arm wider.',
    ],
    [
      'raglan',
      { chest: 300, 'neck-width': 250 },
      'A neck of 25.0 cm leaves no room for raglan lines on a chest of 30.0 cm; make the neck narrower or the chest wider.',
    ],
    [
      'v-neck',
      { 'v-depth': 300, length: 60, armhole: 150 },
      'A neck 30.0 cm deep reaches the foot of a piece 23.5 cm long; make the neck shallower or the piece longer.',
    ],
  ])('%s', (kind, values, sentence) => {
    expect(said(kind, values)).toBe(sentence);
  });

  test('too many stitches, in the words of the country', () => {
    const gauge = { stitches: 100, rows: 100, over: 100 };
    expect(said('rectangle', { width: 2500 }, gauge)).toBe(
      'Width: in this gauge it comes to 2500 stitches, and 2000 is the most; make it smaller or the gauge coarser.',
    );
  });

  test('in inches', () => {
    expect(said('rectangle', { width: 5 }, null, 'in')).toBe('Width: ¼ in is too little; give ¾ in to 98⅜ in.');
  });
});
