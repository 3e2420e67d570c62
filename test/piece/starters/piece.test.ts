import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkDesign, findTwins, resolveOutline, type Edge, type Piece } from '../../../src/piece';
import { startPiece, STARTERS, type MeasureValues, type StarterKind } from '../../../src/piece/starters';
import type { Gauge } from '../../../src/units';
import { designOf, KINDS, moves, pieceOf } from './drawn';

const edge = (piece: Piece, id: string): Edge => piece.outline.find((one) => one.id === id)!;
const steps = (piece: Piece, id: string): string => {
  const found = edge(piece, id);
  if (found.path !== 'stepped') throw new Error(`${id} is ${found.path}`);
  return found.steps.map(({ stitches, every, times }) => `${stitches}/${every}x${times}`).join(' ');
};

/** At the usual sizes, worked out by hand: stockinette has 2.2 stitches and 3 rows to the cm. */
describe('the usual pieces', () => {
  test('strip: 10 stitches over 88 rows, without a gauge', () => {
    const piece = pieceOf('strip');
    expect(moves(piece)).toEqual(['cast-on 10,0', 'edge 0,88', 'bound-off -10,0', 'other-edge 0,-88']);
    expect(piece.gauge).toBeUndefined();
  });

  test('rectangle: 50 cm is 110 stitches, 70 cm 210 rows', () => {
    expect(moves(pieceOf('rectangle'))).toEqual([
      'cast-on 110,0',
      'side-right 0,210',
      'bound-off -110,0',
      'side-left 0,-210',
    ]);
  });

  test('front with a round neck', () => {
    const piece = pieceOf('round-neck');
    // Half the chest 55, half the neck 9 x 2.2 = 19.8, a shoulder 20.9: 14 a side for the armhole, 40% of them at once.
    // Rows to the nearest two: 35 x 3 = 105, 60, 7.5, the neck 24. A third of 20 is bound off at each side of the middle.
    expect(moves(piece)).toEqual([
      'cast-on 110,0',
      'side-left 0,106',
      'underarm-left -6,0',
      'armhole-left -8,60',
      'shoulder-left -21,8',
      'neck-left -13,-24',
      'neck-center -14,0',
      'neck-right -13,24',
      'shoulder-right -21,-8',
      'armhole-right -8,-60',
      'underarm-right -6,0',
      'side-right 0,-106',
    ]);
    expect(steps(piece, 'armhole-left')).toBe('-2/2x1 -1/2x4 -1/4x2 0/42x1');
    expect(steps(piece, 'shoulder-left')).toBe('-6/2x1 -5/2x3');
    expect(edge(piece, 'neck-left')).toMatchObject({
      handles: [
        [20, expect.any(Number)],
        [expect.any(Number), 150],
      ],
    });
    expect(edge(piece, 'shoulder-left').finish).toBe('bound-off');
    expect(edge(piece, 'neck-center').finish).toBe('bound-off');
  });

  test('front with a V neck: 20 decreases in 52 of 60 rows', () => {
    const piece = pieceOf('v-neck');
    expect(moves(piece).slice(4, 8)).toEqual([
      'shoulder-left -21,8',
      'neck-left -20,-60',
      'neck-right -20,60',
      'shoulder-right -21,-8',
    ]);
    // 26 pairs of rows for 20 decreases: 14 take one pair, 6 take two.
    expect(steps(piece, 'neck-left')).toBe('-1/2x14 -1/4x6 0/8x1');
    expect(edge(piece, 'neck-right').from).toEqual([0, 114]);
  });

  test('back: its neck is as wide as that of the front, and shallow', () => {
    const piece = pieceOf('back');
    expect(moves(piece).slice(4, 9)).toEqual([
      'shoulder-right -21,8',
      'neck-right -5,-4',
      'neck-center -30,0',
      'neck-left -5,4',
      'shoulder-left -21,-8',
    ]);
    expect(steps(piece, 'neck-right')).toBe('-3/2x1 -2/2x1');
  });

  test('cardigan fronts mirror each other', () => {
    const [left, right] = [pieceOf('cardigan-left'), pieceOf('cardigan-right')];
    // 24 cm is 52.8 stitches, half the neck 17.6, the shoulder 20.9: 14 for the armhole.
    expect(moves(right)).toEqual([
      'cast-on 53,0',
      'front-edge 0,150',
      'neck-front -6,0',
      'neck -12,24',
      'shoulder -21,-8',
      'armhole -8,-60',
      'underarm -6,0',
      'side 0,-106',
    ]);
    const mirror = ([x, y]: readonly [number, number]) => [53 - x, y];
    const both = [...right.outline].map(({ id }) => [edge(left, id), edge(right, id)] as const);
    for (const [one, other] of both) {
      const end = left.outline[(left.outline.indexOf(one) + 1) % left.outline.length]!.from;
      expect(other.from).toEqual(mirror(end));
      if (one.path === 'stepped') expect(other).toMatchObject({ steps: one.steps });
      if (one.path === 'curve' && other.path === 'curve') {
        expect(other.handles.flat()).toEqual(
          [...one.handles]
            .reverse()
            .flatMap((handle) => mirror(handle).map((value) => expect.closeTo(value, 9) as number)),
        );
      }
    }
  });

  test('sleeve: 15 increases a side, a bell of 40 rows', () => {
    const piece = pieceOf('sleeve');
    // 22 cm is 48.4 stitches, 35 cm 77: halves of 24 and 39 (a half goes up). 44 cm is 132 rows, 13 cm 39.
    expect(moves(piece)).toEqual([
      'cast-on 48,0',
      'side-right 15,132',
      'underarm-right -6,0',
      'cap-right -23,40',
      'cap-top -20,0',
      'cap-left -23,-40',
      'underarm-left -6,0',
      'side-left 15,-132',
    ]);
    // 58 pairs of rows for 15 increases: 2 take three pairs, 13 take four.
    expect(steps(piece, 'side-right')).toBe('1/6x2 1/8x13 0/16x1');
  });

  test('raglan front: 30 decreases a side in 66 rows, a stitch left', () => {
    expect(moves(pieceOf('raglan')).slice(1, 7)).toEqual([
      'side-left 0,106',
      'underarm-left -4,0',
      'raglan-left -30,66',
      'tip-left -1,0',
      'neck-left -13,-18',
      'neck-center -14,0',
    ]);
  });

  test('heel flap: live at both ends, a slipped stitch at both sides', () => {
    const piece = pieceOf('heel-flap');
    expect(moves(piece)).toEqual(['from-leg 32,0', 'edge-right 0,32', 'heel-turn -32,0', 'edge-left 0,-32']);
    expect(resolveOutline(piece).map(({ finish, selvage }, i) => (i % 2 ? selvage : finish))).toEqual([
      'live',
      'slipped',
      'live',
      'slipped',
    ]);
  });

  test('shawl: 140 cm at 1.8 stitches and 70 cm at 3.6 rows, from two stitches', () => {
    const piece = pieceOf('shawl');
    expect(moves(piece)).toEqual(['cast-on 2,0', 'side-right 125,252', 'bound-off -252,0', 'side-left 125,-252']);
    expect(resolveOutline(piece).map(({ selvage }) => selvage)[1]).toBe('garter');
  });

  test('garter square: a ridge to every stitch', () => {
    expect(moves(pieceOf('garter-square'))).toEqual([
      'cast-on 54,0',
      'side-right 0,108',
      'bound-off -54,0',
      'side-left 0,-108',
    ]);
  });

  test('a gauge over 4 inches counts as it says', () => {
    // 50 cm at 22 over 101.6 mm is 108.3 stitches, 70 cm at 30 is 206.7 rows.
    const gauge = { stitches: 22, rows: 30, over: 101.6 };
    expect(moves(pieceOf('rectangle', {}, gauge)).slice(0, 2)).toEqual(['cast-on 108,0', 'side-right 0,206']);
  });
});

describe('measures at the ends of what they may be', () => {
  test('shoulders that fill the chest leave no armhole shaping, shoulders without a drop lie level', () => {
    const piece = pieceOf('round-neck', { chest: 400, shoulder: 110, 'neck-width': 180, 'shoulder-drop': 0 });
    expect(moves(piece).slice(1, 4)).toEqual(['side-left 0,106', 'armhole-left 0,60', 'shoulder-left -24,0']);
    expect(edge(piece, 'shoulder-left')).toMatchObject({ path: 'straight', finish: 'bound-off' });
  });

  test('a sleeve may be a tube', () => {
    expect(edge(pieceOf('sleeve', { wrist: 350 }), 'side-right').path).toBe('straight');
  });

  const gaugeOf = fc.record({
    stitches: fc.double({ min: 4, max: 200, noNaN: true }),
    rows: fc.double({ min: 4, max: 300, noNaN: true }),
    over: fc.constantFrom(100, 100.5),
  });
  const valuesOf = (kind: StarterKind): fc.Arbitrary<MeasureValues> =>
    fc.record(
      Object.fromEntries(
        STARTERS[kind].measures.map(({ key, unit, least, most }) => [
          key,
          unit === 'mm' ? fc.double({ min: least, max: most, noNaN: true }) : fc.integer({ min: least, max: most }),
        ]),
      ),
      { requiredKeys: [] },
    );
  const valid = (gauge: Gauge) =>
    [gauge.stitches, gauge.rows].every(
      (n, i) => (n * 100) / gauge.over >= 4 && (n * 100) / gauge.over <= [200, 300][i]!,
    );

  /** Whether the measures contradict each other, judged by their lengths alone. */
  function contradicts(kind: StarterKind, values: MeasureValues): boolean {
    const of = (key: string): number => {
      const found = STARTERS[kind].measures.find((measure) => measure.key === key)!;
      return values[found.key] ?? found.usual;
    };
    const high = () => of('length') + of('armhole') + of('shoulder-drop');
    switch (kind) {
      case 'round-neck':
        return of('neck-width') + 2 * of('shoulder') > of('chest') || of('neck-depth') >= high();
      case 'v-neck':
        return of('neck-width') + 2 * of('shoulder') > of('chest') || of('v-depth') >= high();
      case 'back':
        return of('neck-width') + 2 * of('shoulder') > of('chest') || of('back-neck-depth') >= high();
      case 'cardigan-left':
      case 'cardigan-right':
        return of('half-neck') + of('shoulder') > of('front-width') || of('neck-depth') >= high();
      case 'raglan':
        return of('neck-width') + 80 > of('chest') || of('neck-depth') >= of('length') + of('raglan-depth');
      case 'sleeve':
        return of('wrist') > of('upper-arm');
      default:
        return false;
    }
  }

  test.each(KINDS)('%s is right at any gauge, to any measures that do not contradict each other', (kind) => {
    fc.assert(
      fc.property(valuesOf(kind), gaugeOf.filter(valid), (values, gauge) => {
        const started = startPiece(kind, values, gauge, 'A piece', 'piece');
        if (!started.ok) {
          if (started.reason === 'too-big') expect(started.found).toBeGreaterThan(started.limit);
          else expect(contradicts(kind, values)).toBe(true);
          return;
        }
        expect(contradicts(kind, values)).toBe(false);
        checkDesign(designOf(kind, values, gauge));
        // Twins are looked for in mirrored places: where all are found, the piece is its own mirror image.
        if (started.piece.symmetric) expect(findTwins(started.piece)).not.toContain(-1);
      }),
      { numRuns: 150 },
    );
  });

  test.each(KINDS)('%s is right at its least and its most, at the coarsest and the finest gauge', (kind) => {
    const { measures } = STARTERS[kind];
    const gauges = [4, 200].flatMap((stitches) => [4, 300].map((rows) => ({ stitches, rows, over: 100 })));
    let drawn = 0;
    for (const gauge of gauges) {
      for (const end of ['least', 'most'] as const) {
        for (const one of measures) {
          const values = { [one.key]: one[end] };
          if (!startPiece(kind, values, gauge, '', 'piece').ok) continue;
          checkDesign(designOf(kind, values, gauge));
          drawn += 1;
        }
      }
    }
    expect(drawn).toBeGreaterThan(2 * measures.length);
  });
});

describe('measures at fault', () => {
  const fault = (kind: StarterKind, values: MeasureValues, gauge: Gauge | null = null) =>
    startPiece(kind, values, gauge, '', 'piece');

  test.each([
    ['out of range', 'rectangle', { width: 5 }, 'out-of-range', 'width'],
    ['no number', 'rectangle', { height: NaN }, 'out-of-range', 'height'],
    ['half a stitch', 'strip', { stitches: 10.5 }, 'not-whole', 'stitches'],
    ['a neck and shoulders wider than the chest', 'round-neck', { 'neck-width': 350 }, 'no-room', 'neck-width'],
    ['the same on a cardigan', 'cardigan-left', { 'half-neck': 200 }, 'no-room', 'half-neck'],
    ['a V below the foot', 'v-neck', { 'v-depth': 300, length: 60, armhole: 150 }, 'too-deep', 'v-depth'],
    ['a wrist wider than the arm', 'sleeve', { wrist: 400 }, 'too-wide', 'wrist'],
    ['a raglan neck that leaves no line', 'raglan', { chest: 300, 'neck-width': 250 }, 'too-wide', 'neck-width'],
  ] as const)('%s', (_, kind, values, reason, measure) => {
    expect(fault(kind, values)).toMatchObject({ ok: false, reason, measure });
  });

  test('too many stitches', () => {
    expect(fault('rectangle', { width: 2500 }, { stitches: 100, rows: 100, over: 100 })).toEqual({
      ok: false,
      reason: 'too-big',
      measure: 'width',
      what: 'stitches',
      found: 2500,
      limit: 2000,
    });
  });
});
