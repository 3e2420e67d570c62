import { describe, expect, it } from 'vitest';
import { firstRow } from '../../src/pickup';
import { along, plan, rectangle } from './builders';

describe('an edge worked in two stretches', () => {
  const halves = [
    { piece: 'piece', edge: 'right', part: [0, 0.5] },
    { piece: 'piece', edge: 'right', part: [0.5, 1] },
  ];

  it('is stated once and checked as a whole', () => {
    const made = plan(
      rectangle(20, 56),
      along([], { along: halves, stated: [{ piece: 'piece', edge: 'right', count: 40 }], statedTotal: 40 }),
    );
    expect(made.edges).toHaveLength(2);
    expect(made.stated[0]).toMatchObject({ stated: 40, verdict: 'lies flat' });
    expect(made.notes.map(({ kind }) => kind)).not.toContain('stated-edges-do-not-sum');
  });
});

describe('as many increases as stitches', () => {
  it('begin after a stitch when worked flat, for none can be made before the first', () => {
    const { groups } = firstRow(5, 10, false);
    expect(groups[0]!.works[0]).toEqual({ work: 'plain', count: 1 });
  });
});
