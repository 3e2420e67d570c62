/** A point of a yarn's centre-line on the fabric: across in stitches, up in rows, and towards the viewer. */
export interface Knot {
  readonly u: number;
  readonly v: number;
  readonly z: number;
}

/** Which way a stitch was drawn through the one below, as seen from the right side: knit to the viewer, purl away. */
export type Face = 1 | -1;
export const KNIT: Face = 1;
export const PURL: Face = -1;

/** The form of a loop. */
export interface LoopForm {
  /** How far the yarn swings to both sides, in stitches: the more, the narrower the neck and the wider the head. */
  readonly swing: number;
  /** From the foot to the head, in rows: more than one, for a loop reaches into the next row. */
  readonly height: number;
}

/** A worked stitch: a narrow neck, legs that spread, a head that holds the next stitch. */
export const STITCH: LoopForm = { swing: 0.255, height: 1.56 };

/** Steps in which the curve is sampled from one foot to the other; a multiple of 4, so that head and legs are hit. */
const STEPS = 16;

/**
 * The centre-line of one loop, from the middle of the sinker on its left to that on its right:
 *
 *     u = t / 2π - 1/2 + swing sin 2t     v = height (1 - cos t) / 2     z = -face cos 2t,     0 <= t <= 2π
 *
 * A plain trigonometric curve of our own choice, in the manner of the loop models of the literature (F. T. Peirce 1947,
 * G. A. V. Leaf and A. Glaskin 1955; from memory), which have the same crossings: the yarn lies behind at the foot and
 * at the head and in front at both legs where the stitch is knitted, the other way round where it is purled. Where the
 * face of the stitch above differs, the loop goes over from one to the other along its legs.
 *
 * @param t radians; 0 and 2π are the feet, π is the head
 * @param own how the loop itself is worked
 * @param above how the loop drawn through its head is worked
 */
export function loopAt(t: number, form: LoopForm, own: Face, above: Face): Knot {
  const low = (1 + Math.cos(t)) / 2;
  return {
    u: t / (2 * Math.PI) - 0.5 + form.swing * Math.sin(2 * t),
    v: (form.height * (1 - Math.cos(t))) / 2,
    z: -(own * low + above * (1 - low)) * Math.cos(2 * t),
  };
}

/** The whole loop about the middle of its column, foot on v = 0, or the stretch of it between two parameters. */
export function loop(own: Face, above: Face, form: LoopForm = STITCH, from = 0, to = 2 * Math.PI): Knot[] {
  const step = (2 * Math.PI) / STEPS;
  const first = Math.ceil(from / step - 1e-9);
  const last = Math.floor(to / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, i) => loopAt((first + i) * step, form, own, above));
}

/** The same knots elsewhere. */
export function moved(knots: readonly Knot[], u: number, v: number): Knot[] {
  return knots.map((knot) => ({ u: knot.u + u, v: knot.v + v, z: knot.z }));
}
