import { describe, expect, test } from 'vitest';
import {
  densityLabel,
  edgeName,
  edgeNames,
  edgeTitle,
  fabricLabel,
  finishLabel,
  gaugeLabel,
  openingLabel,
  openingsLabel,
  rateLabel,
  selvageLabel,
  shapeLabel,
  shownName,
  TERMS,
  unitsLabel,
  verdictClause,
  verdictLabel,
  voiceOf,
} from '../../src/text';
import { planSample } from '../samples/sample';

describe('labels', () => {
  test('name what a design is made of', () => {
    expect(shapeLabel('curved')).toBe('curved');
    expect(finishLabel('live', TERMS.US)).toBe('held stitches');
    expect(finishLabel('bound-off', TERMS.US)).toBe('bound off');
    expect(fabricLabel('reverse-stockinette', TERMS.UK)).toBe('reverse stocking stitch');
    expect(fabricLabel('rib', TERMS.US)).toBe('rib');
    expect(selvageLabel('slipped')).toBe('slipped');
    expect(unitsLabel('in')).toBe('inches');
  });

  test('name openings, one and many, first and second', () => {
    expect(openingLabel('ridge')).toBe('ridge');
    expect(openingLabel('ridge', true)).toBe('hollow between ridges');
    expect(openingsLabel(1, 'chain')).toBe('1 chain');
    expect(openingsLabel(31, 'chain', true)).toBe('31 gaps between chains');
    expect(openingsLabel(2, 'row', true)).toBe('2 step holes');
  });

  test('name rates and verdicts', () => {
    expect(rateLabel({ kind: 'each' })).toBe('one each');
    expect(rateLabel({ kind: 'length' })).toBe('by length');
    expect(rateLabel({ kind: 'ratio', pick: 3, of: 4 })).toBe('3 of every 4');
    expect(rateLabel({ kind: 'count', count: 24 })).toBe('24, as given');
    expect(verdictLabel('slightly tight')).toBe('slightly tight');
    expect((['lies flat', 'slightly loose', 'will ruffle'] as const).map(verdictClause)).toEqual([
      'lies flat',
      'is slightly loose',
      'will ruffle',
    ]);
  });

  test('say a gauge over 10 cm or 4 in, whatever it was counted over', () => {
    expect(gaugeLabel({ stitches: 11, rows: 15, over: 50 }, 'cm')).toBe('22 stitches and 30 rows to 10 cm');
    expect(gaugeLabel({ stitches: 5.25, rows: 7, over: 25.4 }, 'in')).toBe('21 stitches and 28 rows to 4 in');
    expect(densityLabel(25, 'in')).toBe('25.4 stitches to 4 in');
    expect(densityLabel(25, 'cm')).toBe('25 stitches to 10 cm');
  });
});

describe('names of edges', () => {
  test('are their own, or made of their ids', () => {
    expect(edgeName({ id: 'neck-left' })).toBe('neck left');
    expect(edgeName({ id: 'neck-left', name: 'Left neck' })).toBe('Left neck');
    expect(edgeName({ id: 'neck-left', name: ' ' })).toBe('neck left');
    expect(edgeName({ id: '--' })).toBe('--');
    expect(edgeTitle({ name: 'Front' }, { id: 'neck' })).toBe('Front, neck');
  });

  test('stay on one line', () => {
    expect(shownName('Left\n\tfront\u001b[31m ')).toBe('Left front [31m');
    expect(edgeTitle({ name: 'Front\nleft' }, { id: 'a', name: 'b\r\nc' })).toBe('Front left, b c');
  });

  test('are found by their ids in a design', () => {
    const { design } = planSample('vest');
    const names = edgeNames(design);
    expect(names({ piece: 'front', edge: 'neck-left' })).toBe(
      edgeTitle(
        design.pieces[0]!,
        design.pieces[0]!.outline.find(({ id }) => id === 'neck-left')!,
      ),
    );
    expect(names({ piece: 'hood', edge: 'brim' })).toBe('hood, brim');
  });
});

describe('voiceOf', () => {
  test('speaks as the design asks, unless told otherwise', () => {
    const design = { terms: 'UK', units: 'in', hand: 'left' } as const;
    expect(voiceOf(design)).toEqual({ terms: TERMS.UK, units: 'in', hand: 'left', form: 'long' });
    expect(voiceOf(design, { form: 'short', units: 'cm' })).toMatchObject({ form: 'short', units: 'cm', hand: 'left' });
  });
});
