import type { PickupPlan } from '../pickup';
import type { WorkedStep } from '../shaping';
import { boundOffStitch } from './places';
import { rowOrRound } from './rowOrRound';
import type { Terms } from './terms';
import { capitalised } from './words';

/**
 * Where the needle goes on each kind of edge that a pick-up runs along, a sentence each. Bound-off edges: below the
 * chain (Interweave, "How to pick up neckband stitches", https://www.interweave.com/article/knitting/how-to-pick-up-neckband-stitches);
 * one whole stitch in on side edges (Knitting Robin, 2013, https://knittingrobin.blogspot.com/2013/07); slipped edges
 * under both legs of the chain (Osborn Fiber, 2010, https://osbornfiber.com/2010/06/27).
 */
export function needleText(plan: PickupPlan, terms: Terms): string[] {
  const { inset, garterAt } = plan.pickup;
  const sentences: string[] = [];
  const has = (kind: string, second = false) =>
    plan.edges.some(({ selection: { openings, usedAt } }) =>
      usedAt.some((i) => openings.sort[i]!.kind === kind && openings.sort[i]!.second === second),
    );
  const flat = (finish: string) =>
    plan.edges.some((edge) => edge.shape === 'horizontal' && edge.measured.finish === finish);
  const worked = (test: (step: WorkedStep) => boolean) => plan.edges.some((edge) => edge.measured.worked.some(test));
  if (flat('bound-off') || worked(({ across }) => across <= -2)) {
    sentences.push(
      `${boundOffStitch(terms)} stitches: into the middle of the stitch just below the ${chain(terms)}, not under it`,
    );
  }
  if (flat('cast-on') || worked(({ across }) => across >= 2)) {
    sentences.push('cast-on stitches: into the middle of the stitch just above the cast-on');
  }
  if (flat('live')) sentences.push('held stitches: slip them to the needle and knit them, nothing is picked up');
  if (flat('provisional')) sentences.push('provisional cast-on: undo it, slip the loops to the needle and knit them');
  if (has('row')) sentences.push(`rows: ${ROWS[inset](terms)}`);
  if (has('chain')) sentences.push('chains: under both legs of the edge stitch');
  if (has('chain', true)) sentences.push('gaps: into the space between two chains');
  if (has('ridge')) {
    const where =
      garterAt === 'bump' ? 'through the bump at the very edge' : 'between the edge stitch and its neighbour';
    sentences.push(`ridges: ${where}`);
  }
  if (has('ridge', true)) sentences.push('hollows: into the dip between two ridges');
  if (worked(({ across, up }) => Math.abs(across) === 1 && Math.abs(up) === 1)) {
    sentences.push('decreases on every row: into the decrease itself as well as beside it');
  }
  if (worked(({ across }) => across <= -2)) {
    sentences.push(
      plan.pickup.stepHoles
        ? `foot of a step: one extra stitch in the large hole, worked together with its neighbour on the first ${rowOrRound(plan)}`
        : 'foot of a step: pass over the large hole, it would show',
    );
  }
  return sentences.map(capitalised);
}

const ROWS: Readonly<Record<1 | 0.5 | 0, (terms: Terms) => string>> = {
  1: ({ selvage }) => `between the ${selvage} stitch and the one beside it, a whole stitch in`,
  0.5: ({ selvage }) => `through the middle of the ${selvage} stitch, half a stitch in`,
  0: () => 'under the outermost strand',
};

function chain(terms: Terms): string {
  return `${terms.bindOff.replace(' ', '-')} chain`;
}
