import { tucked } from './fabric';
import type { Knot } from './loop';
import { WIDTH, type Scene, type SceneLabel, type SceneMark, type Spot } from './scene';
import type { Strand } from './strand';
import { needleThrough, newYarnFor } from './through';
import { opened, yarn, type View } from './view';

/** How far a stem reaches over the edge, mm. */
const STEM = 2.2;

/** How far a needle pushes the yarn round it aside, mm, and how far off that is felt. */
const PUSH = { by: 1.15, reach: 7 } as const;

/** An opening on the fabric. */
export interface MarkedOpening {
  readonly u: number;
  readonly v: number;
  /** Where the edge lies on the sheet beside it, and which way is out: up where nothing is said. */
  readonly edge: Spot;
  readonly out?: 'up' | 'right';
  readonly used?: boolean;
  readonly second?: boolean;
  /** In stitches, where it is counted from a side edge. */
  readonly inset?: number;
}

export interface Composition {
  readonly knots: readonly (readonly Knot[])[];
  readonly view: View;
  /** Where the needle goes in, on the fabric. */
  readonly entry: readonly [u: number, v: number];
  readonly marks: readonly MarkedOpening[];
  readonly labels: readonly SceneLabel[];
  /** How far from the top of the sheet its point lies, mm. */
  readonly tip?: number;
}

/** Fabric with a needle through one of its openings, the new yarn behind, and the signs of the openings. */
export function compose({ knots, view: plain, entry, marks, labels, tip }: Composition): Scene {
  const hole = plain(...entry);
  const view = opened(plain, hole, PUSH.by, PUSH.reach);
  const right = needleThrough(hole, tip);
  const strands: Strand[] = [...knots.map((one) => yarn(tucked(one), view)), right, newYarnFor(right)];
  return { strands, marks: marks.map((mark) => sceneMark(mark, view)), labels };
}

function sceneMark(
  { u, v, edge, out = 'up', used = true, second = false, inset }: MarkedOpening,
  view: View,
): SceneMark {
  const at = view(u, v);
  const tip = out === 'up' ? { x: at.x, y: edge.y - STEM } : { x: edge.x + STEM, y: at.y };
  return { ...at, used, second, live: false, inset: inset ?? null, tip };
}

/** A label at the left with a line to what it names. */
export function labelLeft(text: string, y: number, to: Spot): SceneLabel {
  return { text, x: 2, y, anchor: 'start', from: 4, to };
}

/** A label at the right, whose line begins at `from`. */
export function labelRight(text: string, y: number, to: Spot, from: number): SceneLabel {
  return { text, x: WIDTH - 2, y, anchor: 'end', from, to };
}
