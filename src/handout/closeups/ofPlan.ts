import type { OpeningSort, PickupPlan, PlannedEdge } from '../../pickup';
import type { CloseUpKind } from '../../text';

/** The kinds of close-up that occur in a plan, in the order of its edges, each once. */
export function closeUpsOf(plan: PickupPlan): CloseUpKind[] {
  const kinds = new Set<CloseUpKind>();
  for (const edge of plan.edges) for (const kind of kindsOf(edge, plan)) kinds.add(kind);
  return [...kinds];
}

function kindsOf(edge: PlannedEdge, { pickup }: PickupPlan): CloseUpKind[] {
  const { finish, worked } = edge.measured;
  if (edge.shape === 'horizontal') return [finish];
  const { openings, usedAt } = edge.selection;
  const has = (kind: OpeningSort['kind'], second = false) =>
    usedAt.some((i) => openings.sort[i]!.kind === kind && openings.sort[i]!.second === second);
  const kinds: CloseUpKind[] = [];
  const steps = worked.some(({ across }) => across <= -2);
  if (steps) kinds.push('bound-off');
  if (worked.some(({ across }) => across >= 2)) kinds.push('cast-on');
  if (has('row')) {
    kinds.push(ROWS[pickup.inset]);
    if (worked.some(({ across }) => Math.abs(across) === 1)) kinds.push('slope');
  }
  if (has('chain')) kinds.push('chain');
  if (has('chain', true)) kinds.push('chain-gap');
  if (has('ridge')) kinds.push(pickup.garterAt === 'bump' ? 'garter-bump' : 'garter-between');
  if (has('ridge', true)) kinds.push('garter-hollow');
  if (steps) kinds.push(pickup.stepHoles ? 'step-hole' : 'step');
  return kinds;
}

const ROWS = { 1: 'selvage', 0.5: 'selvage-half', 0: 'selvage-strand' } as const satisfies Record<
  1 | 0.5 | 0,
  CloseUpKind
>;
