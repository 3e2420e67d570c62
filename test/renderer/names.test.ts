import { describe, expect, it } from 'vitest';
import { draw, marksOf, neckband, planOf, square, textsOf, vFront } from './designs';

describe('names on the fabric', () => {
  const plan = planOf(vFront(), neckband(['neck-left', 'neck-right']));

  it('are those of the piece and of its edges, with the sizes of the edges picked up from', () => {
    const drawing = draw(plan, { scale: 0.6 });
    expect(textsOf(drawing, 'piece-name')).toEqual(['Front']);
    expect(textsOf(drawing, 'piece-note')).toEqual(['20 sts and 28 rows to 10 cm']);
    expect(textsOf(drawing, 'edge-name')).toEqual(expect.arrayContaining(['neck left', 'neck right', 'side left']));
    expect(textsOf(drawing, 'edge-size')).toEqual(['12 sts × 40 rows', '12 sts × 40 rows']);
  });

  it('can be left out', () => {
    const roles = new Set(marksOf(draw(plan, { names: false })).map(({ role }) => role));
    expect(roles.has('edge-name')).toBe(false);
    expect(roles.has('piece-name')).toBe(false);
  });

  it('give way where an edge is shorter than its name', () => {
    const drawing = draw(plan, { scale: 0.1 });
    expect(textsOf(drawing, 'edge-name')).not.toContain('shoulder left');
  });

  it('stand under a piece too narrow for its own', () => {
    const strip = draw(planOf(square(4, 60, {}, { name: 'Button band' })), { scale: 0.5 });
    const { box } = strip.places[0]!;
    const name = marksOf(strip).find(({ role }) => role === 'piece-name');
    expect(name).toMatchObject({ text: 'Button band' });
    expect(name && 'y' in name && name.y).toBeGreaterThan(box.y + box.height);
  });
});
