import type { Knot } from './loop';
import type { Place, Strand } from './strand';

/** Measures of the fabric on the sheet, mm. */
export const STITCH_WIDTH = 7.6;
export const ROW_HEIGHT = 5.6;
export const YARN = 1.75;
export const NEW_YARN = 1.5;

/** Where a place of the fabric lies on the sheet. */
export type View = (u: number, v: number) => { readonly x: number; readonly y: number };

/** The fabric turned by quarter turns against the clock, its origin at (x, y). */
export function turned(quarters: 0 | 1 | 2, x: number, y: number, row = ROW_HEIGHT, width = STITCH_WIDTH): View {
  if (quarters === 0) return (u, v) => ({ x: x + u * width, y: y - v * row });
  if (quarters === 1) return (u, v) => ({ x: x - v * row, y: y - u * width });
  return (u, v) => ({ x: x - u * width, y: y + v * row });
}

/** A view turned clockwise about a place of the sheet. */
export function tilted(view: View, angle: number, about: { readonly x: number; readonly y: number }): View {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return (u, v) => {
    const { x, y } = view(u, v);
    const [dx, dy] = [x - about.x, y - about.y];
    return { x: about.x + dx * cos - dy * sin, y: about.y + dx * sin + dy * cos };
  };
}

/** A view whose fabric is pushed apart round a place, as by a needle: `by` mm there, fading out within `reach` mm. */
export function opened(view: View, at: { readonly x: number; readonly y: number }, by: number, reach: number): View {
  return (u, v) => {
    const { x, y } = view(u, v);
    const [dx, dy] = [x - at.x, y - at.y];
    const distance = Math.hypot(dx, dy);
    if (distance < 1e-9) return { x, y };
    const push = (by * (1 - Math.exp((-3 * distance) / reach)) * Math.exp(-((distance / reach) ** 2))) / distance;
    return { x: x + dx * push, y: y + dy * push };
  };
}

/** Fabric yarn along knots. */
export function yarn(knots: readonly Knot[], view: View, width = YARN): Strand {
  const places: Place[] = knots.map(({ u, v, z }) => ({ ...view(u, v), z }));
  return { kind: 'fabric', places, widths: places.map(() => width) };
}
