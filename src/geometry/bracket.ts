/** How near the two sides of a bracket must come to end the search. */
const NARROW = 1e-15;

/** Steps of the search; halving alone ends within them. */
const MOST_STEPS = 200;

/**
 * The root of f between a and b, where f has opposite signs or is 0 at one of them: quadratic interpolation where the
 * values allow it, else halving. Source: Chandrupatla, "A new hybrid quadratic/bisection algorithm for finding the zero
 * of a nonlinear function without using derivatives", 1997, https://doi.org/10.1016/S0965-9978(96)00051-8.
 */
export function bracketedRoot(f: (t: number) => number, a: number, b: number): number {
  let [near, far] = [b, a];
  let [fNear, fFar] = [f(b), f(a)];
  if (fFar === 0) return far;
  let share = 0.5;
  for (let step = 0; step < MOST_STEPS; step++) {
    const [best, fBest] = Math.abs(fNear) < Math.abs(fFar) ? [near, fNear] : [far, fFar];
    const least = (2 * NARROW * Math.max(Math.abs(best), NARROW)) / Math.abs(far - near);
    if (fBest === 0 || !(least <= 0.5)) return best;
    const t = near + Math.min(1 - least, Math.max(least, share)) * (far - near);
    const value = f(t);
    const sameSide = value < 0 === fNear < 0;
    const [older, fOlder] = sameSide ? [near, fNear] : [far, fFar];
    if (!sameSide) [far, fFar] = [near, fNear];
    [near, fNear] = [t, value];
    const place = (near - far) / (older - far);
    const height = (fNear - fFar) / (fOlder - fFar);
    const smooth = height * height < place && (1 - height) * (1 - height) < 1 - place;
    share = smooth
      ? ((fNear / (fFar - fNear)) * fOlder) / (fFar - fOlder) +
        ((((older - near) / (far - near)) * fNear) / (fOlder - fNear)) * (fFar / (fOlder - fFar))
      : 0.5;
  }
  return near;
}
