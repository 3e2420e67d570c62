import type { Pickup } from '../piece';
import { closingRow, firstRow } from './firstRow';
import type { FirstRow, Note, PlannedEdge, Section } from './plan';
import { placedRow } from './placedRow';
import { PlanError } from './problems';
import { ribOf } from './rib';

/** What the first row of a pick-up is made from. */
interface RowGround {
  readonly pickup: Pickup;
  readonly picked: number;
  readonly target: number;
  /** Numbers of the stitches picked up in step holes. */
  readonly holes: readonly number[];
  readonly sections: readonly Section[];
  readonly edges: readonly Pick<PlannedEdge, 'count' | 'piece'>[];
}

/** The first row or round of a pick-up, placed as it asks for, with what could not be kept of that. */
export function rowFor(ground: RowGround): { readonly firstRow: FirstRow; readonly notes: readonly Note[] } {
  const { pickup, picked, target, holes } = ground;
  if (picked - target === holes.length) {
    const closing = closingRow(picked, holes, pickup.joined);
    if (closing) return { firstRow: closing, notes: [] };
  }
  try {
    if (!pickup.firstRow) return { firstRow: firstRow(picked, target, pickup.joined), notes: [] };
    return placed(ground, pickup.firstRow);
  } catch (error) {
    if (error instanceof PlanError && 'from' in error.problem) {
      throw new PlanError({ ...error.problem, pickup: pickup.name });
    }
    throw error;
  }
}

function placed({ pickup, picked, target, sections, edges }: RowGround, wish: NonNullable<Pickup['firstRow']>) {
  const { joined, band } = pickup;
  const rib = wish.rib ? ribOf(band) : null;
  // Flat, the first row is worked back from the end of the pick-up.
  const worked = <T>(list: readonly T[]): readonly T[] => (joined ? list : [...list].reverse());
  const marks = [...sections.slice(0, -1).map(({ running }) => running), ...seamsOf(edges)];
  const bySection = wish.by === 'sections' && sections.length > 1 ? worked(sections) : null;
  const row = placedRow(picked, target, joined, {
    marks: worked(marks).map((mark) => (joined ? mark : picked - mark)),
    clear: wish.clear,
    rib,
    parts: bySection?.map(({ count, after }) => ({ from: count, to: after })) ?? null,
  });
  const { from, to, groups } = row;
  const parts = bySection?.map(({ n }, i) => ({ section: n, ...part(row.parts[i]!) }));
  const changes = groups.length > 0;
  const notes: Note[] = [
    ...(changes && wish.clear && !row.keptClear ? [{ kind: 'row-not-clear' } as const] : []),
    ...(changes && wish.rib && !row.keptRib
      ? [{ kind: 'row-not-in-rib', why: rib === null ? 'no-rib' : 'no-room' } as const]
      : []),
  ];
  return { firstRow: { from, to, joined, groups, ...(parts ? { parts } : {}) }, notes };
}

function part({ from, to, groups }: FirstRow) {
  return { from, to, groups };
}

/** How many stitches lie before each place where one piece ends and another begins. */
function seamsOf(edges: readonly Pick<PlannedEdge, 'count' | 'piece'>[]): number[] {
  let before = 0;
  return edges.flatMap(({ count, piece }, i) => {
    const seam = i > 0 && edges[i - 1]!.piece !== piece ? [before] : [];
    before += count;
    return seam;
  });
}
