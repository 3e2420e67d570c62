import type { Strand } from './strand';

/** Size of every close-up, mm. */
export const WIDTH = 60;
export const HEIGHT = 45;

export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** The sign of an opening as in the diagram: first places round, second ones square, filled with a stem where used. */
export interface SceneMark extends Spot {
  readonly used: boolean;
  readonly second: boolean;
  /** An open loop on the needle. */
  readonly live: boolean;
  /** How far inside the edge it lies, in stitches of the fabric; null where it lies in a stitch of a level edge. */
  readonly inset: number | null;
  /** Where its stem ends. */
  readonly tip: Spot;
}

export interface SceneLabel extends Spot {
  readonly text: string;
  readonly anchor: 'start' | 'middle' | 'end';
  /** What it names: a thin line leads there, from this place under the word. */
  readonly from: number;
  readonly to: Spot;
}

/** A close-up before it is drawn, as a right-handed knitter sees it. */
export interface Scene {
  readonly strands: readonly Strand[];
  readonly marks: readonly SceneMark[];
  readonly labels: readonly SceneLabel[];
}

/** The same for the other hand: everything changes sides but the words' direction. */
export function mirrored({ strands, marks, labels }: Scene): Scene {
  const across = <T extends Spot>(one: T): T => ({ ...one, x: WIDTH - one.x });
  const opposite = { start: 'end', middle: 'middle', end: 'start' } as const;
  return {
    strands: strands.map((strand) => ({ ...strand, places: strand.places.map(across) })),
    marks: marks.map((mark) => ({ ...across(mark), tip: across(mark.tip) })),
    labels: labels.map((label) => ({
      ...across(label),
      anchor: opposite[label.anchor],
      from: WIDTH - label.from,
      to: across(label.to),
    })),
  };
}
