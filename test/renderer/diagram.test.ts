import { describe, expect, it } from 'vitest';
import { dataOf, draw, groupsOf, marksOf, neckband, planOf, square, steppedFront, strokesIn } from './designs';

const plan = planOf(steppedFront(), neckband(['neck-left', 'neck-front', 'neck-right']));

describe('a drawing', () => {
  it('has a group for every piece and every edge, which says what it is', () => {
    const edges = groupsOf(draw(plan)).filter(({ name }) => name === 'edge');
    expect(edges.map(({ data }) => data.edge)).toEqual(plan.measured[0]!.edges.map(({ id }) => id));
    expect(edges.filter(({ data }) => data.picked).map(({ data }) => data.edge)).toEqual([
      'neck-left',
      'neck-front',
      'neck-right',
    ]);
  });

  it('is pieces alone where no pick-up is asked for', () => {
    const roles = new Set(marksOf(draw(plan, { pickup: null })).map(({ role }) => role));
    for (const role of ['used', 'stem', 'skipped', 'marker', 'number', 'arrow'] as const) {
      expect(roles.has(role), role).toBe(false);
    }
    expect(roles.has('outline')).toBe(true);
  });

  it('shows the steps as worked in stitch detail only', () => {
    expect(dataOf(draw(plan), 'worked')).toBe('');
    expect(strokesIn(dataOf(draw(plan, { detail: 'stitches' }), 'worked'))).toBe(2);
  });

  it('draws every outline once', () => {
    expect(strokesIn(dataOf(draw(plan), 'outline'))).toBe(8);
  });

  it('is the same every time', () => {
    expect(draw(plan)).toEqual(draw(plan));
  });

  it('holds only what a file can hold', () => {
    expect(JSON.parse(JSON.stringify(draw(plan)))).toEqual(draw(plan));
  });

  it('says which pick-up is missing', () => {
    expect(() => draw(plan, { pickup: 3 })).toThrow('There is no pick-up number 3 in this plan.');
  });

  it('draws a pick-up though some of its pieces are not drawn', () => {
    const two = planOf([square(30, 40), square(30, 40, {}, { id: 'second' })], {
      along: [
        { piece: 'square', edge: 'top' },
        { piece: 'second', edge: 'top' },
      ],
    });
    const drawing = draw(two, { pieces: ['second'] });
    const own = two.pickups[0]!.points.filter(({ edge }) => edge === 1);
    expect(drawing.points).toHaveLength(own.length);
  });
});
