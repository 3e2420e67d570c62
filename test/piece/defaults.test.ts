import { describe, expect, it } from 'vitest';
import { DEFAULT_HANDOUT, readDesign, titleOf, writeDesign } from '../../src/piece';

const OUTLINE = [
  { id: 'foot', from: [0, 0], path: 'straight' },
  { id: 'side', from: [6, 0], path: 'stepped', steps: [{ stitches: 0, every: 88 }] },
  { id: 'head', from: [6, 88], path: 'straight' },
  { id: 'far-side', from: [0, 88], path: 'straight' },
];
const along = [{ piece: 'button-band', edge: 'side' }];

function read(more: object, piece: object = {}) {
  const pieces = [{ id: 'button-band', outline: OUTLINE, ...piece }];
  return readDesign(JSON.stringify({ format: 'edgewise', version: 1, pieces, ...more }));
}

describe('defaults', () => {
  it('fills in everything that a file may leave out', () => {
    const { design, notices } = read({ pickups: [{ id: 'edging', along }] });
    expect(notices).toEqual([]);
    expect(design).toEqual({
      format: 'edgewise',
      version: 1,
      name: 'Button band',
      units: 'cm',
      terms: 'US',
      hand: 'right',
      pieces: [
        {
          id: 'button-band',
          name: 'Button band',
          fabric: 'stockinette',
          symmetric: false,
          outline: [
            OUTLINE[0],
            { id: 'side', from: [6, 0], path: 'stepped', steps: [{ stitches: 0, every: 88, times: 1 }] },
            OUTLINE[2],
            OUTLINE[3],
          ],
        },
      ],
      pickups: [
        {
          id: 'edging',
          name: 'Edging',
          along: [{ piece: 'button-band', edge: 'side', backwards: false, part: [0, 1] }],
          joined: false,
          measure: 'edge',
          measured: [],
          inset: 1,
          band: { fabric: 'stockinette', multiple: 1, plus: 0, drawIn: 0 },
          rates: [],
          target: null,
          spread: 'even',
          stated: [],
          statedTotal: null,
          statedSections: null,
          got: null,
          flat: { slight: 3, strong: 8 },
          stepHoles: false,
          halfLoop: false,
          garterAt: 'bump',
        },
      ],
    });
  });

  it('reads a document without pick-ups', () => {
    expect(read({}).design.pickups).toEqual([]);
  });

  it('counts a gauge over 100 mm, of a piece and of a band', () => {
    const gauge = { stitches: 22, rows: 30 };
    const { design } = read({ pickups: [{ id: 'edging', along, band: { gauge } }] }, { gauge });
    expect(design.pieces[0]!.gauge).toEqual({ ...gauge, over: 100 });
    expect(design.pickups[0]!.band.gauge).toEqual({ ...gauge, over: 100 });
  });

  it('gives buttonholes two stitches and three at each end', () => {
    const { design, notices } = read({ pickups: [{ id: 'edging', along, buttonholes: { holes: 5, to: 4 } }] });
    expect(notices).toEqual([]);
    expect(design.pickups[0]!.buttonholes).toEqual({ holes: 5, to: 4, stitches: 2, from: 3 });
  });

  it('places a first row over the whole of it, and asks no more of it than is said', () => {
    const rowOf = (firstRow: object | null) =>
      read({ pickups: [{ id: 'edging', along, firstRow }] }).design.pickups[0]!.firstRow;
    expect(rowOf({})).toEqual({ by: 'whole', clear: false, rib: false });
    expect(rowOf({ by: 'sections', clear: true })).toEqual({ by: 'sections', clear: true, rib: false });
    expect(rowOf(null)).toBeUndefined();
  });

  it('takes null for no gauge, no sections and no buttonholes', () => {
    const { design } = read(
      { pickups: [{ id: 'edging', along, sections: null, buttonholes: null, band: { gauge: null } }] },
      { gauge: null },
    );
    expect(design.pieces[0]).not.toHaveProperty('gauge');
    expect(design.pickups[0]).not.toHaveProperty('sections');
    expect(design.pickups[0]).not.toHaveProperty('buttonholes');
    expect(design.pickups[0]!.band).not.toHaveProperty('gauge');
  });

  it('divides by length, exactly, unless sections say otherwise', () => {
    const sectionsOf = (sections: object) =>
      read({ pickups: [{ id: 'edging', along, sections }] }).design.pickups[0]!.sections;
    expect(sectionsOf({ parts: 6 })).toEqual({ by: 'length', parts: 6, counts: 'exact' });
    expect(sectionsOf({ by: 'landmarks', parts: 0 })).toEqual({ by: 'landmarks', parts: 0, counts: 'exact' });
    expect(sectionsOf({ by: 'landmarks' })).toMatchObject({ by: 'landmarks', counts: 'exact' });
  });

  it('keeps one threshold and fills in the other', () => {
    const { design } = read({ pickups: [{ id: 'edging', along, flat: { strong: 12 } }] });
    expect(design.pickups[0]!.flat).toEqual({ slight: 3, strong: 12 });
  });

  it('prints a handout as it comes, but for what the file says of it', () => {
    const handoutOf = (handout: object) => read({ handout }).design.handout;
    expect(handoutOf({})).toEqual(DEFAULT_HANDOUT);
    expect(handoutOf({ paper: 'Letter', gauges: [{ stitches: 20, rows: 28 }], blocks: [] })).toEqual({
      ...DEFAULT_HANDOUT,
      paper: 'Letter',
      gauges: [{ stitches: 20, rows: 28, over: 100 }],
      blocks: [],
    });
  });

  it('says nothing of a handout where the file does not', () => {
    expect(read({}).design).not.toHaveProperty('handout');
    expect(read({ handout: null }).design).not.toHaveProperty('handout');
  });

  it('puts defaults behind the fields of the file, which keep their order', () => {
    const { design } = read({ hand: 'left', units: 'in' });
    expect(Object.keys(design)).toEqual(['format', 'version', 'pieces', 'hand', 'units', 'name', 'terms', 'pickups']);
    expect(Object.keys(JSON.parse(writeDesign(design)) as object)).toEqual(Object.keys(design));
  });
});

describe('titleOf', () => {
  it.each([
    ['neck-left', 'Neck left'],
    ['button_band  2', 'Button band 2'],
    ['V', 'V'],
    ['-', '-'],
    ['égal', 'Égal'],
  ])('makes a title of %s', (id, title) => {
    expect(titleOf(id)).toBe(title);
  });
});
