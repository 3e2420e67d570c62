/** A place or a direction in the plane, y up, in any one unit of length. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

export function add(a: Point, b: Point): Point {
  return { x: a.x + b.x, y: a.y + b.y };
}

/** The way from `b` to `a`. */
export function subtract(a: Point, b: Point): Point {
  return { x: a.x - b.x, y: a.y - b.y };
}

export function scale(a: Point, by: number): Point {
  return { x: a.x * by, y: a.y * by };
}

export function dot(a: Point, b: Point): number {
  return a.x * b.x + a.y * b.y;
}

/** Above 0 where `b` points to the left of `a`. */
export function cross(a: Point, b: Point): number {
  return a.x * b.y - a.y * b.x;
}

/** The length of a direction. The plain root is exact enough from 1e-150 to 1e150 and much faster than Math.hypot. */
export function norm(a: Point): number {
  return Math.sqrt(a.x * a.x + a.y * a.y);
}

export function distance(a: Point, b: Point): number {
  return norm(subtract(a, b));
}

/** The place a share `t` of the way from `a` to `b`; exact at 0 and 1. */
export function mix(a: Point, b: Point, t: number): Point {
  return { x: (1 - t) * a.x + t * b.x, y: (1 - t) * a.y + t * b.y };
}

/** A quarter turn counterclockwise: what lies to the left of a direction. */
export function leftOf(a: Point): Point {
  return { x: -a.y, y: a.x };
}

/** The angle from direction `a` to direction `b`, counterclockwise, in (-pi, pi]; 0 where one of them is nothing. */
export function angleBetween(a: Point, b: Point): number {
  return Math.atan2(cross(a, b), dot(a, b));
}
