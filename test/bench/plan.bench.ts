import { bench, describe } from 'vitest';
import { planDesign } from '../../src/pickup';
import type { Design } from '../../src/piece';
import { design, type Raw } from '../pickup/builders';

/**
 * How long planning takes, by the number of openings. The aim is 10 ms for 10,000. What is planned and measured is kept
 * by the objects of the document, so every round plans a copy that nobody has seen.
 */

const fresh = (made: Design): Design => structuredClone(made);

const whole = (id: string, edges: readonly Raw[]): Raw => ({
  id,
  gauge: { stitches: 22, rows: 30 },
  outline: edges.map((edge, i) => ({ id: `e${i}`, path: 'straight', ...edge })),
});

/** Two strips of half the rows each, picked up along one side: all openings equal. */
function straight(openings: number): Design {
  const rows = openings / 2;
  const strip = (id: string) =>
    whole(id, [{ from: [0, 0] }, { from: [60, 0] }, { from: [60, rows] }, { from: [0, rows] }]);
  return picked(
    [strip('a'), strip('b')],
    [
      { piece: 'a', edge: 'e1' },
      { piece: 'b', edge: 'e1' },
    ],
  );
}

/** Two strips with one bowed side each: an opening to a row, all of them unequal. */
function curved(openings: number): Design {
  const rows = openings / 2;
  const bow = {
    from: [60, 0],
    path: 'curve',
    handles: [
      [60 + rows / 20, rows / 3],
      [60 - rows / 30, (2 * rows) / 3],
    ],
  };
  const strip = (id: string) =>
    whole(id, [{ from: [0, 0] }, bow, { from: [60 + rows / 50, rows] }, { from: [0, rows] }]);
  return picked(
    [strip('a'), strip('b')],
    [
      { piece: 'a', edge: 'e1' },
      { piece: 'b', edge: 'e1' },
    ],
  );
}

/** Two to twenty pieces, each with a round neck of one curve and a stepped side: about 500 openings a piece. */
function garments(openings: number): Design {
  const n = openings / 500;
  const rows = 260;
  const steps = [
    { stitches: -3, every: 2, times: 1 },
    { stitches: -1, every: 2, times: 4 },
    { stitches: 0, every: rows - 10, times: 1 },
  ];
  const pieces = Array.from({ length: n }, (_, i) =>
    whole(`p${i}`, [
      { from: [-60, 0] },
      { from: [60, 0], path: 'stepped', steps },
      { from: [53, rows] },
      {
        from: [20, rows],
        path: 'curve',
        handles: [
          [20, rows * 0.5],
          [-20, rows * 0.5],
        ],
      },
      { from: [-20, rows] },
      { from: [-60, rows] },
    ]),
  );
  return picked(
    pieces,
    pieces.flatMap((_, i) => [
      { piece: `p${i}`, edge: 'e1' },
      { piece: `p${i}`, edge: 'e3' },
    ]),
  );
}

/** Plans a design, and asks for every point of its pick-up. */
function pointsOf(made: Design): number {
  return planDesign(made).pickups[0]!.points.length;
}

function picked(pieces: readonly Raw[], along: readonly Raw[]): Design {
  return design(pieces, { along, joined: true, sections: { by: 'length', parts: 8 }, band: { multiple: 4 } });
}

for (const [name, make] of [
  ['straight', straight],
  ['curved', curved],
  ['garments', garments],
] as const) {
  describe(`a plan of ${name}`, () => {
    for (const openings of [1000, 3000, 10_000]) {
      const made = make(openings);
      // The copy is part of the round: it takes about as long whatever the number of openings.
      bench(`${openings} openings (${pointsOf(made)} drawn)`, () => {
        pointsOf(fresh(made));
      });
    }
  });
}

/** Pieces with two bowed edges of 150 rows up each side, one or both of them picked up from: so many edges in all. */
function sides(edges: number): Design {
  const bow = (from: [number, number], to: [number, number]) => ({
    from,
    path: 'curve',
    handles: [
      [from[0] + 5, from[1] + (to[1] - from[1]) / 3],
      [to[0] + 5, to[1] - (to[1] - from[1]) / 3],
    ],
  });
  const pieces = Array.from({ length: Math.ceil(edges / 4) }, (_, i) =>
    whole(`p${i}`, [
      { from: [0, 0] },
      bow([60, 0], [60, 150]),
      bow([60, 150], [60, 300]),
      { from: [60, 300] },
      bow([0, 300], [0, 150]),
      bow([0, 150], [0, 0]),
    ]),
  );
  const along = pieces.flatMap((_, i) => ['e1', 'e2', 'e4', 'e5'].map((edge) => ({ piece: `p${i}`, edge })));
  return picked(pieces, along.slice(0, edges));
}

/** The corner between the two edges on the right of the first piece, so many stitches from where it was. */
function moved(made: Design, by: number): Design {
  const [first, ...others] = made.pieces;
  const outline = first!.outline.map((edge) =>
    edge.id === 'e2' ? { ...edge, from: [edge.from[0] + by, edge.from[1]] as const } : edge,
  );
  return { ...made, pieces: [{ ...first!, outline }, ...others] };
}

/**
 * One move of a drag: two edges of 150 openings are measured anew, and those whose count changes with them are chosen
 * on anew, whatever the size of the rest. The corner goes to and fro over forty stitches. Numbering every opening
 * through comes on top where the points are asked for.
 */
describe('a corner dragged', () => {
  for (const edges of [2, 20, 67]) {
    const made = sides(edges);
    const openings = pointsOf(made);
    let move = 0;
    const dragged = () => {
      move += 1;
      return moved(made, Math.abs((move % 40) - 20));
    };
    bench(`${openings} openings, counted`, () => {
      planDesign(dragged());
    });
    bench(`${openings} openings, counted and numbered`, () => {
      pointsOf(dragged());
    });
  }
});
