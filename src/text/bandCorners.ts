import type { BandCorner, BandEdge, PickupPlan } from '../pickup';
import type { Asked } from './board';
import { byMultiple, lengthText, multipleText, percentText, plainNumber } from './numbers';
import { rowOrRound } from './rowOrRound';
import { shapingRowsText } from './shapingRows';
import type { Terms } from './terms';
import type { Voice } from './voice';
import { capitalised, counted, listed, stitchesText } from './words';

/** A free edge that differs from the edge by less than this share is not worth a word. */
const WORTH = 0.03;

const ROUND_BEGINS = ' The round begins with stitch 1: what comes before it is worked at the end of the round.';

type Saying = Pick<Voice, 'terms' | 'units' | 'form'>;

/**
 * What is worked at the corners of a band and how long its free edge is, a paragraph each: the corners in groups that
 * are worked alike, the count after them, then the free edge. Empty where the band has no depth, or there is no corner
 * and the free edge differs from the edge by less than 3%.
 *
 * A V decreased at its point every second round where it is wide and every round where it is narrow, by a centred double
 * decrease or by pairs, is common: zanotowane.pl/713/7790 (a scanned book on knitting) and
 * http://fiknits.blogspot.com/2014/10; here the sum says which. That rib takes up what a neckline's curve leaves over,
 * and garter, seed and stockinette want decreases: http://knittingrobin.blogspot.com/2013/07.
 */
export function bandCornersText(plan: PickupPlan, voice: Saying): string[] {
  return bandCornersLines(plan, voice).map(({ text }) => text);
}

/** A paragraph on a band's corners or its free edge, and the number in it whose arithmetic can be asked for. */
export interface CornerLine {
  readonly text: string;
  readonly asked: { readonly of: 'free-edge' } | Extract<Asked, { readonly of: 'corner' }> | null;
}

/** The same, each paragraph with what it can be asked. */
export function bandCornersLines(plan: PickupPlan, voice: Saying): CornerLine[] {
  const { bandEdge: free } = plan;
  if (!free) return [];
  const worth = Math.abs(free.freeMm / free.edgeMm - 1) >= WORTH;
  if (free.corners.length === 0 && !worth) return [];
  if (free.tooDeep) return [{ text: tooDeepText(plan, free), asked: { of: 'free-edge' } }];
  const worked = free.corners.filter(({ times }) => times > 0);
  const bare = (text: string): CornerLine => ({ text, asked: null });
  return [
    ...alike(worked).map((group): CornerLine => ({
      text: groupText(plan, free, group, voice),
      asked: { of: 'corner', corner: free.corners.indexOf(group[0]!) },
    })),
    ...(worked.length > 0 ? [bare(afterText(plan, free, worked))] : []),
    ...besideText(free).map(bare),
    ...(worth ? [{ text: freeText(plan, free, voice), asked: { of: 'free-edge' } } as const] : []),
  ];
}

/** Corners that are worked alike, in the order of their first ones. */
function alike(corners: readonly BandCorner[]): BandCorner[][] {
  const groups = new Map<string, BandCorner[]>();
  for (const corner of corners) {
    const { turn, rows, stitches, point, capped } = corner;
    const key = JSON.stringify([turn > 0, rows, stitches.length, point, capped]);
    groups.set(key, [...(groups.get(key) ?? []), corner]);
  }
  return [...groups.values()];
}

function groupText(plan: PickupPlan, free: BandEdge, group: readonly BandCorner[], voice: Saying): string {
  const [one] = group as [BandCorner];
  const marked = group.flatMap(({ stitches }) => stitches);
  if (one.stitches.length === 1) marked.sort((a, b) => a - b);
  const noun = rowOrRound(plan);
  const works = worksText(one, voice.terms);
  if (voice.form === 'short') {
    const stitches = `${marked.length === 1 ? 'stitch' : 'stitches'} ${listed(marked)}`;
    return `${capitalised(placeShort(group))}, ${stitches}: ${timesText(one, free.rows, noun)}: ${works}.`;
  }
  const verb = one.turn > 0 ? 'increase' : 'decrease';
  const side = one.stitches.length === 2 ? 'them' : 'it';
  const done = `${verb} ${timesText(one, free.rows, noun, ` on each side of ${side}`)}: ${works}.`;
  const sentences = [`${placeLong(group, marked)}.`, group.length === 1 ? capitalised(done) : `At each, ${done}`];
  const start = plan.pickup.joined && marked.includes(1) ? ROUND_BEGINS : '';
  return sentences.join(' ') + start + wrongSideText(plan, one) + cappedText(plan, one, noun);
}

function placeShort(group: readonly BandCorner[]): string {
  const [one] = group as [BandCorner];
  if (one.point) return group.length === 1 ? 'point of the V' : `${group.length} points`;
  return counted(group.length, `${one.turn > 0 ? 'outer' : 'inner'} corner`);
}

/** `Corners: mark stitches 1, 112 and 249 as you pick them up, one at each of 3 outer corners (90 degrees)`. */
function placeLong(group: readonly BandCorner[], marked: readonly number[]): string {
  const [one] = group as [BandCorner];
  const angles = group.map(({ turn }) => Math.round((Math.abs(turn) * 180) / Math.PI));
  const [least, most] = [Math.min(...angles), Math.max(...angles)];
  const turned = `${least === most ? least : `${least} to ${most}`} degrees`;
  const many = group.length > 1;
  const stitches = `mark ${marked.length === 1 ? 'stitch' : 'stitches'} ${listed(marked)} as you pick ${marked.length === 1 ? 'it' : 'them'} up`;
  if (one.point && !many) {
    const middle = one.stitches.length === 2 ? 'the two at its middle' : 'the one at its middle';
    return `Point of the V: ${stitches}, ${middle}. The edge turns by ${turned} there`;
  }
  const which = `${many ? `the ${group.length}` : 'the'} ${one.turn > 0 ? 'outer' : 'inner'} ${many ? 'corners' : 'corner'}`;
  const each = one.stitches.length === 2 ? 'two' : 'one';
  const where = many ? `${each} at each of ${which}` : `at ${which}`;
  return `${many ? 'Corners' : 'Corner'}: ${stitches}, ${where}, where the edge turns by ${turned}`;
}

/** `1 on every second row, 5 times, beginning with row 2`, `1 on every row, and a second one on rows 2, 4 and 6`. */
function timesText({ rows }: BandCorner, total: number, noun: 'row' | 'round', side = ' each side'): string {
  const once = [...new Set(rows)];
  const twice = once.filter((row) => rows.filter((one) => one === row).length > 1);
  if (twice.length === total) return `2${side} on every ${noun}`;
  const first = `1${side} on ${shapingRowsText(once, total, noun)}`;
  return twice.length === 0 ? first : `${first}, and a second one on ${shapingRowsText(twice, total, noun)}`;
}

/** How the stitches on each side of a corner are made or lost, and how two of them are. */
function worksText({ turn, stitches, rows }: BandCorner, { leftDecrease, centredDecrease }: Terms): string {
  const twice = rows.some((row, i) => row === rows[i - 1]);
  const once = rows.some((row, i) => row !== rows[i - 1] && row !== rows[i + 1]);
  const [one, two] =
    turn > 0
      ? ['m1, work the marked stitch, m1', 'm1, work 1, m1, work the marked stitch, m1, work 1, m1']
      : stitches.length === 1
        ? [
            `work to 1 stitch before the marked one, ${centredDecrease}`,
            `work to 3 stitches before the marked one, k2tog, ${centredDecrease}, ${leftDecrease}`,
          ]
        : [
            `work to 1 stitch before the marked ones, k2tog, ${leftDecrease}`,
            `work to 3 stitches before the marked ones, k2tog twice, ${leftDecrease} twice`,
          ];
  if (!twice) return one;
  return once ? `${one}; for two, ${two}` : two;
}

function wrongSideText({ pickup }: PickupPlan, { rows }: BandCorner): string {
  return !pickup.joined && rows.some((row) => row % 2 === 1)
    ? ' Odd rows are worked with the wrong side facing: there make the same changes from behind, purlwise.'
    : '';
}

function cappedText({ pickup }: PickupPlan, { capped, perRow, turn }: BandCorner, noun: string): string {
  if (!capped) return '';
  const asked = ` The sum asks for ${plainNumber(perRow, 2)} on each side in every ${noun}`;
  if (turn < 0 && pickup.band.fabric === 'rib') return `${asked}; rib gives way for the rest.`;
  return `${asked}, more than is worked at one corner: there the band will not lie quite flat.`;
}

/** `All corners worked, there are 544 stitches: 496 + 4 × 12.` */
function afterText({ target }: PickupPlan, { after }: BandEdge, corners: readonly BandCorner[]): string {
  const changes = new Map<number, number>();
  for (const { turn, times } of corners) {
    const change = 2 * Math.sign(turn) * times;
    changes.set(change, (changes.get(change) ?? 0) + 1);
  }
  const sums = [...changes].map(([change, n]) => {
    const sign = change > 0 ? '+' : '−';
    return ` ${sign} ${n === 1 ? Math.abs(change) : `${n} × ${Math.abs(change)}`}`;
  });
  const done = corners.length === 1 ? 'With the corner worked' : 'With all corners worked';
  return `${done} there are ${stitchesText(after)}: ${target}${sums.join('')}.`;
}

function besideText({ beside, corners }: BandEdge): string[] {
  if (!beside) return [];
  const { count, multiple, whole, below, above } = beside;
  const single = corners.find(({ point }) => point)?.stitches.length === 1;
  if (whole) {
    if (!single) return [];
    return [`Beside the middle stitch there are ${count}, ${byMultiple(count, multiple, 0)}: the rib stays whole.`];
  }
  const where = single ? 'Beside the middle stitch there are' : 'The band has';
  return [
    `${where} ${stitchesText(count)}, not ${multipleText(multiple, 0)}: a total of ${below} or ${above} keeps the rib whole.`,
  ];
}

function freeText(plan: PickupPlan, free: BandEdge, { units, form }: Saying): string {
  const { freeMm, edgeMm, freeStitches, corners } = free;
  const off = freeMm / edgeMm - 1;
  const differs = `${percentText(Math.abs(off))} ${off < 0 ? 'shorter' : 'longer'}`;
  const takes = stitchesText(Math.round(freeStitches));
  if (form === 'short') return `Free edge, laid flat: ${lengthText(freeMm, units)}, ${differs}: ${takes}.`;
  const said =
    `Laid flat, the free edge of the band is ${lengthText(freeMm, units)} long, ${differs} than the edge it is ` +
    `worked from, and takes ${takes}.`;
  return `${said}${curveText(plan, free, corners.length > 0)}`;
}

/** What curves ask for: they have no place where it is worked, so it is spread. */
function curveText({ pickup }: PickupPlan, { curveStitches }: BandEdge, corners: boolean): string {
  const change = Math.round(curveStitches);
  if (change === 0) return '';
  const share = corners ? ' Besides the corners, its curves' : ' Its curves';
  if (change > 0)
    return `${share} ask for ${change} more: increase them spread evenly along the curves, a few at a time.`;
  const less = `${share} ask for ${-change} fewer`;
  return pickup.band.fabric === 'rib'
    ? `${less}: rib draws in by itself, so decrease a few of them or none.`
    : `${less}: decrease them spread evenly along the curves, a few at a time.`;
}

function tooDeepText(plan: PickupPlan, { rows }: BandEdge): string {
  const noun = rowOrRound(plan);
  return `${counted(rows, noun)} are too deep for this band to lie flat: its corners or curves would use up an edge. Work fewer ${noun}s, or let it stand up.`;
}
