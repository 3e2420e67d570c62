import type { MeasuredEdge, WorkedStep } from '../shaping';
import { shelf, type Mm } from '../units';
import { alongLine } from './along';
import { climbOpenings, type Climb } from './climb';
import { joinUp, LIVE, noOpenings, STITCH, type Openings } from './openingList';
import type { OpeningList } from './plan';

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
  readonly list: OpeningList;
  readonly edgeMm: Mm;
  readonly joinMm: Mm;
  /** How far along the join a distance along the edge lies. */
  readonly joinAt: (edgeAt: Mm) => Mm;
}

/** The pick-ups along one edge rarely choose in more than a few ways. */
const kept = shelf<MeasuredEdge, EdgeOpenings>(4);

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
  const { inset, garterAt, stepHoles, halfLoop } = choice;
  return kept(edge, [inset, garterAt, stepHoles, halfLoop, cell.width, cell.height], () =>
    edge.shape === 'horizontal' ? flatOpenings(edge, cell.width, halfLoop) : sideOpenings(edge, cell, choice),
  );
}

function flatOpenings(edge: MeasuredEdge, width: Mm, halfLoop: boolean): EdgeOpenings {
  const [x0, y] = edge.from;
  const forwards = Math.sign(edge.to[0] - x0);
  const row = edge.side === 'top' ? y - 1 : y;
  const live = edge.finish === 'live' || edge.finish === 'provisional';
  const list = noOpenings();
  const put = (along: number) => {
    list.sort.push(live ? LIVE : STITCH);
    list.row.push(row);
    list.x.push(x0 + forwards * along);
    list.y.push(live ? y : row + 0.5);
    list.edgeAt.push(along * width);
  };
  if (edge.finish === 'provisional') {
    for (let i = 1; i < edge.stitches; i++) put(i);
    if (halfLoop) put(edge.stitches);
  } else {
    for (let i = 0; i < edge.stitches; i++) put(i + 0.5);
  }
  return {
    list: { ...list, joinAt: list.edgeAt },
    edgeMm: edge.edgeMm,
    joinMm: edge.edgeMm,
    joinAt: (edgeAt) => edgeAt,
  };
}

function sideOpenings(
  edge: MeasuredEdge,
  cell: { readonly width: Mm; readonly height: Mm },
  choice: NeedleChoice,
): EdgeOpenings {
  const line = alongLine(edge, cell, choice.inset * cell.width);
  const ground = { edge, line, cell, choice };
  const climbs: Openings[] = [];
  let x = edge.from[0];
  let y = edge.from[1];
  let climb: (Climb & { readonly steps: WorkedStep[] }) | null = null;
  const close = () => {
    if (climb) climbs.push(climbOpenings(climb, ground));
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
  const list = joinUp(climbs);
  if (!foldsBack(list.joinAt, line.joinMm)) {
    return { list, edgeMm, joinMm: line.joinMm, joinAt: (edgeAt) => line.atDistance(edgeAt).joinAt };
  }
  const joinMm = Math.max(0, line.joinMm);
  const joinAt = (edgeAt: Mm) => (edgeAt * joinMm) / edgeMm;
  return { list: { ...list, joinAt: list.edgeAt.map(joinAt) }, edgeMm, joinMm, joinAt };
}

/**
 * Where an outer curve or corner is sharper than the inset allows, its parallel folds back and the fold counts below 0:
 * an opening would lie before the one in front of it. The whole join is then shared out in proportion to the edge.
 */
function foldsBack(joinAt: readonly Mm[], joinMm: Mm): boolean {
  const slack = 1e-9 * Math.max(1, Math.abs(joinMm));
  let before = 0;
  for (const at of joinAt) {
    if (at < before - slack) return true;
    before = at;
  }
  return joinMm < before - slack;
}
