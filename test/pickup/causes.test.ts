import { describe, expect, it } from 'vitest';
import { misreadings, type PickupPlan } from '../../src/pickup';
import { along, plan, rate, rectangle, type Raw } from './builders';

/** 112 rows of 28 over 10 cm are 40 cm: at 20 stitches over 10 cm 80 are wanted, 5 of 7 rows. */
const side = (fields: Raw, edge: Raw = {}) => plan(rectangle(20, 112, { right: edge }), along(['right'], fields));
const ratioOf = (pick: number, of: number, per?: string) => ({
  piece: 'piece',
  edge: 'right',
  pick,
  of,
  ...(per ? { per } : {}),
});
const causes = (made: PickupPlan, at = 0) => made.stated[at]!.causes;

describe('a stated ratio', () => {
  it('gives a count on this edge, by rows unless it says otherwise', () => {
    expect(side({ statedRatios: [ratioOf(3, 4)] }).stated).toMatchObject([
      { what: 'ratio', ratio: { pick: 3, of: 4, per: 'row', places: 112 }, stated: 84, verdict: 'slightly loose' },
    ]);
    expect(side({ statedRatios: [ratioOf(5, 7)] }).stated).toMatchObject([
      { stated: 80, verdict: 'lies flat', causes: [] },
    ]);
  });

  it.each([
    ['slipped', 'row', 112, 84],
    ['slipped', 'chain', 56, 42],
    ['garter', 'ridge', 56, 42],
    ['plain', 'ridge', 56, 42],
  ])('on a %s edge, counted per %s, has %d places', (selvage, per, places, count) => {
    const [check] = side({ statedRatios: [ratioOf(3, 4, per)] }, { selvage }).stated;
    expect(check).toMatchObject({ ratio: { per, places }, stated: count });
  });

  it('may take more than one from each chain', () => {
    expect(side({ statedRatios: [ratioOf(3, 2, 'chain')] }, { selvage: 'slipped' }).stated[0]).toMatchObject({
      stated: 84,
    });
  });

  it('is counted in stitches where there are no rows', () => {
    const top = { piece: 'piece', edge: 'top', pick: 1, of: 2, per: 'row' };
    const made = plan(rectangle(20, 112), along(['top'], { statedRatios: [top] }));
    expect(made.stated[0]).toMatchObject({ ratio: { per: 'stitch', places: 20 }, stated: 10, verdict: 'will pucker' });
  });

  it('that is off says which one this edge wants', () => {
    expect(causes(side({ statedRatios: [ratioOf(9, 10)] }))).toEqual([
      { kind: 'other-ratio', pick: 5, of: 7, per: 'row' },
    ]);
  });

  it('worked into chains that are two rows each is told', () => {
    const made = side({ statedRatios: [ratioOf(5, 7, 'chain')] }, { selvage: 'slipped' });
    expect(causes(made)[0]).toEqual({ kind: 'openings-counted-as-rows', unit: 'chain' });
  });
});

describe('misreadings', () => {
  it('of 3 of 4 are what its words allow', () => {
    expect(misreadings(3, 4)).toEqual([
      { as: 'skip-of', share: 3 / 7 },
      { as: 'turned-round', share: 1 / 4 },
      { as: 'of-then-skip', share: 4 / 5 },
    ]);
  });

  it('leave out what is right and what is the same', () => {
    expect(misreadings(1, 2).map(({ as }) => as)).toEqual(['skip-of', 'of-then-skip']);
    expect(misreadings(2, 5).map(({ as }) => as)).toEqual(['skip-of', 'turned-round', 'of-then-skip', 'one-of']);
    expect(misreadings(4, 4)).toEqual([]);
  });

  it.each([
    [47, 'skip-of'],
    [32, 'turned-round'],
    [98, 'of-then-skip'],
    [16, 'one-of'],
  ])('%d on 112 rows that go by 5 of 7 is %s', (count, as) => {
    const stated = [{ piece: 'piece', edge: 'right', count }];
    expect(causes(side({ stated }))).toEqual([{ kind: 'ratio-misread', pick: 5, of: 7, as }]);
  });

  it('go by the ratio that the pattern states for the edge', () => {
    const made = side({ statedRatios: [ratioOf(3, 4)], got: 48 });
    expect(made.gotCheck!.causes).toEqual([{ kind: 'ratio-misread', pick: 3, of: 4, as: 'skip-of' }]);
  });

  it("go by the edge's own ratio where it has one", () => {
    const stated = [{ piece: 'piece', edge: 'right', count: 48 }];
    const made = side({ stated, rates: [rate('right', { kind: 'ratio', pick: 3, of: 4 })] });
    expect(causes(made)).toEqual([{ kind: 'ratio-misread', pick: 3, of: 4, as: 'skip-of' }]);
  });
});

describe('causes of a whole', () => {
  const around = (fields: Raw) => plan(rectangle(40, 112), along(['right', 'top', 'left'], fields));

  it('take every edge they concern, and the others as wanted', () => {
    const made = around({ statedTotal: 56 + 40 + 56 });
    expect(made.wanted).toBeCloseTo(200, 9);
    expect(causes(made)).toEqual([{ kind: 'openings-counted-as-rows', unit: 'row' }]);
  });

  it('are rows in all where nothing else fits', () => {
    expect(causes(around({ statedTotal: 180 }))).toEqual([{ kind: 'lengthened', rows: -28, edges: 2 }]);
  });

  it('are told of what came out too', () => {
    const made = around({ got: 152 });
    expect(made.gotCheck).toMatchObject({ what: 'got', stated: 152, planned: 200, verdict: 'will pucker' });
    expect(made.gotCheck!.causes).toEqual([{ kind: 'openings-counted-as-rows', unit: 'row' }]);
    expect(around({}).gotCheck).toBeNull();
    expect(around({ got: 201 }).gotCheck).toMatchObject({ verdict: 'lies flat', causes: [] });
  });
});

describe('other causes', () => {
  it('are the draw-in left out, a wider edge, another size', () => {
    const stated = [{ piece: 'piece', edge: 'right', count: 80 }];
    expect(causes(side({ stated, band: { drawIn: 10 } }))).toEqual([{ kind: 'not-reduced' }]);
    const top = [{ piece: 'piece', edge: 'top', count: 24 }];
    expect(causes(plan(rectangle(20, 112), along(['top'], { stated: top })))).toEqual([
      { kind: 'widened', stitches: 4 },
    ]);
    const none = [{ piece: 'piece', edge: 'top', count: 0 }];
    expect(causes(plan(rectangle(20, 112), along(['top'], { stated: none })))).toEqual([{ kind: 'other-size' }]);
  });
});

describe('agreements', () => {
  it('are sums, multiples and sides that are as they should be', () => {
    const sides = ['right', 'top', 'left'].map((edge, i) => ({ piece: 'piece', edge, count: [80, 40, 80][i] }));
    const made = plan(
      rectangle(40, 112, {}, { symmetric: true }),
      along(['right', 'top', 'left'], {
        stated: sides,
        statedTotal: 200,
        statedSections: [100, 100],
        band: { multiple: 4 },
      }),
    );
    expect(made.agreements).toEqual([
      { kind: 'sections-sum', sum: 200, stated: 'total' },
      { kind: 'edges-sum', sum: 200 },
      { kind: 'total-fits', total: 200, multiple: 4, plus: 0 },
      {
        kind: 'sides-alike',
        left: { piece: 'piece', edge: 'right' },
        right: { piece: 'piece', edge: 'left' },
        count: 80,
      },
    ]);
    expect(made.notes).toEqual([]);
  });
});
