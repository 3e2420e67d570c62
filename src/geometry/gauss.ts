/**
 * Abscissae (the positive half) and weights of the 12-point Gauss–Legendre rule on [-1, 1], exact for polynomials up
 * to degree 23. Source: Abramowitz & Stegun, Handbook of Mathematical Functions, table 25.4, for formula 25.4.29;
 * DLMF 3.5(v), https://dlmf.nist.gov/3.5#v. A test works them out anew from the Legendre polynomial.
 */
export const GAUSS_NODES: readonly number[] = [
  0.1252334085114689, 0.3678314989981802, 0.5873179542866174, 0.7699026741943047, 0.9041172563704749,
  0.9815606342467192,
];
export const GAUSS_WEIGHTS: readonly number[] = [
  0.24914704581340277, 0.2334925365383548, 0.2031674267230659, 0.16007832854334622, 0.10693932599531843,
  0.04717533638651183,
];
