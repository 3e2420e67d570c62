import type { Design } from '../../src/piece';
import { design, type Raw } from '../pickup/builders';

/** The designs that the benches plan, draw and drag in. */

function whole(id: string, edges: readonly Raw[]): Raw {
  return {
    id,
    gauge: { stitches: 22, rows: 30 },
    outline: edges.map((edge, i) => ({ id: `e${i}`, path: 'straight', ...edge })),
  };
}

function picked(pieces: readonly Raw[], along: readonly Raw[]): Design {
  return design(pieces, { along, joined: true, sections: { by: 'length', parts: 8 }, band: { multiple: 4 } });
}

/** Two strips of half the rows each, picked up along one side: all openings equal. */
export function straight(openings: number): Design {
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
export function curved(openings: number): Design {
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
export function garments(openings: number): Design {
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

/**
 * Pieces with bowed edges of 150 rows up each side, so many of these in all, each picked up from. The corner `e2` of
 * piece `p0` is where two of them meet.
 *
 * @param perSide edges up one side of a piece, 2 or more
 */
export function sides(edges: number, perSide = 2): Design {
  const bow = (from: readonly [number, number], to: readonly [number, number]) => ({
    from,
    path: 'curve',
    handles: [
      [from[0] + 5, from[1] + (to[1] - from[1]) / 3],
      [to[0] + 5, to[1] - (to[1] - from[1]) / 3],
    ],
  });
  const top = 150 * perSide;
  const up = Array.from({ length: perSide }, (_, i) => bow([60, 150 * i], [60, 150 * (i + 1)]));
  const down = Array.from({ length: perSide }, (_, i) => bow([0, top - 150 * i], [0, top - 150 * (i + 1)]));
  const pieces = Array.from({ length: Math.ceil(edges / (2 * perSide)) }, (_, i) =>
    whole(`p${i}`, [{ from: [0, 0] }, ...up, { from: [60, top] }, ...down]),
  );
  const bowed = [...up.map((_, i) => i + 1), ...down.map((_, i) => perSide + 2 + i)];
  const along = pieces.flatMap((_, i) => bowed.map((edge) => ({ piece: `p${i}`, edge: `e${edge}` })));
  return picked(pieces, along.slice(0, edges));
}

/** The corner `e2` of the first piece, so many stitches from where it was. */
export function moved(made: Design, by: number): Design {
  const [first, ...others] = made.pieces;
  const outline = first!.outline.map((edge) =>
    edge.id === 'e2' ? { ...edge, from: [edge.from[0] + by, edge.from[1]] as const } : edge,
  );
  return { ...made, pieces: [{ ...first!, outline }, ...others] };
}
