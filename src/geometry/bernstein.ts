import { bracketedRoot } from './bracket';

/** Coefficients below this share of the largest may be the error of their own computation. */
const NOISE = 1e-14;

/** A stretch halved this often is as narrow as numbers get near 1. */
const MOST_HALVINGS = 50;

/** The value at t of a polynomial given by its Bernstein coefficients, by de Casteljau's algorithm. */
export function bernsteinAt(coefficients: readonly number[], t: number): number {
  const row = [...coefficients];
  for (let n = row.length - 1; n > 0; n--) {
    for (let i = 0; i < n; i++) row[i] = (1 - t) * row[i]! + t * row[i + 1]!;
  }
  return row[0] ?? 0;
}

/**
 * The parameters from 0 to 1, ascending, at which a polynomial in Bernstein form changes its sign. It has no more roots
 * than its coefficients have changes of sign, so stretches without any are dropped, those with one are searched, the
 * others halved. Source: Schneider, "A Bézier curve-based root-finder", Graphics Gems (1990), after Lane and
 * Riesenfeld, "Bounds on a polynomial", 1981, https://doi.org/10.1007/BF01933165.
 */
export function bernsteinRoots(coefficients: readonly number[]): number[] {
  // Lifted by more than rounding can lower it, a polynomial that is nothing throughout has no root at all.
  const lift = NOISE * Math.max(...coefficients.map(Math.abs));
  const found: number[] = [];
  const search = (row: readonly number[], a: number, b: number, halvings: number): void => {
    const changes = signChanges(row);
    if (changes === 0) return;
    if (changes === 1) {
      found.push(a + (b - a) * bracketedRoot((t) => bernsteinAt(row, t), 0, 1));
    } else if (halvings === 0) {
      found.push((a + b) / 2);
    } else {
      const [left, right] = halves(row);
      const middle = (a + b) / 2;
      search(left, a, middle, halvings - 1);
      search(right, middle, b, halvings - 1);
    }
  };
  search(
    coefficients.map((value) => value + lift),
    0,
    1,
    MOST_HALVINGS,
  );
  return found;
}

/** 0 counts as above 0, so that a root at the cut between two halves belongs to one of them. */
function signChanges(row: readonly number[]): number {
  let changes = 0;
  for (let i = 1; i < row.length; i++) if (row[i]! < 0 !== row[i - 1]! < 0) changes += 1;
  return changes;
}

/** The coefficients of both halves of a polynomial, by de Casteljau's algorithm. */
function halves(coefficients: readonly number[]): [left: number[], right: number[]] {
  const row = [...coefficients];
  const left = [row[0]!];
  for (let n = row.length - 1; n > 0; n--) {
    for (let i = 0; i < n; i++) row[i] = (row[i]! + row[i + 1]!) / 2;
    left.push(row[0]!);
  }
  return [left, row];
}
