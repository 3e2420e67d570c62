import type { FirstRowWish, Pickup } from '../piece';
import { closingRow, firstRow } from './firstRow';
import type { FirstRow, PlannedEdge, RowNote, Section } from './plan';
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
  readonly sections: readonly Pick<Section, 'n' | 'count' | 'running' | 'after'>[];
  readonly edges: readonly Pick<PlannedEdge, 'count' | 'piece' | 'numbers'>[];
}

/** A first row with what could not be kept of what it was asked. */
export interface RowMade {
  readonly firstRow: FirstRow;
  readonly notes: readonly RowNote[];
}

/**
 * The first row or round of a pick-up, placed as it asks for, with what could not be kept of that.
 *
 * @throws PlanError when there are more increases than stitches, or fewer than two stitches to each decrease
 */
export function rowFor(ground: RowGround): RowMade {
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

function placed(ground: RowGround, wish: FirstRowWish): RowMade {
  if (wish.by !== 'sections' || ground.sections.length < 2) return placedBy(ground, wish, false);
  try {
    return placedBy(ground, wish, true);
  } catch (error) {
    if (!(error instanceof PlanError)) throw error;
    // A section alone can be too short for its changes where the row as a whole is not.
    const whole = placedBy(ground, wish, false);
    return { ...whole, notes: [{ kind: 'row-not-by-sections' }, ...whole.notes] };
  }
}

function placedBy(ground: RowGround, wish: FirstRowWish, bySection: boolean): RowMade {
  const { pickup, picked, target, edges } = ground;
  const { joined, band } = pickup;
  const rib = wish.rib ? ribOf(band) : null;
  // Flat, the first row is worked back from the end of the pick-up.
  const worked = <T>(list: readonly T[]): readonly T[] => (joined ? list : [...list].reverse());
  const marks = [...ground.sections.slice(0, -1).map(({ running }) => running), ...seamsOf(edges)];
  const sections = bySection ? worked(ground.sections) : null;
  const row = placedRow(picked, target, joined, {
    marks: worked(marks).map((mark) => (joined ? mark : picked - mark)),
    clear: wish.clear,
    rib,
    parts: sections?.map(({ count, after }) => ({ from: count, to: after })) ?? null,
  });
  const { from, to, groups } = row;
  const parts = sections?.map(({ n }, i) => ({ section: n, ...part(row.parts[i]!) }));
  const changes = groups.length > 0;
  const notes: RowNote[] = [
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

/** How many stitches lie before each place where one piece ends and another begins, as they are numbered. */
function seamsOf(edges: RowGround['edges']): number[] {
  let before = 0;
  return edges.flatMap(({ count, piece, numbers = [] }, i) => {
    const start = (numbers[0] ?? before + 1) - 1;
    before = numbers.at(-1) ?? start + count;
    return i > 0 && edges[i - 1]!.piece !== piece ? [start] : [];
  });
}
