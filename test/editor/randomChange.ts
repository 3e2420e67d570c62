import { allRound, newPickup, nextTo, runBetween, type Change } from '../../src/editor';
import { DEFAULT_HANDOUT, type Design, type Pickup, type Piece, type Rate, type Stretch } from '../../src/piece';

/** Chance from a seed (mulberry32): the same seed makes the same choices. */
export class Chance {
  #state: number;

  constructor(seed: number) {
    this.#state = seed | 0;
  }

  /** From 0 to below 1. */
  next(): number {
    this.#state = (this.#state + 0x6d2b79f5) | 0;
    let bits = Math.imul(this.#state ^ (this.#state >>> 15), 1 | this.#state);
    bits ^= bits + Math.imul(bits ^ (bits >>> 7), 61 | bits);
    return ((bits ^ (bits >>> 14)) >>> 0) / 2 ** 32;
  }

  whole(min: number, max: number): number {
    return min + Math.floor(this.next() * (max - min + 1));
  }

  one<T>(of: readonly T[]): T {
    return of[this.whole(0, of.length - 1)]!;
  }

  yes(share = 0.5): boolean {
    return this.next() < share;
  }
}

type Maker = (chance: Chance, design: Design, piece: Piece) => Change | null;

const edge = (chance: Chance, piece: Piece) => chance.one(piece.outline).id;

function corners(chance: Chance, piece: Piece): string[] {
  return Array.from({ length: chance.yes(0.7) ? 1 : chance.whole(2, 4) }, () => edge(chance, piece));
}

/** A place near the outline, not always on it. */
function place(chance: Chance, piece: Piece): [number, number] {
  const [a, b] = [chance.one(piece.outline).from, chance.one(piece.outline).from];
  const t = chance.next();
  return [a[0] + (b[0] - a[0]) * t + chance.whole(-3, 3), a[1] + (b[1] - a[1]) * t + chance.whole(-3, 3)];
}

/** A place beside an edge, so that bends and handles are mostly such as a hand would make. */
function beside(chance: Chance, piece: Piece, id: string): [number, number] {
  const index = piece.outline.findIndex((one) => one.id === id);
  const [a, b] = [piece.outline[index]!.from, piece.outline[(index + 1) % piece.outline.length]!.from];
  const t = chance.next();
  return [a[0] + (b[0] - a[0]) * t + chance.whole(-9, 9) / 2, a[1] + (b[1] - a[1]) * t + chance.whole(-9, 9) / 2];
}

function run(chance: Chance, design: Design): Stretch[] {
  const along: Stretch[] = [];
  for (let i = chance.whole(1, 2); i > 0; i--) {
    const piece = chance.one(design.pieces);
    const more = chance.yes(0.2) ? allRound(piece) : runBetween(piece, edge(chance, piece), edge(chance, piece));
    along.push(...more.filter((one) => !along.some((two) => one.piece === two.piece && one.edge === two.edge)));
  }
  const next = nextTo(design, along, chance.one(['start', 'end'] as const));
  return next ? [...along, next] : along;
}

function rate(chance: Chance): Rate {
  return chance.one<Rate>([
    { kind: 'each' },
    { kind: 'ratio', pick: 3, of: 4 },
    { kind: 'count', count: chance.whole(0, 40) },
  ]);
}

const onPickup =
  (make: (chance: Chance, pickup: Pickup, design: Design) => Change): Maker =>
  (chance, design) =>
    design.pickups.length === 0 ? null : make(chance, chance.one(design.pickups), design);

/** A design is kept small, so that the same pieces are changed again and again. */
const whereFew =
  (make: Maker): Maker =>
  (chance, design, piece) =>
    design.pieces.length < 4 && design.pickups.length < 8 ? make(chance, design, piece) : null;

/** One maker for each kind of change, with how often it is made. */
const MAKERS: readonly (readonly [times: number, make: Maker])[] = [
  [
    12,
    (chance, _, piece) => ({
      kind: 'move-corners',
      piece: piece.id,
      corners: corners(chance, piece),
      dx: chance.whole(-4, 4),
      dy: chance.whole(-4, 4),
    }),
  ],
  [
    6,
    (chance, _, piece) => ({
      kind: 'insert-corner',
      piece: piece.id,
      edge: edge(chance, piece),
      at: place(chance, piece),
    }),
  ],
  [6, (chance, _, piece) => ({ kind: 'remove-corners', piece: piece.id, corners: corners(chance, piece) })],
  [
    8,
    (chance, _, piece) => ({
      kind: 'edge-path',
      piece: piece.id,
      edge: edge(chance, piece),
      path: chance.one(['straight', 'curve', 'curve', 'stepped', 'stepped'] as const),
    }),
  ],
  [
    5,
    (chance, _, piece) => {
      const curve = chance.one(piece.outline);
      if (curve.path !== 'curve') return null;
      const handle = chance.one([0, 1] as const);
      return { kind: 'edge-handle', piece: piece.id, edge: curve.id, handle, at: beside(chance, piece, curve.id) };
    },
  ],
  [
    4,
    (chance, _, piece) => {
      const id = edge(chance, piece);
      return { kind: 'edge-bend', piece: piece.id, edge: id, through: beside(chance, piece, id) };
    },
  ],
  [
    8,
    (chance, _, piece) => ({
      kind: 'edge-size',
      piece: piece.id,
      edge: edge(chance, piece),
      ...(chance.yes() ? { stitches: chance.whole(0, 60) } : {}),
      ...(chance.yes() ? { rows: chance.whole(0, 60) } : {}),
      along: chance.yes(),
    }),
  ],
  [
    5,
    (chance, _, piece) => {
      const out = chance.one([-1, 1]);
      const steps = Array.from({ length: chance.whole(1, 4) }, () => ({
        stitches: out * chance.whole(0, 3),
        every: chance.whole(1, 4) * 2,
        times: chance.whole(1, 3),
      }));
      return { kind: 'edge-steps', piece: piece.id, edge: edge(chance, piece), steps, fit: chance.yes(0.8) };
    },
  ],
  [
    3,
    (chance, _, piece) => ({
      kind: 'edge-fields',
      piece: piece.id,
      edge: edge(chance, piece),
      fields: chance.one([
        { name: 'edge' },
        { name: undefined },
        { finish: 'live' },
        { finish: undefined },
        { selvage: 'garter' },
        { selvage: undefined },
      ] as const),
    }),
  ],
  [
    1,
    (chance, _, piece) => {
      if (chance.yes(0.8)) return null;
      const x = chance.whole(8, 40);
      // One edge is kept, the others are new.
      const kept = edge(chance, piece);
      const outline = [
        { id: `${kept}-foot`, from: [0, 0], path: 'straight' },
        { id: kept, from: [x, 0], path: 'straight' },
        { id: `${kept}-top`, from: [x, x], path: 'straight' },
        { id: `${kept}-side`, from: [0, x], path: 'straight' },
      ] as const;
      return { kind: 'outline', piece: piece.id, outline };
    },
  ],
  [
    2,
    (chance, _, piece) => ({
      kind: 'piece-fields',
      piece: piece.id,
      fields: chance.one([
        { name: 'Piece' },
        { fabric: 'garter' },
        { fabric: 'stockinette' },
        { symmetric: true },
        { symmetric: false },
      ] as const),
    }),
  ],
  [1, whereFew((_chance, _, piece) => ({ kind: 'add-piece', piece }))],
  [1, (_chance, _, piece) => ({ kind: 'remove-piece', piece: piece.id })],
  [2, whereFew((_chance, _, piece) => ({ kind: 'duplicate-piece', piece: piece.id, name: 'Copy' }))],
  [1, whereFew((_chance, { pickups }, piece) => ({ kind: 'paste', pieces: [piece], pickups: pickups.slice(0, 1) }))],
  [2, (_chance, _, piece) => ({ kind: 'mirror-piece', piece: piece.id })],
  [2, whereFew((chance, design) => ({ kind: 'add-pickup', pickup: newPickup(design, run(chance, design), 'Band') }))],
  [1, onPickup((_chance, { id }) => ({ kind: 'remove-pickup', pickup: id }))],
  [1, onPickup((_chance, { id }) => ({ kind: 'duplicate-pickup', pickup: id, name: 'Another' }))],
  [
    2,
    onPickup((chance, { id }, design) => ({
      kind: 'along',
      pickup: id,
      along: run(chance, design),
      joined: chance.yes(),
    })),
  ],
  [2, onPickup((chance, { id, along }) => ({ kind: 'start-at', pickup: id, stretch: chance.whole(0, along.length) }))],
  [2, onPickup((_chance, { id }) => ({ kind: 'turn-run', pickup: id }))],
  [
    2,
    onPickup((chance, { id, along }) => ({
      kind: 'part',
      pickup: id,
      stretch: chance.whole(0, along.length - 1),
      part: chance.yes() ? [0, 1] : [chance.whole(0, 4) / 10, chance.whole(5, 10) / 10],
    })),
  ],
  [2, onPickup((chance, { id, along }) => ({ kind: 'rate', pickup: id, edge: chance.one(along), rate: rate(chance) }))],
  [
    2,
    onPickup((chance, { id, along }) => ({
      kind: chance.one(['stated'] as const),
      pickup: id,
      edge: chance.one(along),
      count: chance.whole(0, 60),
    })),
  ],
  [1, onPickup((chance, { id, along }) => ({ kind: 'measured', pickup: id, edge: chance.one(along), mm: 100 }))],
  [
    1,
    (chance) => {
      const handout = { ...DEFAULT_HANDOUT, version: chance.one(['sheet', 'exercise', 'answers'] as const) };
      return { kind: 'handout', handout: chance.yes() ? handout : null };
    },
  ],
  [1, (chance) => ({ kind: 'hand', hand: chance.one(['left', 'right'] as const) })],
  [
    1,
    (chance, _, piece) => ({
      kind: 'gauge',
      piece: piece.id,
      gauge: { stitches: chance.whole(16, 30), rows: chance.whole(22, 40), over: 100 },
      keep: chance.one(['size', 'counts'] as const),
    }),
  ],
];

const BAG: readonly Maker[] = MAKERS.flatMap(([times, make]) => Array.from({ length: times }, () => make));

/** Some change of a design, of any kind; not every one makes a valid design. */
export function randomChange(chance: Chance, design: Design): Change {
  for (;;) {
    const change = chance.one(BAG)(chance, design, chance.one(design.pieces));
    if (change) return change;
  }
}
