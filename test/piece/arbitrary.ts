import fc from 'fast-check';
import { HANDOUT_BLOCKS, readDesign, type Design } from '../../src/piece';

/** A raw edge without its id: where it begins and how it runs to the corner of the next. */
interface RawEdge {
  from: [number, number];
  path: string;
  handles?: [[number, number], [number, number]];
  steps?: { stitches: number; every: number; times: number }[];
  [field: string]: unknown;
}

/** Chance, from a seed: one seed always builds the same document, and hundreds a second. */
class Chance {
  private state: number;
  /** What to put into fields of other hands. */
  readonly odd: unknown;

  constructor(seed: number, odd: unknown) {
    this.state = seed | 0;
    this.odd = odd;
  }

  /** From 0 to below 1 (a linear congruential generator with its bits mixed). */
  next(): number {
    this.state = (Math.imul(this.state, 1664525) + 1013904223) | 0;
    let bits = this.state;
    bits = Math.imul(bits ^ (bits >>> 15), bits | 1);
    bits ^= bits + Math.imul(bits ^ (bits >>> 7), bits | 61);
    return ((bits ^ (bits >>> 14)) >>> 0) / 2 ** 32;
  }

  whole(min: number, max: number): number {
    return min + Math.floor(this.next() * (max - min + 1));
  }

  /** To three decimals. */
  share(min: number, max: number): number {
    return Math.round((min + this.next() * (max - min)) * 1000) / 1000;
  }

  one<T>(of: readonly T[]): T {
    return of[this.whole(0, of.length - 1)]!;
  }

  yes(): boolean {
    return this.next() < 0.5;
  }

  /** `fields` half of the time. */
  maybe<T extends object>(fields: T): T | object {
    return this.yes() ? fields : {};
  }

  some<T>(of: readonly T[]): T[] {
    return of.filter(() => this.yes());
  }
}

const FINISHES = ['cast-on', 'bound-off', 'live', 'provisional'];
const SELVAGES = ['plain', 'slipped', 'garter'];
const FABRICS = ['stockinette', 'reverse-stockinette', 'garter', 'seed', 'rib'];

/** No corner of a neck lies farther out than this, none of a side nearer in. */
const NECK = 30;
const WAIST = 35;

/** Cuts a whole number into `n` whole ones of its own sign. */
function cut(chance: Chance, total: number, n: number, least: number): number[] {
  const free = Math.abs(total) - least * n;
  const marks = Array.from({ length: n - 1 }, () => chance.whole(0, free)).sort((a, b) => a - b);
  const parts = [...marks, free].map((mark, i) => mark - (marks[i - 1] ?? 0) + least);
  return parts.map((part) => part * (total < 0 ? -1 : 1) + 0);
}

/** An edge that climbs or falls and stays in the box of its two corners. */
function sideEdge(chance: Chance, from: [number, number], to: [number, number]): RawEdge {
  const path = chance.one(['straight', 'curve', 'stepped']);
  const selvage = chance.yes() ? chance.one(SELVAGES) : undefined;
  const edge: RawEdge = { from, path, ...(selvage === undefined ? {} : { selvage }) };
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  if (path === 'curve') {
    const handle = (low: number, high: number): [number, number] => [
      from[0] + dx * chance.share(0, 1),
      from[1] + dy * chance.share(low, high),
    ];
    edge.handles = [handle(0.1, 0.5), handle(0.5, 0.9)];
  }
  if (path === 'stepped') {
    const n = chance.whole(1, Math.min(6, Math.abs(dy)));
    const stitches = cut(chance, dx, n, 0);
    edge.steps = cut(chance, Math.abs(dy), n, 1).map((every, i) => ({ stitches: stitches[i]!, every, times: 1 }));
  }
  return edge;
}

/** A chain of edges through corners; its last corner is left to whoever goes on. */
function sideChain(chance: Chance, corners: [number, number][]): RawEdge[] {
  return corners.slice(1).map((to, i) => sideEdge(chance, corners[i]!, to));
}

function flatEdge(chance: Chance, from: [number, number]): RawEdge {
  const finish = chance.yes() ? chance.one(FINISHES) : undefined;
  return { from, path: 'straight', ...(finish === undefined ? {} : { finish }) };
}

/** The mirror image of a chain about x = 0, in the order of a counterclockwise outline; `end` is the chain's last corner. */
function mirrored(chain: RawEdge[], end: [number, number]): RawEdge[] {
  const flip = ([x, y]: [number, number]): [number, number] => [0 - x, y];
  return chain
    .map((edge, i): RawEdge => {
      const from = flip(chain[i + 1]?.from ?? end);
      const { handles } = edge;
      return { ...edge, from, ...(handles ? { handles: [flip(handles[1]), flip(handles[0])] } : {}) };
    })
    .reverse();
}

/** A right side from (half, 0) up to (shoulder, height) in one to three edges. */
function rightCorners(chance: Chance, height: number): [number, number][] {
  const n = chance.whole(1, 3);
  let y = 0;
  const rises = cut(chance, height, n, 2);
  return [0, ...rises].map((rise): [number, number] => [chance.whole(WAIST, 120), (y += rise)]);
}

/** A neck between (half, top) and (-half, top), cut `depth` rows deep, or a plain top edge. */
function neckCorners(chance: Chance, height: number): [number, number][] {
  const half = chance.whole(2, NECK);
  const foot = chance.whole(0, half);
  const depth = chance.whole(1, Math.max(1, height - 1));
  return [
    [half, height],
    [foot, height - depth],
  ];
}

/**
 * A piece from a foot of cast-on stitches, straight or bowed, with sides that climb in any way and perhaps a neck; its
 * sides keep clear of its neck, so that nothing crosses.
 */
function outlineOf(chance: Chance, symmetric: boolean): RawEdge[] {
  const height = chance.whole(8, 160);
  const right = rightCorners(chance, height);
  const left = symmetric ? right : rightCorners(chance, height);
  const rightChain = sideChain(chance, right);
  const leftChain = symmetric ? rightChain : sideChain(chance, left);
  const foot = flatEdge(chance, [0 - left[0]![0], 0]);
  if (chance.yes() && symmetric) {
    const [x, bow] = [chance.share(0, right[0]![0]), 0 - chance.whole(1, 20)];
    foot.path = 'curve';
    foot.handles = [
      [0 - x, bow],
      [x, bow],
    ];
  }
  const [shoulder, farShoulder] = [right.at(-1)!, left.at(-1)!];
  const leftSide = mirrored(leftChain, farShoulder);
  if (chance.yes()) return [foot, ...rightChain, flatEdge(chance, shoulder), ...leftSide];
  const neck = neckCorners(chance, height);
  // The two sides of a V meet at their foot; straight ones never lie on each other there.
  const fall: RawEdge[] = neck[1]![0] === 0 ? [{ from: neck[0]!, path: 'straight' }] : sideChain(chance, neck);
  const [edgeOfNeck, footOfNeck] = [neck[0]!, neck[1]!];
  const top = flatEdge(chance, shoulder);
  const middle = footOfNeck[0] === 0 ? [] : [flatEdge(chance, footOfNeck)];
  const farTop: RawEdge = { ...top, from: [0 - edgeOfNeck[0], edgeOfNeck[1]] };
  return [foot, ...rightChain, top, ...fall, ...middle, ...mirrored(fall, footOfNeck), farTop, ...leftSide];
}

function gaugeOf(chance: Chance) {
  const stitches = chance.whole(40, 400) / 10;
  const gauge = { stitches, rows: Math.round(stitches * chance.share(1, 1.6) * 10) / 10 };
  return chance.yes() ? { ...gauge, over: 100 } : gauge;
}

/** A field of another hand, now and then. */
function foreign(chance: Chance): object {
  if (chance.whole(0, 5) > 0) return {};
  return { [chance.one(['x-note', 'colour', 'made by', 'toString'])]: chance.odd };
}

function pieceOf(chance: Chance, id: string) {
  const symmetric = chance.yes();
  const outline = outlineOf(chance, symmetric).map((edge, i) => ({ id: `edge-${i}`, ...edge, ...foreign(chance) }));
  const gauge = chance.whole(0, 7) === 0 ? {} : { gauge: gaugeOf(chance) };
  const fabric = chance.yes() ? chance.one(FABRICS) : undefined;
  return { id, ...gauge, ...(fabric === undefined ? {} : { fabric }), symmetric, outline, ...foreign(chance) };
}

type RawPiece = ReturnType<typeof pieceOf>;

function rateOf(chance: Chance, byLength: boolean) {
  const of = chance.whole(1, 12);
  const rates = [
    { kind: 'each' },
    { kind: 'ratio', pick: chance.whole(1, of), of },
    { kind: 'count', count: chance.whole(1, 90) },
  ];
  return chance.one([...rates, ...(byLength ? [{ kind: 'length' }] : [])]);
}

function sectionsOf(chance: Chance) {
  const by = chance.one(['length', 'landmarks', 'both']);
  const counts = chance.one(['exact', 'same']);
  return by === 'landmarks' ? { by, counts } : { by, parts: chance.whole(2, 16), counts };
}

/** A pick-up along a run of edges that follow one another on one piece, or on each of two. */
function pickupOf(chance: Chance, id: string, pieces: RawPiece[]) {
  const first = chance.one(pieces);
  const chosen = [first, ...chance.some(pieces.filter((piece) => piece !== first))].slice(0, 2);
  const along = chosen.flatMap((piece) => {
    const n = piece.outline.length;
    const [start, length] = [chance.whole(0, n - 1), chance.whole(1, Math.min(5, n))];
    return Array.from({ length }, (_, i) => ({ piece: piece.id, edge: piece.outline[(start + i) % n]!.id }));
  });
  const refs = along.map((ref) => ({ ...ref }));
  const cutAt = chance.share(0.2, 0.8);
  const parts = chance.whole(0, 3) === 0 ? [[0, cutAt] as const, [cutAt, 1] as const] : null;
  const opening = along[0]!;
  const stretches = parts ? [...parts.map((part) => ({ ...opening, part })), ...along.slice(1)] : along;
  const hasGauge = (ref: { piece: string }) => pieces.some((piece) => piece.id === ref.piece && 'gauge' in piece);
  const some = () => chance.some(refs);
  const measured = some().map((ref) => ({ ...ref, mm: chance.share(5, 900) }));
  const band = chance.yes() ? { gauge: gaugeOf(chance) } : {};
  const bandGauge = 'gauge' in band || refs.some(hasGauge);
  const rates = some().map((ref) => ({ ...ref, rate: rateOf(chance, bandGauge && hasGauge(ref)) }));
  return {
    id,
    along: stretches.map((stretch) => (chance.whole(0, 6) === 0 ? { ...stretch, backwards: true } : stretch)),
    joined: chance.yes(),
    measure: chance.one(['edge', 'join']),
    ...(chance.yes() ? { measured } : {}),
    inset: chance.one([1, 0.5, 0]),
    band: {
      ...band,
      multiple: chance.whole(1, 6),
      plus: chance.whole(0, 3),
      drawIn: chance.whole(0, 12),
      ...foreign(chance),
    },
    rates,
    ...(chance.whole(0, 3) === 0 ? { target: chance.whole(2, 400) } : {}),
    spread: chance.one(['even', 'grouped']),
    ...(chance.yes() ? { sections: sectionsOf(chance) } : {}),
    ...(chance.yes() ? { stated: some().map((ref) => ({ ...ref, count: chance.whole(0, 90) })) } : {}),
    ...(chance.yes() ? { statedTotal: chance.whole(0, 300), got: null } : {}),
    ...(chance.yes()
      ? { statedRatios: some().map((ref) => ({ ...ref, pick: chance.whole(1, 5), of: chance.whole(1, 8) })) }
      : {}),
    ...(chance.whole(0, 3) === 0
      ? {
          buttonholes: {
            holes: chance.whole(1, 9),
            ...chance.maybe({ stitches: 3, from: 4, rib: true }),
            ...foreign(chance),
          },
        }
      : {}),
    ...(chance.whole(0, 3) === 0
      ? { firstRow: { clear: chance.yes(), ...chance.maybe({ by: 'sections', rib: true }), ...foreign(chance) } }
      : {}),
    stepHoles: chance.yes(),
    garterAt: chance.one(['bump', 'inside']),
    ...foreign(chance),
  };
}

function handoutOf(chance: Chance) {
  return {
    ...chance.maybe({ paper: 'Letter', orientation: 'landscape' }),
    ...chance.maybe({ diagram: 'true-size', note: 'for the class' }),
    ...chance.maybe({ version: chance.one(['sheet', 'exercise', 'answers']), ink: chance.one(['colour', 'black']) }),
    ...chance.maybe({ blocks: chance.some(HANDOUT_BLOCKS).reverse() }),
    ...chance.maybe({ gauges: Array.from({ length: chance.whole(0, 6) }, () => gaugeOf(chance)) }),
    ...foreign(chance),
  };
}

/**
 * Documents as a hand might write them: every field of the right kind, many of those that have defaults left out,
 * fields of other hands here and there. Outlines are counterclockwise and cross nothing. They do not shrink: the seed
 * that fails is the whole report, and a design that was made smaller would be another one.
 */
export const arbitraryDocument = fc
  .tuple(fc.noShrink(fc.integer()), fc.noShrink(fc.jsonValue({ maxDepth: 2 })), fc.noShrink(fc.string()))
  .map(([seed, odd, name]) => {
    const chance = new Chance(seed, odd);
    const pieces = Array.from({ length: chance.whole(1, 3) }, (_, i) => pieceOf(chance, `piece-${i}`));
    const pickups = Array.from({ length: chance.whole(0, 3) }, (_, i) => pickupOf(chance, `pickup-${i}`, pieces));
    return {
      format: 'edgewise',
      version: 1,
      ...chance.maybe({ name }),
      units: chance.one(['cm', 'in']),
      hand: chance.one(['right', 'left']),
      pieces,
      ...(pickups.length > 0 ? { pickups } : {}),
      ...(chance.whole(0, 3) === 0 ? { handout: handoutOf(chance) } : {}),
      ...foreign(chance),
    };
  });

/** Valid designs with every default filled in: straight, curved and stepped edges, up to three pieces and pick-ups. */
export const arbitraryDesign: fc.Arbitrary<Design> = arbitraryDocument.map(
  (document) => readDesign(JSON.stringify(document)).design,
);
