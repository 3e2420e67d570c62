import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { verdictOf, type PickupPlan } from '../../src/pickup';
import type { Units } from '../../src/piece';
import { boardOf, edgeBoards, TERMS, verdictClause, type Asked, type Board } from '../../src/text';
import { along, piece, plan, rate, rectangle } from '../pickup/builders';
import { pickupOf, planSample, SAMPLES } from '../samples/sample';

const cm = { terms: TERMS.US, units: 'cm' } as const;
const inches = { terms: TERMS.US, units: 'in' } as const;

/** Every number of a plan that can be asked for. */
function allAsked({ edges, choices, sections, bandEdge }: PickupPlan): Asked[] {
  return [
    ...edges.flatMap(({ ratios }, edge): Asked[] => [
      { of: 'length', edge },
      { of: 'places', edge },
      { of: 'wanted', edge },
      { of: 'count', edge },
      { of: 'stretch', edge },
      ...ratios.map((_, ratio): Asked => ({ of: 'ratio', edge, ratio })),
    ]),
    { of: 'total' },
    { of: 'all-wanted' },
    { of: 'first-row' },
    { of: 'gaps' },
    { of: 'free-edge' },
    ...(bandEdge?.corners ?? []).map((_, corner): Asked => ({ of: 'corner', corner })),
    ...choices.map((_, choice): Asked => ({ of: 'choice', choice })),
    ...sections.flatMap((_, section): Asked[] => [
      { of: 'section', section },
      { of: 'running', section },
      { of: 'after', section },
    ]),
  ];
}

/** One side of a sum as written: roots of two squares, then × and ÷ from the left, then + and −. */
function reckoned(written: string): number {
  const flat = written
    .replace(/√\(([\d.]+)² \+ ([\d.]+)²\)/g, (_, a: string, b: string) => `${Math.hypot(Number(a), Number(b))}`)
    .replace(/\b(?:cm|in|stitch(?:es)?|rows?|even|to the (?:cm|inch))\b/g, ' ')
    .replace(/(\d)\/(\d)/g, '$1 ÷ $2')
    .replace(/[^\d.+−×÷e-]/g, ' ');
  return written === '' ? NaN : terms(flat);
}

function terms(flat: string): number {
  let sum = 0;
  for (const [, sign, product] of `+ ${flat}`.matchAll(/([+−])\s*([^+−]+)/g)) {
    sum += (sign === '−' ? -1 : 1) * factors(product!);
  }
  return sum;
}

function factors(product: string): number {
  let value = 1;
  for (const [, sign, number] of ` × ${product}`.matchAll(/([×÷])\s*([\d.e-]+)/g)) {
    value = sign === '÷' ? value / Number(number) : value * Number(number);
  }
  return value;
}

/** Every `… = …` of a board: what the left side comes to, and the right side as it is shown. */
function sums({ lines }: Board): { line: string; left: number; right: string }[] {
  return lines.flatMap((line) => {
    const bare = line.replace(/^[^:=]*: /, '');
    const at = bare.indexOf(' = ');
    if (at < 0) return [];
    const right = /^[\d.]+/.exec(bare.slice(at + 3))?.[0] ?? '';
    return [{ line, left: reckoned(bare.slice(0, at)), right }];
  });
}

function checkSums(made: PickupPlan, units: Units): number {
  let checked = 0;
  for (const asked of allAsked(made)) {
    const board = boardOf(made, asked, { terms: TERMS.US, units });
    for (const { line, left, right } of board ? sums(board) : []) {
      // Half of the last digit shown, and a little for operands that end at five decimals.
      const half = 0.51 * 10 ** -(right.split('.')[1]?.length ?? 0);
      expect(Math.abs(left - Number(right)), `${board!.what}: ${line}`).toBeLessThanOrEqual(half + 1e-6 * left);
      checked += 1;
    }
  }
  return checked;
}

describe('what stands on the board', () => {
  test.each(SAMPLES.flatMap((name) => [[name, 'cm'] as const, [name, 'in'] as const]))(
    'comes out as it is written, in %s in %s',
    (name, units) => {
      for (const made of planSample(name).pickups) {
        expect(checkSums(made, units)).toBeGreaterThanOrEqual(name === 'strip' ? 1 : 10);
      }
    },
  );

  test('comes out as it is written on any rectangle with a slope', () => {
    fc.assert(
      fc.property(
        fc.record({
          stitches: fc.integer({ min: 4, max: 200 }),
          rows: fc.integer({ min: 4, max: 300 }),
          slope: fc.integer({ min: 1, max: 40 }),
          gauge: fc.double({ min: 10, max: 40, noNaN: true }),
          multiple: fc.integer({ min: 1, max: 6 }),
          parts: fc.integer({ min: 2, max: 9 }),
          drawIn: fc.integer({ min: 0, max: 20 }),
          units: fc.constantFrom<Units>('cm', 'in'),
        }),
        ({ stitches, rows, slope, gauge, multiple, parts, drawIn, units }) => {
          const outline = [
            { from: [0, 0] },
            { from: [stitches + slope, 0] },
            { from: [stitches, rows] },
            { from: [0, rows] },
          ];
          const band = { gauge: { stitches: gauge, rows: 30 }, multiple, drawIn, rows: parts };
          const sections = { by: 'length', parts };
          const made = plan(piece(outline), along(['edge-1', 'edge-2', 'edge-3'], { band, sections }));
          checkSums(made, units);
        },
      ),
      { numRuns: 60 },
    );
  });

  test('the little reader of sums finds a wrong one', () => {
    expect(reckoned('6.55 cm × 2.2 stitches to the cm')).toBeCloseTo(14.41, 9);
    expect(reckoned('√(3² + 4²)')).toBe(5);
    expect(reckoned('2 × 1.5 + 3')).toBe(6);
    expect(reckoned('28 − 14')).toBe(14);
    expect(reckoned('19 × 2/3')).toBeCloseTo(12.6667, 3);
    expect(sums({ what: '', short: '', lines: ['Across: 12 stitches ÷ 2.2 to the cm = 5.5 cm'] })).toEqual([
      { line: 'Across: 12 stitches ÷ 2.2 to the cm = 5.5 cm', left: 12 / 2.2, right: '5.5' },
    ]);
  });
});

describe('lines', () => {
  const neckband = pickupOf(planSample('pullover'), 'neckband');
  const lines = (asked: Asked, made = neckband, voice: Parameters<typeof boardOf>[2] = cm) =>
    boardOf(made, asked, voice)?.lines;

  test('the free edge of a band, and what a corner of it takes', () => {
    const border = planSample('blanket').pickups[0]!;
    expect(lines({ of: 'free-edge' }, border)).toEqual([
      'Depth: 12 rounds ÷ 3.2 to the cm = 3.8 cm',
      '4 outer corners of 90 degrees, half of which has the tangent 1: 4 × 2 × 1 × 3.75 = 30.0 cm',
      'In all: 310 + 30 = 340.0 cm',
      '340 cm × 1.6 stitches to the cm = 544.0',
    ]);
    expect(lines({ of: 'corner', corner: 0 }, border)).toEqual([
      '90 degrees, half of which has the tangent 1.',
      'Each side in a round: 1 × 1.6 stitches to the cm ÷ 3.2 rounds to the cm = 0.50',
      'In 12 rounds: 0.5 × 12 = 6.0',
    ]);
    expect(lines({ of: 'free-edge' })).toContain(
      'Curves turn by 294.6 degrees, in radians 5.14: 5.14 × 2.67 = 13.7 cm',
    );
    expect(boardOf(border, { of: 'corner', corner: 4 }, cm)).toBeNull();
  });

  test('a length by the gauge: straight up, across, on a slope, round a curve', () => {
    expect(lines({ of: 'length', edge: 0 })).toEqual(['8 rows ÷ 3 to the cm = 2.7 cm']);
    expect(lines({ of: 'length', edge: 2 })).toEqual(['12 stitches ÷ 2.2 to the cm = 5.5 cm']);
    expect(lines({ of: 'length', edge: 1 })).toEqual([
      'Across: 9 stitches ÷ 2.2 to the cm = 4.1 cm',
      'Up: 14 rows ÷ 3 to the cm = 4.7 cm',
      'Straight from corner to corner: √(4.1² + 4.7²) = 6.2 cm',
      'Along the curve: 6.5 cm',
    ]);
    expect(lines({ of: 'length', edge: 5 })).toEqual([
      'A step of 2 stitches by 2 rows: √(0.91² + 0.67²) = 1.13 cm',
      '2 steps: 2 × 1.13 = 2.3 cm',
    ]);
    const slope = plan(
      piece([{ from: [0, 0] }, { from: [20, 0] }, { from: [14, 28] }, { from: [0, 28] }]),
      along(['edge-1']),
    );
    expect(lines({ of: 'length', edge: 0 }, slope)).toEqual([
      'Across: 6 stitches ÷ 2 to the cm = 3.0 cm',
      'Up: 28 rows ÷ 2.8 to the cm = 10.0 cm',
      'Along the slope: √(3² + 10²) = 10.4 cm',
    ]);
  });

  test('a length by steps, each a straight line', () => {
    const steps = [
      { stitches: -3, every: 2, times: 1 },
      { stitches: -1, every: 2, times: 2 },
      { stitches: 0, every: 4, times: 1 },
    ];
    const made = plan(
      piece([{ from: [0, 0] }, { from: [20, 0], path: 'stepped', steps }, { from: [15, 10] }, { from: [0, 10] }]),
      along(['edge-1']),
    );
    // 5 mm a stitch and 25/7 mm a row: √(15² + 7.14²) = 16.61, √(5² + 7.14²) = 8.72, 4 rows = 14.29 mm.
    expect(lines({ of: 'length', edge: 0 }, made)).toEqual([
      'A step of 3 stitches by 2 rows: √(1.5² + 0.7²) = 1.66 cm',
      'A step of 1 stitch by 2 rows: √(0.5² + 0.71²) = 0.87 cm',
      '4 rows even ÷ 2.8 to the cm = 1.43 cm',
      '4 steps: 1.66 + 2 × 0.87 + 1.43 = 4.8 cm',
    ]);
  });

  test('the tape and the join, where they count', () => {
    const tape = along(['right'], { measured: [{ piece: 'piece', edge: 'right', mm: 94 }] });
    expect(lines({ of: 'length', edge: 0 }, plan(rectangle(20, 28), tape))).toContain(
      'The tape says 9.4 cm, and that counts.',
    );
    const joined = plan(rectangle(20, 28), along(['right'], { measure: 'join' }));
    expect(lines({ of: 'length', edge: 0 }, joined)).toContain(
      'The join, one stitch inside the edge: 10.0 cm, and that counts.',
    );
  });

  test('places of each kind', () => {
    expect(lines({ of: 'places', edge: 2 })).toEqual(['12 bound-off stitches.']);
    const heel = planSample('heel-flap').pickups[0]!;
    expect(lines({ of: 'places', edge: heel.edges.findIndex(({ unit }) => unit === 'chain') }, heel)?.at(-1)).toMatch(
      /^One chain to every two rows: \d+ ÷ 2 = \d+$/,
    );
  });

  test('what is wanted, and why this count', () => {
    expect(lines({ of: 'wanted', edge: 1 })).toEqual([
      'The band: 22 stitches and 30 rows to 10 cm.',
      '6.55 cm × 2.2 stitches to the cm = 14.4, so 14',
    ]);
    expect(lines({ of: 'count', edge: 1 })).toEqual([
      'The band: 22 stitches and 30 rows to 10 cm.',
      '6.55 cm × 2.2 stitches to the cm = 14.4, so 14',
      'Its mirror image, Front, right neck curve, gets the same.',
    ]);
    expect(boardOf(neckband, { of: 'count', edge: 1 }, cm)?.what).toBe('Front, left neck curve: why 14');
  });

  test('a count that the total moved, and one given though another would be wanted', () => {
    const moved = plan(
      rectangle(30, 28),
      along(['right'], { band: { multiple: 4, gauge: { stitches: 22, rows: 30 } } }),
    );
    expect(lines({ of: 'count', edge: 0 }, moved)?.[2]).toBe(
      'The total is shared out so that all edges together are off by as little as can be.',
    );
    const given = plan(rectangle(30, 28), along(['right'], { rates: [rate('right', { kind: 'count', count: 25 })] }));
    expect(lines({ of: 'count', edge: 0 }, given)).toEqual(['25, as given', 'By length 20 would be wanted.']);
  });

  test('the verdict is the one that the check gives', () => {
    const flat = { slight: 3, strong: 8 };
    for (const count of [17, 19, 20, 21, 22, 30]) {
      const rates = [rate('right', { kind: 'count', count })];
      const made = plan(rectangle(30, 28), along(['right'], { rates, flat }));
      const verdict = verdictOf(count / made.edges[0]!.wanted! - 1, flat);
      expect(lines({ of: 'stretch', edge: 0 }, made)?.at(-1)).toContain(` it ${verdictClause(verdict)}.`);
    }
  });

  test('a total by its repeat, and by what the pattern demands', () => {
    expect(lines({ of: 'total' })?.slice(1)).toEqual(['21 × 4 = 84, 0.6% short', '22 × 4 = 88, 4.2% over']);
    const demanded = plan(rectangle(30, 28), along(['right'], { target: 19 }));
    expect(lines({ of: 'total' }, demanded)).toContain('19, as the pattern demands.');
  });

  test('markers and sections share the total out', () => {
    const made = plan(rectangle(30, 28), along(['right', 'left'], { sections: { by: 'length', parts: 3 } }));
    expect(lines({ of: 'running', section: 0 }, made)).toEqual(['1 of 3 parts: 40 × 1 ÷ 3 = 13.33, so 13']);
    expect(lines({ of: 'section', section: 1 }, made)).toEqual([
      '2 of 3 parts: 40 × 2 ÷ 3 = 26.67, so 27',
      '27 − 13 = 14',
    ]);
    const corners = plan(rectangle(30, 28), along(['right', 'top'], { sections: { by: 'landmarks', parts: 4 } }));
    expect(lines({ of: 'running', section: 0 }, corners)).toEqual(['20 stitches lie before this corner.']);
  });

  test('a plain ratio', () => {
    const made = plan(rectangle(30, 29), along(['right']));
    const at = made.edges[0]!.ratios.findIndex(({ pick, of }) => pick === 2 && of === 3);
    expect(lines({ of: 'ratio', edge: 0, ratio: at }, made)?.[0]).toBe('29 × 2/3 = 19.33, so 19');
  });

  test('a first row with its proof', () => {
    const slipped = { right: { selvage: 'slipped' } };
    const made = plan(rectangle(10, 64, slipped), along(['right'], { target: 115 }));
    expect(lines({ of: 'first-row' }, made)?.at(-1)).toBe('uses 64 stitches, leaves 115');
  });

  test('the stitches between buttonholes, alike or one more in some, and moved into the rib', () => {
    const band = { fabric: 'rib', multiple: 4, plus: 2 };
    const gaps = (buttonholes: object) =>
      lines({ of: 'gaps' }, plan(rectangle(30, 200), along(['right'], { target: 114, band, buttonholes })));
    expect(gaps({ holes: 6, stitches: 2, from: 3, to: 3 })).toEqual([
      '114 in all, less both ends and the holes: 114 − 3 − 3 − 6 × 2 = 96',
      'One gap less than there are holes: 6 − 1 = 5',
      '96 ÷ 5 = 19.2, so 4 gaps of 19 and 1 of 20',
      '4 × 19 + 1 × 20 = 96',
    ]);
    expect(gaps({ holes: 5, stitches: 2, from: 4, to: 4 })?.at(-1)).toBe('96 ÷ 4 = 24');
    expect(gaps({ holes: 6, stitches: 2, from: 3, to: 3, rib: true })?.at(-1)).toMatch(
      /^Moved into the purl columns of the rib: \d+ or \d+ stitches between the holes\.$/,
    );
    expect(gaps({ holes: 1, stitches: 2, from: 3, to: 3 })).toBeUndefined();
    expect(gaps({ holes: 40, stitches: 4, from: 3, to: 3 })).toBeUndefined();
  });

  test('the gaps on the board are those of the plan', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 12 }),
        fc.integer({ min: 1, max: 5 }),
        fc.integer({ min: 1, max: 9 }),
        fc.integer({ min: 120, max: 200 }),
        (holes, stitches, ends, target) => {
          const buttonholes = { holes, stitches, from: ends, to: ends };
          const made = plan(rectangle(30, 200), along(['right'], { target, buttonholes }));
          const [, shared] = / so (\d+ gaps? of \d+ and \d+ of \d+)/.exec(lines({ of: 'gaps' }, made)![2]!) ?? [];
          const { gaps } = made.holes!;
          const least = Math.min(...gaps);
          const longer = gaps.filter((gap) => gap > least).length;
          const few = gaps.length - longer;
          const said = `${few} ${few === 1 ? 'gap' : 'gaps'} of ${least} and ${longer} of ${least + 1}`;
          expect(shared).toBe(longer === 0 ? undefined : said);
        },
      ),
      { numRuns: 60 },
    );
  });

  test('inches', () => {
    expect(lines({ of: 'length', edge: 0 }, neckband, inches)).toEqual(['8 rows ÷ 7.62 to the inch = 1.0 in']);
  });
});

describe('without something to reckon', () => {
  test('a strip without a gauge has no lengths', () => {
    const strip = planSample('strip').pickups[0]!;
    expect(boardOf(strip, { of: 'length', edge: 0 }, cm)).toBeNull();
    expect(boardOf(strip, { of: 'wanted', edge: 0 }, cm)).toBeNull();
    expect(edgeBoards(strip, 0, cm).map(({ what }) => what)).toContain('Strip, edge: places');
  });

  test('what is not there has no board', () => {
    const neckband = pickupOf(planSample('pullover'), 'neckband');
    for (const asked of [
      { of: 'count', edge: 99 },
      { of: 'ratio', edge: 0, ratio: 99 },
      { of: 'choice', choice: 9 },
      { of: 'section', section: 99 },
      { of: 'first-row' },
    ] satisfies Asked[]) {
      expect(boardOf(neckband, asked, cm)).toBeNull();
    }
  });
});
