import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findTwins, readDesign, resolveOutline, type DesignError, type Edge, type Piece } from '../../src/piece';
import { arbitraryDesign } from './arbitrary';
import { GOOD } from './good';

const [front] = readDesign(JSON.stringify(GOOD)).design.pieces as [Piece];

function changed(id: string, change: object, piece: Piece = front): Piece {
  return { ...piece, outline: piece.outline.map((edge) => (edge.id === id ? { ...edge, ...change } : edge)) };
}

/** The edge that a piece is refused for, or null. */
function lone(piece: Piece): string | null {
  try {
    findTwins(piece);
    return null;
  } catch (error) {
    const { problem } = error as DesignError;
    if (problem.kind === 'not-symmetric') return problem.edge;
    throw error;
  }
}

describe('findTwins', () => {
  it('finds the mirror image of every edge, itself for one across the middle', () => {
    expect(findTwins(front)).toEqual([0, 7, 6, 5, 4, 3, 2, 1]);
  });

  it('finds none on a piece that is not called symmetric', () => {
    expect(findTwins({ ...front, symmetric: false })).toEqual([-1, -1, -1, -1, -1, -1, -1, -1]);
  });

  it('finds a middle between two stitches, wherever the piece lies', () => {
    const outline = front.outline.map((edge): Edge => {
      const moved = { ...edge, from: [edge.from[0] + (edge.from[0] > 0 ? 101 : 100), edge.from[1]] } as Edge;
      if (edge.path !== 'curve' || moved.path !== 'curve') return moved;
      const dx = edge.from[0] > 0 ? 101 : 100;
      const [[ax, ay], [bx, by]] = edge.handles;
      return { ...moved, handles: [[ax + dx, ay], [bx + dx, by]] }; // prettier-ignore
    });
    expect(findTwins({ ...front, outline })).toEqual([0, 7, 6, 5, 4, 3, 2, 1]);
  });

  it.each<[string, object, string]>([
    ['side-left', { selvage: 'slipped' }, 'side-right'],
    ['shoulder-left', { finish: 'live' }, 'shoulder-right'],
    ['neck-left', { path: 'straight' }, 'neck-right'],
    ['neck-left', { handles: [[-7, 47], [-10, 53]] }, 'neck-right'], // prettier-ignore
    ['side-left', { from: [-21, 60] }, 'cast-on'],
    ['cast-on', { from: [-21, 0] }, 'side-right'],
  ])('refuses a front whose %s is %o', (id, change, edge) => {
    expect(lone(changed(id, change))).toBe(edge);
  });

  it('compares what an edge ends in only where it is read', () => {
    expect(lone(changed('side-left', { finish: 'live' }))).toBeNull();
    expect(lone(changed('cast-on', { selvage: 'garter' }))).toBeNull();
  });

  it('takes schedules for twins that are written in more or fewer lines', () => {
    const outline: Edge[] = [
      { id: 'foot', from: [-9, 0], path: 'straight' },
      { id: 'right', from: [9, 0], path: 'stepped', steps: [{ stitches: -1, every: 2, times: 3 }] },
      { id: 'head', from: [6, 6], path: 'straight' },
      {
        id: 'left',
        from: [-6, 6],
        path: 'stepped',
        steps: [
          { stitches: -1, every: 2, times: 1 },
          { stitches: -1, every: 2, times: 2 },
        ],
      },
    ];
    const piece: Piece = { id: 'p', name: 'P', fabric: 'rib', symmetric: true, outline };
    expect(findTwins(piece)).toEqual([0, 3, 2, 1]);
    const steps = [
      { stitches: -2, every: 2, times: 1 },
      { stitches: -1, every: 2, times: 1 },
      { stitches: 0, every: 2, times: 1 },
    ];
    expect(lone(changed('left', { steps }, piece))).toBe('right');
  });

  it('gives twins of twins, whose lines mirror each other', () => {
    let symmetric = 0;
    fc.assert(
      fc.property(arbitraryDesign, ({ pieces }) => {
        for (const piece of pieces) {
          const twins = findTwins(piece);
          if (!piece.symmetric) continue;
          symmetric++;
          const edges = resolveOutline(piece);
          const middle = edges.map(({ from }) => from[0]);
          const sum = Math.min(...middle) + Math.max(...middle);
          for (const [i, twin] of twins.entries()) {
            expect(twins[twin]).toBe(i);
            const mirror = edges[twin]!.path.toReversed();
            edges[i]!.path.forEach(({ from, to }, j) => {
              expect(mirror[j]!.to).toEqual({ x: sum - from.x, y: from.y });
              expect(mirror[j]!.from).toEqual({ x: sum - to.x, y: to.y });
            });
          }
        }
      }),
      { numRuns: 60 },
    );
    expect(symmetric).toBeGreaterThan(20);
  });
});
