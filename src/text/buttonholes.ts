import type { Hole, HoleRow, PickupPlan } from '../pickup';
import { rowOrRound } from './rowOrRound';
import type { Voice } from './voice';
import { counted, listed, stitchesText, times } from './words';

/**
 * The row of a band that its buttonholes are worked in: `work 4, buttonhole over 2, (work 17, buttonhole) 5 times, work
 * 4`. Counted out, what is worked and the holes are all stitches of the band.
 */
export function buttonholeRow({ stitches, before, after, gaps }: HoleRow): string {
  const first = `buttonhole over ${stitches}`;
  const between = runsOf(gaps).map(({ gap, n }) =>
    n === 1 ? `work ${gap}, buttonhole` : `(work ${gap}, buttonhole) ${times(n)}`,
  );
  return [`work ${before}`, first, ...between, `work ${after}`].join(', ');
}

/** The same in brief: `4, hole over 2, (17, hole) ×5, 4`. */
function shortRow({ stitches, before, after, gaps }: HoleRow): string {
  const between = runsOf(gaps).map(({ gap, n }) => (n === 1 ? `${gap}, hole` : `(${gap}, hole) ×${n}`));
  return [before, `hole over ${stitches}`, ...between, after].join(', ');
}

/** Equal gaps that follow each other, with their number. */
function runsOf(gaps: readonly number[]): { readonly gap: number; readonly n: number }[] {
  const runs: { gap: number; n: number }[] = [];
  for (const gap of gaps) {
    const last = runs.at(-1);
    if (last?.gap === gap) last.n += 1;
    else runs.push({ gap, n: 1 });
  }
  return runs;
}

/** `17 stitches between the holes`, `10 or 11 stitches between the holes`; empty where there is one hole. */
export function gapsText({ gaps }: Pick<HoleRow, 'gaps'>): string {
  const kinds = [...new Set(gaps)].sort((a, b) => a - b);
  if (kinds.length === 0) return '';
  return `${kinds.length === 1 ? stitchesText(kinds[0]!) : `${listed(kinds, 'or')} stitches`} between the holes`;
}

/**
 * The paragraph on a band's buttonholes, empty where there are none: the row, its count, how a hole is made, and a
 * marker for each. That they lie near the middle of the band, a marker at the middle of each, is common advice:
 * Knitting Magic, "Buttonholes", https://www.knittingmagic.biz.
 */
export function buttonholesText(plan: PickupPlan, { terms, form }: Pick<Voice, 'terms' | 'form'>): string {
  const { holes: row } = plan;
  if (!row) return '';
  const markers = markersText(row.holes);
  if (form === 'short') return `Buttonholes: ${shortRow(row)}. Markers ${markers}.`;
  const { stitches } = row;
  const eyelet = stitches === 2 ? eyeletText(row, terms) : '';
  const inRib = row.rib ? `, each with its middle in a purl column of the rib` : '';
  // In the round every round is worked from the right side.
  const where = `on a ${plan.pickup.joined ? 'round' : 'right-side row'} near the middle of the band`;
  const each = row.holes.length === 1 ? 'For the buttonhole' : 'For each buttonhole';
  return (
    `${counted(row.holes.length, 'buttonhole')}, ${where}${inRib}: ${buttonholeRow(row)} (${plan.target} in all). ` +
    `${each} ${terms.bindOff} ${stitches} and cast on ${stitches} over the gap on the next ${rowOrRound(plan)}${eyelet}. ` +
    `Mark the middle of each for its button: ${markers}.`
  );
}

/**
 * A small hole by a yarn over: in a rib it stands where a purl was, and the decrease beside it leaves a knit stitch on
 * top (the same source); over two purls it is worked between them.
 */
function eyeletText({ rib }: HoleRow, { yarnOver }: Voice['terms']): string {
  if (!rib) return `, or work ${yarnOver}, k2tog`;
  return rib.purl > 1
    ? `, or work ${yarnOver}, p2tog`
    : `, or work a ${yarnOver} where its purl was and decrease with the knit stitch on top`;
}

/** Where the middles of the holes lie: `after 5, 24 and 43 stitches`, or `in stitches 5, 24 and 43`. */
function markersText(holes: readonly Hole[]): string {
  const between = holes.every(({ middle }) => Number.isInteger(middle));
  const at = holes.map(({ middle }) => Math.ceil(middle));
  if (between) return `after ${listed(at)} stitches`;
  return `in ${at.length === 1 ? 'stitch' : 'stitches'} ${listed(at)}`;
}
