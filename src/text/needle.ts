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
    sentences.push(`${boundOffStitch(terms)} stitches: ${NEEDLE.boundOff(terms)}`);
  }
  if (flat('cast-on') || worked(({ across }) => across >= 2)) {
    sentences.push(`cast-on stitches: ${NEEDLE.castOn}`);
  }
  if (flat('live')) sentences.push(`held stitches: ${NEEDLE.live}`);
  if (flat('provisional')) sentences.push(`provisional cast-on: ${NEEDLE.provisional}`);
  if (has('row')) sentences.push(`rows: ${NEEDLE.row[inset](terms)}`);
  if (has('chain')) sentences.push(`chains: ${NEEDLE.chain}`);
  if (has('chain', true)) sentences.push(`gaps: ${NEEDLE.gap}`);
  if (has('ridge')) {
    sentences.push(`ridges: ${garterAt === 'bump' ? NEEDLE.bump : NEEDLE.inside}`);
  }
  if (has('ridge', true)) sentences.push(`hollows: ${NEEDLE.hollow}`);
  if (worked(({ across, up }) => Math.abs(across) === 1 && Math.abs(up) === 1)) {
    sentences.push('decreases on every row: into the decrease itself as well as beside it');
  }
  if (worked(({ across }) => across <= -2)) {
    sentences.push(
      plan.pickup.stepHoles ? `foot of a step: ${NEEDLE.hole(rowOrRound(plan))}` : `foot of a step: ${NEEDLE.passOver}`,
    );
  }
  return sentences.map(capitalised);
}

/** Where the needle goes at each place, as the end of a sentence. The captions of the close-ups say the same. */
export const NEEDLE = {
  boundOff: (terms: Terms) => `into the middle of the stitch just below the ${chain(terms)}, not under it`,
  castOn: 'into the middle of the stitch just above the cast-on',
  live: 'slip them to the needle and knit them, nothing is picked up',
  provisional: 'undo it, slip the loops to the needle and knit them',
  row: {
    1: ({ selvage }: Terms) => `between the ${selvage} stitch and the one beside it, a whole stitch in`,
    0.5: ({ selvage }: Terms) => `through the middle of the ${selvage} stitch, half a stitch in`,
    0: () => 'under the outermost strand',
  } satisfies Record<1 | 0.5 | 0, (terms: Terms) => string>,
  chain: 'under both legs of the edge stitch',
  gap: 'into the space between two chains',
  bump: 'through the bump at the very edge',
  inside: 'between the edge stitch and its neighbour',
  hollow: 'into the dip between two ridges',
  passOver: 'pass over the large hole, it would show',
  hole: (firstRow: string) =>
    `one extra stitch in the large hole, worked together with its neighbour on the first ${firstRow}`,
} as const;

function chain(terms: Terms): string {
  return `${terms.bindOff.replace(' ', '-')} chain`;
}
