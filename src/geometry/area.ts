import type { Chain } from './chain';
import { cross, subtract } from './point';

/**
 * The area within a closed chain, above 0 where it runs counterclockwise; a chain that is open is closed by a straight
 * line. Exact for cubics: half the integral of x dy - y dx (Green's theorem), worked out for the Bernstein form, with
 * the cross products of the control points p0 to p3: (6 p0p1 + 3 p0p2 + p0p3 + 3 p1p2 + 3 p1p3 + 6 p2p3) / 20.
 * Source: Green's theorem, and the integrals of products of Bernstein polynomials (Farouki, "The Bernstein polynomial
 * basis: a centennial retrospective", 2012, https://doi.org/10.1016/j.cagd.2012.03.001).
 */
export function signedArea(chain: Chain): number {
  const origin = chain[0]?.from;
  if (origin === undefined) return 0;
  let twentieths = 0;
  for (const seg of chain) {
    const p0 = subtract(seg.from, origin);
    const p3 = subtract(seg.to, origin);
    if (seg.kind === 'line') {
      twentieths += 10 * cross(p0, p3);
      continue;
    }
    const p1 = subtract(seg.c1, origin);
    const p2 = subtract(seg.c2, origin);
    twentieths += 6 * cross(p0, p1) + 3 * cross(p0, p2) + cross(p0, p3);
    twentieths += 3 * cross(p1, p2) + 3 * cross(p1, p3) + 6 * cross(p2, p3);
  }
  return twentieths / 20;
}
