/** Roots this near to an end of 0 to 1 count as lying at the end. */
export const END_SLACK = 1e-9;

/**
 * The parameters strictly inside 0 to 1 at which a t² + b t + c changes its sign, ascending. A double root changes no
 * sign and is left out. The root of larger size is found first and the other from their product, so that nothing
 * cancels: Press et al., Numerical Recipes, 5.6; Higham, Accuracy and Stability of Numerical Algorithms, 1.8.
 */
export function signChanges(a: number, b: number, c: number): number[] {
  return realRoots(a, b, c).filter((t) => t > END_SLACK && t < 1 - END_SLACK);
}

/** The real single roots of a t² + b t + c, ascending; none where it is nothing throughout. */
export function realRoots(a: number, b: number, c: number): number[] {
  const size = Math.max(Math.abs(a), Math.abs(b), Math.abs(c));
  if (!(size > 0)) return [];
  if (Math.abs(a) <= 1e-14 * size) return Math.abs(b) > 1e-14 * size ? [-c / b] : [];
  const inner = (b / size) * (b / size) - 4 * (a / size) * (c / size);
  if (!(inner > 0)) return [];
  const q = -(b + (b < 0 ? -1 : 1) * size * Math.sqrt(inner)) / 2;
  const roots = [q / a, c / q];
  return roots.sort((s, t) => s - t);
}
