import { describe, expect, it } from 'vitest';
import { edgeReadout, pointReadout } from '../../src/text';
import { pickupOf, planSample } from '../samples/sample';

const neckband = pickupOf(planSample('pullover'), 'neckband');

describe('the line about an edge', () => {
  it('tells the count and what it comes from', () => {
    expect(edgeReadout(neckband, { piece: 'front', edge: 'neck-curve-left' })).toBe(
      'Front, left neck curve: 14 stitches from 19 places',
    );
  });

  it('is none where nothing is picked up', () => {
    expect(edgeReadout(neckband, { piece: 'front', edge: 'cast-on' })).toBeNull();
    expect(edgeReadout(neckband, { piece: 'none', edge: 'neck-center' })).toBeNull();
  });
});

describe('the line about an opening', () => {
  it('counts rows and stitches from 1, from the bottom and the left of the piece', () => {
    const first = neckband.points.find(({ n }) => n === 1)!;
    // The neck's straight part ends with row 126 of the piece, the first row being 1.
    expect(pointReadout(neckband, first)).toBe('Front, upper left neck: stitch 1 of 84, in row 126');
    const center = neckband.edges.findIndex(({ measured }) => measured.id === 'neck-center');
    const point = neckband.points.find(({ edge }) => edge === center)!;
    // The 78 stitches of the piece run from -39; the neck's middle 12 end with the 45th.
    expect(pointReadout(neckband, point)).toBe('Front, center neck: stitch 21 of 84, in stitch 45 from the left');
  });

  it('says that a skipped one is passed over', () => {
    const skipped = neckband.points.find(({ n }) => n === null)!;
    expect(pointReadout(neckband, skipped)).toMatch(/^Front, upper left neck: row \d+ is passed over$/);
  });

  it('names chains and ridges for what they are', () => {
    const heel = planSample('heel-flap').pickups[0]!;
    expect(pointReadout(heel, heel.points[0]!)).toMatch(/in (chain|gap between chains|stitch|row) /);
    const chain = heel.points.find(({ kind, second, n }) => kind === 'chain' && !second && n !== null)!;
    expect(pointReadout(heel, chain)).toMatch(/: stitch \d+ of \d+, in chain at row \d+$/);
  });
});
