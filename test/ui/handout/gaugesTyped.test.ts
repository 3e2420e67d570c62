import { describe, expect, it } from 'vitest';
import { readGauges, writeGauges } from '../../../src/ui/handout/gaugesTyped';
import { gaugesFault } from '../../../src/text';

const gauge = (stitches: number, rows: number) => ({ stitches, rows, over: 100 });

describe('gauges as they are typed', () => {
  it.each([
    ['20 × 28', [gauge(20, 28)]],
    ['20x28', [gauge(20, 28)]],
    ['20 X 28, 24*32', [gauge(20, 28), gauge(24, 32)]],
    ['20/28; 24 by 32', [gauge(20, 28), gauge(24, 32)]],
    ['5,5 × 7; 20 x 28', [gauge(5.5, 7), gauge(20, 28)]],
    ['18,5 × 24,25, 20 × 28', [gauge(18.5, 24.25), gauge(20, 28)]],
    ['18.5 × 24', [gauge(18.5, 24)]],
    ['20 × 28\n24 × 32', [gauge(20, 28), gauge(24, 32)]],
    ['  20 × 28 ,', [gauge(20, 28)]],
    ['', []],
    [' ; ', []],
    ['4 × 4, 200 × 300', [gauge(4, 4), gauge(200, 300)]],
  ])('%j is read', (typed, gauges) => {
    expect(readGauges(typed)).toEqual({ ok: true, gauges });
  });

  it.each([
    ['twenty by twenty-eight', 'twenty by twenty-eight'],
    ['20', '20'],
    ['20 × ', '20 ×'],
    ['20 × 28 × 3', '20 × 28 × 3'],
    ['3 × 28', '3 × 28'],
    ['20 × 301', '20 × 301'],
    ['201 × 28', '201 × 28'],
    ['-20 × 28', '-20 × 28'],
    ['20 × 28; nonsense; 24 × 32', 'nonsense'],
    ['Infinity × NaN', 'Infinity × NaN'],
  ])('%j is none, and the fault names what was typed', (typed, part) => {
    const read = readGauges(typed);
    expect(read).toEqual({ ok: false, why: gaugesFault(part) });
    expect(read.ok ? '' : read.why).toContain(`"${part}"`);
  });

  it('are read back as they are written, whatever length they are told over', () => {
    expect(writeGauges([gauge(20, 28), gauge(5.5, 7)])).toBe('20 × 28, 5.5 × 7');
    expect(writeGauges([{ stitches: 10, rows: 14, over: 50 }])).toBe('20 × 28');
    expect(writeGauges([])).toBe('');
    for (const gauges of [[gauge(20, 28)], [gauge(18.25, 24.5), gauge(200, 300), gauge(4, 4)]]) {
      expect(readGauges(writeGauges(gauges))).toEqual({ ok: true, gauges });
    }
  });
});
