import { describe, expect, test } from 'vitest';
import { allFlat, planDesign, surveyDesign, type DesignPlan, type PickupPlan } from '../../src/pickup';
import {
  checkDocument,
  checkReport,
  displayWidth,
  measureDocument,
  measureReport,
  planReport,
  scheduleText,
  voiceOf,
} from '../../src/text';
import { along, design, rectangle } from '../pickup/builders';
import { planSample, SAMPLES } from '../samples/sample';

const isFlat = (plan: PickupPlan) => allFlat(plan.stated, plan.notes);
const rowsOf = ({ design: whole }: DesignPlan) =>
  surveyDesign(whole).map(({ measured: edge, ...rest }) => ({ ...rest, edge }));

function stated(fields: Record<string, unknown>): DesignPlan {
  return planDesign(design(rectangle(30, 112), along(['right'], { name: 'Band', ...fields })));
}

describe.each(SAMPLES)('the reports of the sample %s', (name) => {
  const plan = planSample(name);
  const measured = measureReport(plan.design, rowsOf(plan));
  const planned = planReport(plan);

  test('keep to the width of a page and end in one line break', () => {
    for (const text of [measured, planned, checkReport(plan, isFlat)]) {
      expect(text.endsWith('\n') && !text.endsWith('\n\n')).toBe(true);
      for (const line of text.split('\n')) {
        expect(displayWidth(line), line).toBeLessThanOrEqual(104);
        expect(line).toBe(line.trimEnd());
      }
    }
  });

  test('name every edge, with its schedule under it where it has one', () => {
    for (const { piece, edges } of plan.measured) {
      expect(measured).toContain(`${piece.name}: `);
      for (const edge of edges.filter(({ shape }) => shape === 'sloped' || shape === 'curved')) {
        expect(measured.replace(/\s+/g, ' ')).toContain(scheduleText(edge, voiceOf(plan.design)));
      }
    }
    for (const made of plan.pickups) {
      expect(planned).toContain(`${made.pickup.name}: ${made.target} stitches`);
      for (const edge of made.edges) expect(planned).toMatch(new RegExp(`${edge.count} `));
    }
  });
});

describe('measureReport', () => {
  test('is a table', () => {
    const plan = planDesign(design(rectangle(30, 42, { right: { selvage: 'slipped' } }), [], { name: 'Swatch' }));
    expect(measureReport(plan.design, rowsOf(plan))).toBe(
      [
        'Swatch',
        '',
        'Piece: stockinette, gauge 20 stitches and 28 rows to 10 cm',
        '',
        'Edge    Shape       Made of          Stitches  Rows     Edge     Join       Places',
        '------  ----------  ---------------  --------  ----  -------  -------  -----------',
        'bottom  horizontal  cast on                30     0  15.0 cm  15.0 cm  30 stitches',
        'right   vertical    slipped selvage         0    42  15.0 cm  15.0 cm    21 chains',
        'top     horizontal  bound off              30     0  15.0 cm  15.0 cm  30 stitches',
        'left    vertical    plain selvage           0    42  15.0 cm  15.0 cm      42 rows',
        '',
      ].join('\n'),
    );
  });

  test('has the same as data, in full precision', () => {
    const plan = planSample('vest');
    const document = measureDocument(plan.design, rowsOf(plan));
    expect(document).toMatchObject({ format: 'edgewise-measure', version: 1, design: plan.design.name });
    expect(document.edges).toHaveLength(plan.measured.reduce((sum, { edges }) => sum + edges.length, 0));
    const [first] = plan.measured;
    expect(document.edges.slice(0, first!.edges.length).map(({ edge, edgeMm }) => [edge, edgeMm])).toEqual(
      first!.edges.map((edge) => [edge.id, edge.edgeMm]),
    );
    const bare = planSample('strip');
    expect(measureDocument(bare.design, rowsOf(bare)).edges.every(({ edgeMm }) => edgeMm === null)).toBe(true);
    expect(measureReport(bare.design, rowsOf(bare))).toContain('no gauge, so no lengths');
  });
});

describe('planReport', () => {
  test('shows the edges, the sums and the choices of a pick-up', () => {
    const band = { gauge: { stitches: 21, rows: 28 }, multiple: 4, drawIn: 5 };
    const text = planReport(stated({ band, sections: { parts: 2 } }));
    const flowing = text.replace(/\s+/g, ' ');
    expect(text).toContain('Band: 80 stitches\n=================\n');
    expect(flowing).toContain('drawn in by 5%; a multiple of 4.');
    expect(text).toContain('Counts that fit: 76 (4.8% short) or 80 (0.3% over).');
    expect(text).toMatch(/Piece, right {2}112 rows {2}40\.0 cm {2}by length {4}79\.8 {7}80 {2}0\.3% over/);
    expect(text).toContain('Piece, right: 40 cm × 2.1 stitches to the cm × 0.95 = 79.8, so 80');
    expect(text).toMatch(/Section {2}Stitches {2}Running {3}Length\n.*\n {6}1 {8}40 {7}40 {2}20\.\d cm/);
    expect(text).toContain('Finished width\n\n  Piece: 29 of 30 stitches show, 14.5 cm across;');
  });

  test('shows what the first row leaves in each section where it changes them', () => {
    const text = planReport(stated({ target: 81, sections: { parts: 4, counts: 'same' } }));
    expect(text).toContain('Section  Stitches  Running   Length  After the first row');
    expect(text).toContain('20 in each of 4 sections are 80 in all; the first row makes 81 of them.');
  });

  test('shows one pick-up when asked', () => {
    const plan = planSample('vest');
    const text = planReport(plan, {}, plan.pickups[1]!.pickup.id);
    expect(text).toContain(`${plan.pickups[1]!.pickup.name}: `);
    expect(text).not.toContain(`${plan.pickups[0]!.pickup.name}: `);
  });
});

describe('checkReport', () => {
  test('shows a count that will pucker, and why', () => {
    const plan = stated({ stated: [{ piece: 'piece', edge: 'right', count: 56 }] });
    const text = checkReport(plan, isFlat);
    expect(text).toMatch(/Piece, right {6}56 {4}80\.0 {7}80 {2}30% short {2}will pucker {2}14 to 10 cm/);
    expect(text.replace(/\s+/g, ' ')).toContain(
      'Piece, right: 56 is one for every two rows: ridges or chains were counted as rows.',
    );
    expect(text).toMatch(/Of 1 count stated, 1 does not lie flat\.\n$/);
  });

  test('has a line for a ratio and for what came out, each with what it implies and its cause', () => {
    const ratio = { piece: 'piece', edge: 'right', pick: 3, of: 4, per: 'chain' };
    const text = checkReport(
      stated({ statedRatios: [ratio], got: 47, statedTotal: 80, band: { multiple: 4 } }),
      isFlat,
    );
    expect(text).toMatch(
      /Piece, right {2}3 of every 4 chains: 42 {4}80\.0 {7}80 {2}48% short {2}will pucker {2}10\.5 to 10 cm/,
    );
    expect(text).toMatch(/What you got {23}47 {4}80\.0 {7}80 {2}41% short {2}will pucker {2}11\.8 to 10 cm/);
    const flowing = text.replace(/\s+/g, ' ');
    expect(flowing).toContain('What you got: 47 would suit an edge 46 rows shorter:');
    expect(flowing).toContain("The total stated, 80, is a multiple of 4, as the band's pattern needs.");
    expect(flowing).toContain('Up to 3% off lies flat, up to 8% is slightly tight or loose, more puckers or ruffles.');
  });

  test('is pleased where all lies flat, and says where nothing is stated', () => {
    const one = stated({ stated: [{ piece: 'piece', edge: 'right', count: 81 }] });
    expect(checkReport(one, isFlat)).toMatch(/The count stated lies flat\.\n$/);
    const two = stated({ stated: [{ piece: 'piece', edge: 'right', count: 81 }], statedTotal: 81 });
    expect(checkReport(two, isFlat)).toMatch(/All 2 counts stated lie flat\.\n$/);
    expect(checkReport(stated({}), isFlat)).toContain('Band: nothing is stated, so there is nothing to check.');
  });

  test('is not pleased where what is stated contradicts itself', () => {
    const plan = stated({ statedTotal: 80, statedSections: [27, 27, 27] });
    const text = checkReport(plan, isFlat);
    expect(text.replace(/\s+/g, ' ')).toContain('The sections stated add up to 81, not to the 80 stated in all');
    expect(text).toMatch(/lies flat, but contradicts itself\.\n$/);
  });

  test('has the same as data', () => {
    const plan = stated({ stated: [{ piece: 'piece', edge: 'right', count: 56 }], statedTotal: 80, got: 80 });
    const document = checkDocument(plan, isFlat);
    expect(document).toMatchObject({
      format: 'edgewise-check',
      version: 1,
      flat: false,
      pickups: [
        {
          id: 'pickup-0',
          flat: false,
          stated: [
            { piece: 'piece', edge: 'right', ratio: null, count: 56, verdict: 'will pucker' },
            { piece: null, edge: null, count: 80, verdict: 'lies flat' },
          ],
          got: { count: 80, verdict: 'lies flat', causes: [] },
          thresholds: { slight: 3, strong: 8 },
        },
      ],
    });
    expect(document.pickups[0]!.notes.map(({ kind }) => kind)).toContain('got');
  });
});
