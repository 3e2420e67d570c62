import type { Design, EdgeRef, Stretch } from '../../piece';

/** Parts of an edge shorter than this share of it are none. */
const NONE = 1e-9;

/** What of a design says in which order a run is worked and how its edges follow each other. */
type Ground = Pick<Design, 'pieces' | 'hand'>;

/**
 * The stretches of a run in the order and direction in which they are worked, or back again: a left-handed knitter
 * works every run of the document in reverse, each stretch from its other end.
 */
export function inWorkingOrder({ hand }: Pick<Design, 'hand'>, along: readonly Stretch[]): readonly Stretch[] {
  return hand === 'left' ? turnedRound(along) : along;
}

/** The same run worked from its other end. */
export function turnedRound(along: readonly Stretch[]): Stretch[] {
  return along.map((stretch) => ({ ...stretch, backwards: !stretch.backwards })).reverse();
}

/**
 * A run of edges after one more was pointed at. An edge that is in the run already is taken out, every part of it; any
 * other comes last in working order, in the direction that goes on from the one before. Pointed at second and lying
 * before the first, it turns the first one round: they are worked in the order in which they were pointed at. Empty when
 * the last edge was taken out.
 */
export function withStretch(design: Ground, along: readonly Stretch[], ref: EdgeRef): readonly Stretch[] {
  const without = along.filter((stretch) => !isOn(stretch, ref));
  return without.length < along.length ? without : withEdgeAdded(design, along, ref);
}

/** A run with what is still free of an edge added at its end in working order; the same run where nothing is. */
export function withEdgeAdded(design: Ground, along: readonly Stretch[], ref: EdgeRef): readonly Stretch[] {
  const part = freePart(along, ref);
  if (!part) return along;
  const worked = inWorkingOrder(design, along);
  const [only] = worked;
  const before = worked.length === 1 && only && comesBefore(design, ref, only);
  const run = before ? worked.map((stretch) => ({ ...stretch, backwards: !stretch.backwards })) : worked;
  const backwards = run.at(-1)?.backwards ?? design.hand === 'left';
  return inWorkingOrder(design, [...run, { ...ref, backwards, part }]);
}

/** A run with what it does not take yet of another one added at its end in working order. */
export function withRunAdded(
  design: Pick<Design, 'hand'>,
  along: readonly Stretch[],
  more: readonly Stretch[],
): readonly Stretch[] {
  const run = [...inWorkingOrder(design, along)];
  for (const stretch of inWorkingOrder(design, more)) {
    const part = freePart(run, stretch);
    if (part) run.push({ ...stretch, part });
  }
  return inWorkingOrder(design, run);
}

/** The longest part of an edge that a run does not take, as fractions of its length; null where there is none. */
export function freePart(along: readonly Stretch[], ref: EdgeRef): readonly [number, number] | null {
  const taken = along.filter((stretch) => isOn(stretch, ref)).sort((a, b) => a.part[0] - b.part[0]);
  let best: readonly [number, number] = [0, 0];
  let from = 0;
  for (const to of [...taken.map(({ part }) => part[0]), 1]) {
    if (to - from > best[1] - best[0] + NONE) best = [from, to];
    from = taken.shift()?.part[1] ?? 1;
  }
  return best[1] - best[0] > NONE ? best : null;
}

/** A run with one stretch moved to another place in it. */
export function withMoved(along: readonly Stretch[], from: number, to: number): readonly Stretch[] {
  const stretch = along[from];
  if (!stretch || to < 0 || to >= along.length) return along;
  const rest = along.filter((_, i) => i !== from);
  return [...rest.slice(0, to), stretch, ...rest.slice(to)];
}

/** A run with one stretch worked from its other end. */
export function withTurned(along: readonly Stretch[], index: number): readonly Stretch[] {
  return along.map((stretch, i) => (i === index ? { ...stretch, backwards: !stretch.backwards } : stretch));
}

function isOn(stretch: Stretch, ref: EdgeRef): boolean {
  return stretch.piece === ref.piece && stretch.edge === ref.edge;
}

/** Whether an edge ends, in the direction of a stretch, at the corner where that stretch begins. */
function comesBefore({ pieces }: Ground, ref: EdgeRef, stretch: Stretch): boolean {
  const outline = pieces.find(({ id }) => id === ref.piece)?.outline ?? [];
  if (stretch.piece !== ref.piece || outline.length < 3) return false;
  const at = outline.findIndex(({ id }) => id === ref.edge);
  const first = outline.findIndex(({ id }) => id === stretch.edge);
  const before = (first + (stretch.backwards ? 1 : -1) + outline.length) % outline.length;
  return at >= 0 && at === before;
}
