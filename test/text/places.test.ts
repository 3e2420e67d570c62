import { describe, expect, test } from 'vitest';
import { everyPlace, needleText, placesText, startText, TERMS, unitOf } from '../../src/text';
import { along, piece, plan, rectangle } from '../pickup/builders';

const { US, UK } = TERMS;

describe('places', () => {
  test('are called by what the edge is made of', () => {
    const made = plan(rectangle(30, 42, { left: { selvage: 'slipped' } }), along(['bottom', 'right', 'top', 'left']));
    expect(made.edges.map((edge) => placesText(made, edge, US))).toEqual([
      '30 cast-on stitches',
      '42 rows',
      '30 bound-off stitches',
      expect.stringMatching(/^21 chains and 21 gaps between chains$/),
    ]);
    expect(placesText(made, made.edges[2]!, UK)).toBe('30 cast-off stitches');
    expect(made.edges.map((edge) => unitOf(made, edge))).toEqual(['stitch', 'row', 'stitch', 'place']);
    expect(everyPlace(made, made.edges[1]!, US)).toBe('one from every row');
    expect(everyPlace(made, made.edges[3]!, US)).toBe('one from every place');
  });

  test('are held or provisional stitches', () => {
    const made = plan(
      rectangle(30, 42, { top: { finish: 'live' }, bottom: { finish: 'provisional' } }),
      along(['bottom', 'top']),
    );
    expect(made.edges.map((edge) => placesText(made, edge, US))).toEqual([
      '29 provisional stitches',
      '30 held stitches',
    ]);
  });

  test('of several sorts are told apart', () => {
    const steps = [{ stitches: -4, every: 2, times: 3 }];
    const made = plan(
      piece([
        { from: [0, 0] },
        { from: [30, 0], id: 'slope', path: 'stepped', steps },
        { from: [18, 6] },
        { from: [0, 6] },
      ]),
      along(['slope']),
    );
    expect(placesText(made, made.edges[0]!, US)).toBe('6 rows and 12 stitches');
  });
});

describe('needleText', () => {
  test('says once where the needle goes on each kind of edge', () => {
    const made = plan(rectangle(30, 42, { left: { selvage: 'garter' } }), along(['right', 'top', 'left']));
    expect(needleText(made, US)).toEqual([
      'Bound-off stitches: into the middle of the stitch just below the bind-off chain, not under it',
      'Rows: between the selvage stitch and the one beside it, a whole stitch in',
      'Ridges: through the bump at the very edge',
    ]);
    expect(needleText(made, UK)[0]).toMatch(/^Cast-off stitches: .* cast-off chain/);
  });

  test('follows the knitter who works half a stitch in, or under the edge strand', () => {
    const inset = (value: number) => needleText(plan(rectangle(30, 42), along(['right'], { inset: value })), US);
    expect(inset(0.5)).toEqual(['Rows: through the middle of the selvage stitch, half a stitch in']);
    expect(inset(0)).toEqual(['Rows: under the outermost strand']);
  });

  test('says what to do at the foot of a step', () => {
    const slope = piece([
      { from: [0, 0] },
      { from: [30, 0], id: 'slope', path: 'stepped', steps: [{ stitches: -4, every: 2, times: 3 }] },
      { from: [18, 6] },
      { from: [0, 6] },
    ]);
    expect(needleText(plan(slope, along(['slope'])), US).at(-1)).toBe(
      'Foot of a step: pass over the large hole, it would show',
    );
    expect(needleText(plan(slope, along(['slope'], { stepHoles: true, joined: true })), US).at(-1)).toContain(
      'worked together with its neighbour on the first round',
    );
  });
});

describe('startText', () => {
  test('names the end of the edge as it lies on the drawing', () => {
    const made = plan(rectangle(30, 42), along(['right', 'top', 'left', 'bottom']));
    expect(made.edges.map((edge) => startText(edge))).toEqual([
      'at the bottom of Piece, right',
      'at the right end of Piece, top',
      'at the top of Piece, left',
      'at the left end of Piece, bottom',
    ]);
  });
});
