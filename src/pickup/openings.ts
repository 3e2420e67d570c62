import type { MeasuredEdge } from '../shaping';
import type { Mm } from '../units';
import { alongLine } from './along';
import type { Opening } from './plan';
import { climbOpenings, type Climb } from './climb';

/** How the needle goes in: what an edge's openings depend on besides the edge. */
export interface NeedleChoice {
  /** Stitches taken into the join on side edges. */
  readonly inset: 1 | 0.5 | 0;
  readonly garterAt: 'bump' | 'inside';
  readonly stepHoles: boolean;
  readonly halfLoop: boolean;
}

/** The openings of a whole edge in the direction of the outline. */
export interface EdgeOpenings {
  /** First and second places and step holes, in the direction of the outline. */
  readonly all: readonly EdgeOpening[];
  readonly edgeMm: Mm;
  readonly joinMm: Mm;
  /** How far along the join a distance along the edge lies. */
  joinAt(edgeAt: Mm): Mm;
}

/** `hole`: the large hole at the foot of a step, which is used whenever the knitter chose to use holes. */
export interface EdgeOpening extends Opening {
  readonly hole: boolean;
}

const kept = new WeakMap<MeasuredEdge, Map<string, EdgeOpenings>>();

/**
 * Every opening along an edge, by the table of openings: bound off and cast on one to a stitch, live one to a stitch
 * on the needle, provisional n - 1; plain selvage one to a row and one to a stitch of each bound-off step; slipped one
 * chain and garter one ridge to every two rows, each with a second place beside it. Where single decreases come on
 * adjoining rows the decrease itself is an opening too.
 */
export function openingsOf(
  edge: MeasuredEdge,
  cell: { readonly width: Mm; readonly height: Mm },
  choice: NeedleChoice,
): EdgeOpenings {
  const key = `${choice.inset} ${choice.garterAt} ${choice.stepHoles} ${choice.halfLoop} ${cell.width} ${cell.height}`;
  const known = kept.get(edge)?.get(key);
  if (known) return known;
  const made =
    edge.shape === 'horizontal' ? flatOpenings(edge, cell.width, choice.halfLoop) : sideOpenings(edge, cell, choice);
  const shelf = kept.get(edge) ?? new Map<string, EdgeOpenings>();
  shelf.set(key, made);
  kept.set(edge, shelf);
  return made;
}

function flatOpenings(edge: MeasuredEdge, width: Mm, halfLoop: boolean): EdgeOpenings {
  const [x0, y] = edge.from;
  const forwards = Math.sign(edge.to[0] - x0);
  const row = edge.side === 'top' ? y - 1 : y;
  const live = edge.finish === 'live' || edge.finish === 'provisional';
  const all: EdgeOpening[] = [];
  const put = (along: number) => {
    const x = x0 + forwards * along;
    const at = along * width;
    all.push({
      kind: live ? 'live' : 'stitch',
      second: false,
      hole: false,
      column: Math.floor(x),
      row,
      x,
      y: live ? y : row + 0.5,
      edgeAt: at,
      joinAt: at,
    });
  };
  if (edge.finish === 'provisional') {
    for (let i = 1; i < edge.stitches; i++) put(i);
    if (halfLoop) put(edge.stitches);
  } else {
    for (let i = 0; i < edge.stitches; i++) put(i + 0.5);
  }
  return { all, edgeMm: edge.edgeMm, joinMm: edge.edgeMm, joinAt: (edgeAt) => edgeAt };
}

function sideOpenings(
  edge: MeasuredEdge,
  cell: { readonly width: Mm; readonly height: Mm },
  choice: NeedleChoice,
): EdgeOpenings {
  const line = alongLine(edge, cell, choice.inset * cell.width);
  const all: EdgeOpening[] = [];
  let x = edge.from[0];
  let y = edge.from[1];
  let climb: { up: number; steps: { across: number; up: number }[]; x: number; y: number; first: number } | null = null;
  const close = () => {
    if (climb) all.push(...climbOpenings(climb satisfies Climb, edge, line, cell, choice));
    climb = null;
  };
  edge.worked.forEach((step, i) => {
    const up = Math.sign(step.up);
    // Every flat stretch lies between turns of its own.
    if (climb && (climb.up !== up || up === 0)) close();
    climb ??= { up, steps: [], x, y, first: i };
    climb.steps.push(step);
    x += step.across;
    y += step.up;
  });
  close();
  const { edgeMm } = edge;
  if (!foldsBack(all, line.joinMm)) {
    return { all, edgeMm, joinMm: line.joinMm, joinAt: (edgeAt) => line.atDistance(edgeAt).joinAt };
  }
  const joinMm = Math.max(0, line.joinMm);
  const joinAt = (edgeAt: Mm) => (edgeAt * joinMm) / edgeMm;
  return { all: all.map((opening) => ({ ...opening, joinAt: joinAt(opening.edgeAt) })), edgeMm, joinMm, joinAt };
}

/**
 * Where an outer curve or corner is sharper than the inset allows, its parallel folds back and the fold counts below 0:
 * an opening would lie before the one in front of it. The whole join is then shared out in proportion to the edge.
 */
function foldsBack(openings: readonly EdgeOpening[], joinMm: Mm): boolean {
  const slack = 1e-9 * Math.max(1, Math.abs(joinMm));
  let before = 0;
  for (const { joinAt } of openings) {
    if (joinAt < before - slack) return true;
    before = joinAt;
  }
  return joinMm < before - slack;
}
