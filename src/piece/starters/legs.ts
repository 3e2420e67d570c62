import type { Edge, Finish, GridPoint, ScheduleStep, Selvage } from '../design';

type Handles = readonly [readonly [number, number], readonly [number, number]];

/** One edge of an outline being drawn, with both its ends. */
export interface Leg {
  readonly id: string;
  readonly from: GridPoint;
  readonly to: GridPoint;
  readonly handles?: Handles;
  readonly steps?: readonly ScheduleStep[];
  readonly finish?: Finish;
  readonly selvage?: Selvage;
}

/** Share of a radius at which the handles of a quarter of an ellipse lie, 4/3 (√2 - 1). */
const QUARTER = 0.5523;

/** A handle to the hundredth: nearer than a curve is ever worked, and short in a file. */
function near(value: number): number {
  return Math.round(value * 100) / 100 + 0;
}

/**
 * The handles of a quarter of an ellipse that leaves `from` plumb and comes to `to` level: a round neck from its
 * shoulder down to its middle.
 */
export function quarterDown([x0, y0]: GridPoint, [x1, y1]: GridPoint): Handles {
  return [
    [x0, near(y0 + QUARTER * (y1 - y0))],
    [near(x1 + QUARTER * (x0 - x1)), y1],
  ];
}

/** The handles of a bell's side: level at both ends, steep between them. */
export function bellSide([x0, y0]: GridPoint, [x1, y1]: GridPoint): Handles {
  return [
    [near(x0 + (x1 - x0) / 2), y0],
    [near(x1 + (x0 - x1) / 2), y1],
  ];
}

function otherSide(id: string): string {
  if (id.endsWith('-left')) return id.replace(/left$/, 'right');
  return id.replace(/right$/, 'left');
}

/**
 * Legs as a mirror shows them, in the direction of the outline again: the last one first. `sum` is twice the place of
 * the mirror. Ids that end in a side change it. Schedules stay, since they say in and out.
 */
export function mirrored(legs: readonly Leg[], sum: number): Leg[] {
  const mirror = ([x, y]: readonly [number, number]) => [near(sum - x), y] as const;
  return [...legs].reverse().map((leg) => ({
    ...leg,
    id: otherSide(leg.id),
    from: mirror(leg.to),
    to: mirror(leg.from),
    ...(leg.handles ? { handles: [mirror(leg.handles[1]), mirror(leg.handles[0])] as const } : {}),
  }));
}

/** The outline of a run of legs, each of which begins where the one before it ends. */
export function outlineOf(legs: readonly Leg[], names: (id: string) => string | undefined): Edge[] {
  return legs.map(({ id, from, handles, steps, finish, selvage }): Edge => {
    const name = names(id);
    const base = { id, ...(name === undefined ? {} : { name }), from };
    const made = { ...(finish ? { finish } : {}), ...(selvage ? { selvage } : {}) };
    if (handles) return { ...base, path: 'curve', handles, ...made };
    if (steps) return { ...base, path: 'stepped', steps, ...made };
    return { ...base, path: 'straight', ...made };
  });
}
