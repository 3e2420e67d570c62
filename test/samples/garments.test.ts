import { describe, expect, it } from 'vitest';
import type { MeasuredEdge } from '../../src/shaping';
import { countsOf, edgeOf, pickupOf, planSample } from './sample';

/**
 * The samples as garments: what is sewn together matches, and the sizes suit their wearers. Body sizes are those of the
 * Craft Yarn Council's standards, https://www.craftyarncouncil.com/standards/body-sizing, from memory.
 */

const pullover = planSample('pullover');
const vest = planSample('vest');
const cardigan = planSample('cardigan-front');

/** What has to agree where two edges are sewn together: their stitches, their rows, their length. */
const seam = ({ stitches, rows, edgeMm }: MeasuredEdge) => ({ stitches, rows, edgeMm: Math.round(edgeMm * 1e6) / 1e6 });

/** Widest count of a piece in cm, a stitch on each side going into the seams. */
function widthCm(edge: MeasuredEdge, per10cm: number): number {
  return ((edge.stitches - 2) * 10) / per10cm;
}

describe.each([
  ['pullover', pullover],
  ['vest', vest],
])('the %s', (_, plan) => {
  it.each(['cast-on', 'side-left', 'side-right', 'shoulder-left', 'shoulder-right', 'armhole-left', 'armhole-right'])(
    'has the same %s on the front and on the back',
    (edge) => {
      expect(seam(edgeOf(plan, 'front', edge))).toEqual(seam(edgeOf(plan, 'back', edge)));
    },
  );

  it('has a neck as wide in front as behind', () => {
    const widths = plan.measured.map(({ edges }) =>
      edges.filter(({ id }) => id.startsWith('neck')).reduce((sum, edge) => sum + edge.stitches, 0),
    );
    expect(widths[0]).toBe(widths[1]);
  });

  it('uses up the width that it was cast on with', () => {
    for (const { edges } of plan.measured) {
      const bottom = edges.find(({ id }) => id === 'cast-on')?.stitches;
      const top = edges.filter(({ id }) => /^(neck|shoulder|armhole|underarm)/.test(id));
      expect(top.reduce((sum, edge) => sum + edge.stitches, 0)).toBe(bottom);
    }
  });
});

describe('the pullover for a child of six (chest 63.5 cm, across the back 26 cm)', () => {
  it('has 2 to 10 cm of ease at the chest', () => {
    const round = 2 * widthCm(edgeOf(pullover, 'front', 'cast-on'), 22);
    expect(round - 63.5).toBeGreaterThan(2);
    expect(round - 63.5).toBeLessThan(10);
  });

  it('is as wide across the back as the child, within 2 cm', () => {
    const { from } = edgeOf(pullover, 'back', 'shoulder-right');
    expect(Math.abs((2 * from[0] * 10) / 22 - 26)).toBeLessThan(2);
  });

  it('shapes its front neck by bind-offs and decreases that grow smaller', () => {
    const steps = edgeOf(pullover, 'front', 'neck-curve-right').worked;
    expect(steps.map(({ across, up }) => [across, up])).toEqual([
      [-3, 2],
      [-2, 2],
      [-1, 2],
      [-1, 2],
      [-1, 2],
      [-1, 4],
    ]);
  });

  it('gives both sides of the neck the same counts, and every edge what it wants to the stitch', () => {
    const neckband = pickupOf(pullover, 'neckband');
    expect(countsOf(neckband)).toEqual({
      'front neck-straight-left': 6,
      'front neck-curve-left': 14,
      'front neck-center': 12,
      'front neck-curve-right': 14,
      'front neck-straight-right': 6,
      'back neck-slope-right': 5,
      'back neck-center': 22,
      'back neck-slope-left': 5,
    });
    for (const { wanted, count } of neckband.edges) expect(Math.abs(count - (wanted ?? NaN))).toBeLessThan(0.5);
  });

  it('has a neckband that goes over the head: k2p2 rib stretches to half as much again', () => {
    // Head of a child of six: 51 to 52 cm.
    expect(pickupOf(pullover, 'neckband').picked * (10 / 22) * 1.5).toBeGreaterThan(52);
  });
});

describe('the vest for a child of ten (chest 71 cm, across the back 28.5 cm)', () => {
  it('has 2 to 10 cm of ease at the chest', () => {
    const round = 2 * widthCm(edgeOf(vest, 'front', 'cast-on'), 20);
    expect(round - 71).toBeGreaterThan(2);
    expect(round - 71).toBeLessThan(10);
  });

  it('has one band for each armhole, with the same counts on both', () => {
    const [left, right] = ['armhole-band-left', 'armhole-band-right'].map((id) => pickupOf(vest, id));
    expect(left?.edges.map(({ count }) => count)).toEqual([5, 39, 39, 5]);
    expect(right?.edges.map(({ count }) => count)).toEqual([5, 39, 39, 5]);
  });

  it('begins its V where the armhole is well under way, with half of the neck on each side', () => {
    const side = edgeOf(vest, 'front', 'neck-right');
    expect(side.stitches).toBe(13);
    expect(side.from[1] - edgeOf(vest, 'front', 'armhole-left').from[1]).toBe(6);
  });

  it('takes each side of its V as one edge with the same count', () => {
    const { edges } = pickupOf(vest, 'neckband');
    expect(edges.slice(0, 2).map(({ count }) => count)).toEqual([39, 39]);
    expect(edges[0]?.twin).toBe(1);
  });
});

describe("the cardigan's right front", () => {
  it('is worked up its front edge, from the hem to the neck', () => {
    const edge = edgeOf(cardigan, 'right-front', 'front-edge');
    expect(edge.side).toBe('right');
    expect(edge.selvage).toBe('plain');
    expect(edge.to[1]).toBeGreaterThan(edge.from[1]);
  });

  it('has a band of k2p2 that begins and ends alike: 4n + 2', () => {
    expect(pickupOf(cardigan, 'front-band').picked % 4).toBe(2);
  });

  it('with its other half and a band of 3 cm suits a chest of 92 cm', () => {
    const front = (edgeOf(cardigan, 'right-front', 'cast-on').stitches * 10) / 24;
    const round = 4 * front + 3;
    expect(round - 92).toBeGreaterThan(5);
    expect(round - 92).toBeLessThan(12);
  });
});

describe('the blanket', () => {
  it('has a border of one stitch to a stitch and one to a ridge', () => {
    expect(countsOf(pickupOf(planSample('blanket'), 'border'))).toEqual({
      'blanket bound-off': 112,
      'blanket side-left': 136,
      'blanket cast-on': 112,
      'blanket side-right': 136,
    });
  });

  it('is 70 cm by 85 cm', () => {
    const plan = planSample('blanket');
    expect(edgeOf(plan, 'blanket', 'cast-on').edgeMm).toBeCloseTo(700, 9);
    expect(edgeOf(plan, 'blanket', 'side-right').edgeMm).toBeCloseTo(850, 9);
  });
});

describe('the heel flap', () => {
  it('has as many rows as stitches, and a chain for every two rows', () => {
    // "The flap heel: gussets", https://osbornfiber.com/2010/06/27/the-flap-heel-gussets-come-and-go/: 32 rows, 16 chains.
    const plan = planSample('heel-flap');
    const edge = edgeOf(plan, 'heel-flap', 'edge-left');
    expect([edge.rows, edgeOf(plan, 'heel-flap', 'heel-turn').stitches]).toEqual([32, 32]);
    for (const { edges } of plan.pickups) {
      expect(edges.map(({ unit, openings, count }) => ({ unit, openings, count }))).toEqual([
        { unit: 'chain', openings: 16, count: 16 },
      ]);
    }
  });

  it('is worked down its left edge after the heel turn, and up its right edge', () => {
    const plan = planSample('heel-flap');
    const rows = plan.pickups.map(({ points }) => points.map(({ row }) => row));
    expect(rows[0]).toEqual([...(rows[0] ?? [])].sort((a, b) => b - a));
    expect(rows[1]).toEqual([...(rows[1] ?? [])].sort((a, b) => a - b));
  });
});

describe('the strip', () => {
  it('has no gauge, and so no lengths', () => {
    const [band] = planSample('strip').pickups;
    expect(band?.edges[0]).toMatchObject({ rows: 88, lengthMm: null, edgeMm: null, wanted: null, count: 71 });
    expect(band?.sections.every(({ lengthMm }) => lengthMm === null)).toBe(true);
  });
});
