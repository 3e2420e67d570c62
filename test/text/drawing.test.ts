import { describe, expect, it } from 'vitest';
import {
  dimensionText,
  drawingDescription,
  drawingTitle,
  drawnEdgeSize,
  drawnGauge,
  rulerLength,
  rulerNumber,
} from '../../src/text';

describe('the words of a drawing', () => {
  it('give the size of an edge', () => {
    expect(drawnEdgeSize(12, 24)).toBe('12 sts × 24 rows');
    expect(drawnEdgeSize(1, 0)).toBe('1 st');
    expect(drawnEdgeSize(0, 1)).toBe('1 row');
  });

  it('give lengths in the shown unit', () => {
    expect(dimensionText(500, '110 sts', { units: 'cm' })).toBe('50.0 cm · 110 sts');
    expect(dimensionText(254, '60 sts', { units: 'in' })).toBe('10 in · 60 sts');
    expect(dimensionText(null, '60 sts', { units: 'in' })).toBe('60 sts');
    expect(rulerLength(254, { units: 'in' })).toBeCloseTo(10, 12);
    expect(rulerLength(254, { units: 'cm' })).toBeCloseTo(25.4, 12);
  });

  it('give a gauge', () => {
    expect(drawnGauge({ stitches: 22, rows: 30, over: 100 }, { units: 'cm' })).toBe('22 sts and 30 rows to 10 cm');
    expect(drawnGauge({ stitches: 20, rows: 28, over: 100 }, { units: 'in' })).toBe('20.3 sts and 28.4 rows to 4 in');
    expect(drawnGauge({ stitches: 5, rows: 7, over: 25.4 }, { units: 'cm' })).toBe('19.7 sts and 27.6 rows to 10 cm');
    expect(drawnGauge({ stitches: 5.25, rows: 7, over: 25.4 }, { units: 'in' })).toBe('5.25 sts and 7 rows to 1 in');
  });

  it('write the numbers of rulers in the language of the page', () => {
    expect(rulerNumber(2.5, { units: 'cm' })).toBe('2.5');
    expect(rulerNumber(2.5, { units: 'cm', language: 'de' })).toBe('2,5');
  });

  it('name a drawing', () => {
    expect(drawingTitle('Pullover', 'Neckband')).toBe('Pullover: Neckband');
    expect(drawingTitle('Pullover', null)).toBe('Pullover');
  });

  it('tell what is drawn', () => {
    const band = { name: 'Neckband', picked: 108, edges: 4 };
    expect(drawingDescription(['Front', 'Back'], band)).toBe(
      'Front and Back, drawn with the right side facing. Neckband: 108 stitches along 4 edges.',
    );
    expect(drawingDescription(['Front'], null)).toBe('Front, drawn with the right side facing.');
    expect(drawingDescription([], null)).toBe('Nothing is drawn yet.');
  });
});
