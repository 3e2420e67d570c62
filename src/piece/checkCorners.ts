import type { Gauge } from '../units';
import { BOUNDS } from './bounds';
import type { Piece } from './design';
import { endOf } from './outline';
import { placeOf, type Key } from './place';
import type { ListOf, Problem } from './problems';

/** Slack for a gauge that stands on a bound up to the error of its own arithmetic. */
const SLACK = 1e-9;

/** An id that is empty or stands for two things in one list, or null. `keys` lead to the list. */
export function idsProblem(root: unknown, keys: readonly Key[], list: ListOf, ids: readonly string[]): Problem | null {
  const seen = new Set<string>();
  for (const [i, id] of ids.entries()) {
    if (id.trim() === '') return { kind: 'empty-id', at: `${placeOf(root, [...keys, i])}.id` };
    if (seen.has(id)) return { kind: 'same-id', at: placeOf(root, [...keys, i]), list, id };
    seen.add(id);
  }
  return null;
}

/** A gauge beyond what is knitted, or null: stitches and rows are held against the bounds over 10 cm. */
export function gaugeProblem(gauge: Gauge, at: string): Problem | null {
  for (const what of ['stitches', 'rows'] as const) {
    const per10cm = (gauge[what] * 100) / gauge.over;
    const [min, max] = BOUNDS.gauge[what];
    const within = per10cm >= min * (1 - SLACK) && per10cm <= max * (1 + SLACK);
    if (!within) return { kind: 'gauge-bounds', at: `${at}.${what}`, what, per10cm, min, max };
  }
  return null;
}

/**
 * What is wrong with the gauge, the ids or the corners of piece `index`, or null. The corners are judged one by one:
 * that they are whole, within reach, and that no edge ends where it begins.
 */
export function cornersProblem(root: unknown, piece: Piece, index: number): Problem | null {
  const keys: Key[] = ['pieces', index];
  const place = (...more: Key[]) => placeOf(root, [...keys, ...more]);
  if (piece.gauge) {
    const problem = gaugeProblem(piece.gauge, place('gauge'));
    if (problem) return problem;
  }
  const ids = piece.outline.map((edge) => edge.id);
  const idProblem = idsProblem(root, [...keys, 'outline'], 'outline', ids);
  if (idProblem) return idProblem;
  for (const [i, edge] of piece.outline.entries()) {
    const [x, y] = edge.from;
    const at = place('outline', i, 'from');
    if (!Number.isInteger(x) || !Number.isInteger(y)) {
      return { kind: 'off-grid', at, piece: piece.id, edge: edge.id, x, y };
    }
    const limit = BOUNDS.corner;
    if (Math.abs(x) > limit || Math.abs(y) > limit) return { kind: 'far-corner', at, x, y, limit };
    const [toX, toY] = endOf(piece.outline, i);
    if (x === toX && y === toY) {
      return { kind: 'no-length', at: place('outline', i), piece: piece.id, edge: edge.id };
    }
  }
  return null;
}
