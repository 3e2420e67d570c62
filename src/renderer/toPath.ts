import type { Segment } from '../geometry';
import { toSheet } from './place';
import type { Place } from './marks';

/** A point on the sheet, mm, y down. */
export type Spot = readonly [x: number, y: number];

/** Every fraction of a thousandth as it is written, so that a path of thousands of numbers needs no search for digits. */
const FRACTIONS = Array.from({ length: 1000 }, (_, n) =>
  n === 0 ? '' : `.${String(n).padStart(3, '0').replace(/0+$/, '')}`,
);

/** Numbers of this size and more are left to the language. */
const LARGE = 1e9;

/** A number as it is written into a path: three decimals (a thousandth of a mm), no trailing zeros, no minus zero. */
export function digits(value: number): string {
  const thousandths = Math.round(value * 1000);
  const size = Math.abs(thousandths);
  if (!(size < LARGE)) return String(thousandths / 1000);
  const whole = Math.floor(size / 1000);
  return (thousandths < 0 ? '-' : '') + String(whole) + FRACTIONS[size - whole * 1000]!;
}

/** "x,y". */
export function spot(x: number, y: number): string {
  return `${digits(x)},${digits(y)}`;
}

/** Path data of a run of straight lines. */
export function linesPath(spots: readonly Spot[], closed = false): string {
  return (
    spots.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${spot(x, y)}`).join('') + (closed && spots.length > 0 ? 'Z' : '')
  );
}

/**
 * Path data of a chain of segments in fabric mm (y up), as it lies on the sheet.
 * @param moved false when the pen already stands at the chain's start
 */
export function chainPath(place: Place, chain: readonly Segment[], moved = true): string {
  const at = (point: { x: number; y: number }) => spot(...toSheet(place, point.x, point.y));
  const steps = chain.map((segment) =>
    segment.kind === 'line' ? `L${at(segment.to)}` : `C${at(segment.c1)} ${at(segment.c2)} ${at(segment.to)}`,
  );
  const first = chain[0];
  return (moved && first ? `M${at(first.from)}` : '') + steps.join('');
}

/** Writes whole circles of one radius, each drawn from its leftmost point. */
export function circles(radius: number): (x: number, y: number) => string {
  const r = digits(radius);
  const across = digits(2 * radius);
  const round = `a${r},${r} 0 1 0 ${across},0a${r},${r} 0 1 0 -${across},0z`;
  return (x, y) => `M${spot(x - radius, y)}${round}`;
}

/** Writes squares that stand on a corner: `radius` from the middle to each corner. */
export function diamonds(radius: number): (x: number, y: number) => string {
  const r = digits(radius);
  const round = `l${r},-${r}l${r},${r}l-${r},${r}z`;
  return (x, y) => `M${spot(x - radius, y)}${round}`;
}

/** A rectangle with round corners. */
export function roundedPath(x: number, y: number, width: number, height: number, radius: number): string {
  const r = Math.min(radius, width / 2, height / 2);
  const [w, h, R] = [digits(width - 2 * r), digits(height - 2 * r), digits(r)];
  const corner = (dx: string, dy: string) => `a${R},${R} 0 0 1 ${dx},${dy}`;
  return (
    `M${spot(x + r, y)}h${w}${corner(R, R)}v${h}${corner(`-${R}`, R)}` +
    `h-${w}${corner(`-${R}`, `-${R}`)}v-${h}${corner(R, `-${R}`)}z`
  );
}
