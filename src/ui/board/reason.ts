import { edgeSum } from '../../text';
import type { Workbench } from '../workbench.svelte';

/** The sum of the edge that is lit, or null where none is, or where it is picked up in several stretches. */
export function litSum(bench: Workbench): string | null {
  const { lit, pickup } = bench;
  if (!lit || !pickup) return null;
  const found = pickup.edges.filter(({ piece, measured }) => piece.id === lit.piece && measured.id === lit.edge);
  const [only] = found;
  return only && found.length === 1 ? edgeSum(pickup, only, bench.voice) : null;
}
