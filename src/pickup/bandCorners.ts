import type { Band } from '../piece';
import { roundHalfDown, rowHeight, stitchesPerMm, type Gauge, type Mm } from '../units';
import type { BandCorner, BandEdge, RibBeside } from './bandEdge';
import { evenMarks } from './spread';
import type { WorkedStretch } from './stretches';
import { meetingOf, SHARPEST, turningWithin, type Meeting } from './turns';

/**
 * Below this angle, in radians, two stretches go on as one curve (40 degrees, common practice: a border has corners on
 * an octagon, which turns by 45, and none where a neckline of a few straight stretches bends).
 */
const CORNER = (40 * Math.PI) / 180;
/** The most stitches made or lost on one side of a corner in a row. */
const MOST = 2;
/** At the point of a V in rib a centred double decrease takes one on each side, and the rib gives way for the rest. */
const MOST_IN_RIB = 1;
/** A stretch of no more stitches than this between two inner corners is the middle of one. */
const MIDDLE = 2;

/** What the free edge of a band is reckoned from; lists have an item for each stretch, in working order. */
export interface BandGround {
  readonly band: Band;
  readonly joined: boolean;
  readonly gauge: Gauge | null;
  readonly stretches: readonly WorkedStretch[];
  /** The lengths that the plan counts by, mm; null without a gauge. */
  readonly lengths: readonly (Mm | null)[];
  readonly counts: readonly number[];
  /** Stitches that the band is worked on. */
  readonly target: number;
}

/**
 * The free edge of a band as it lies flat, and what is worked at its corners. Null without a depth, a gauge or a length.
 *
 * A parallel at distance d outside a line is longer by d times the angle turned along a curve, counted below 0 where the
 * fabric lies outside the bend, as round a neckline (a full circle loses 2 pi d), and by 2 d tan(a / 2) at a corner that
 * turns by a (Farouki, Pythagorean-Hodograph Curves, 8.2; the kite between two straight lines and their parallels). So
 * a corner takes tan(a / 2) * row height / stitch width stitches on each side in each row, draw-in taken off as from the
 * edge itself. In garter, where two rows are as high as a stitch is wide, a right angle takes one on each side in every
 * second row (http://stitchtherapyknitalong.blogspot.com/2013/03/josephines-squares-adding-border.html).
 */
export function bandEdge(ground: BandGround): BandEdge | null {
  const { band, gauge, stretches, lengths, counts, target } = ground;
  const { rows } = band;
  if (rows === undefined || rows < 1 || gauge === null) return null;
  const edgeMm = lengths.reduce<number | null>((sum, mm) => (sum === null || mm === null ? null : sum + mm), 0);
  if (edgeMm === null) return null;
  const perMm = stitchesPerMm(gauge) * (1 - band.drawIn / 100);
  const height = rowHeight(gauge);
  const depthMm = rows * height;
  let curve = stretches.reduce((sum, one) => sum + turningWithin(one), 0);
  const corners: BandCorner[] = [];
  let cut = 0;
  for (const { turn, seam, between } of meetings(ground)) {
    if (Math.abs(turn) < CORNER) {
      curve += turn;
      continue;
    }
    const legs = Math.tan(turn / 2);
    cut += legs;
    const perRow = Math.abs(legs) * height * perMm;
    const point = turn < 0 && between.every((i) => !isLevel(stretches[i]!) && !isUpright(stretches[i]!));
    const most = rows * (turn < 0 && band.fabric === 'rib' ? MOST_IN_RIB : MOST);
    const asked = roundHalfDown(perRow * rows);
    const times = Math.min(asked, most);
    const stitches = cornerStitches(ground, between, point, corners);
    const capped = asked > most;
    corners.push({ between, seam, turn, stitches, point, perRow, times, capped, rows: shapingRows(times, rows) });
  }
  const freeMm = edgeMm + depthMm * (curve + 2 * cut);
  const after = corners.reduce((sum, { turn, times }) => sum + 2 * Math.sign(turn) * times, target);
  const tooDeep = freeMm <= 0 || after < 1 || usedUp(counts, corners);
  const curveStitches = depthMm * curve * perMm;
  const freeStitches = freeMm * perMm;
  const beside = ribBeside(ground, corners);
  return { rows, depthMm, edgeMm, freeMm, freeStitches, curveStitches, after, tooDeep, corners, beside };
}

/**
 * In which of the rows a stitch is made or lost on one side: on every second row, beginning with the second, as long as
 * these are enough (so flat bands are shaped with the right side facing), else on all of them, as evenly as whole
 * numbers allow (Bresenham). More than one to a row comes again in the list.
 *
 * @param times whole, 0 or more
 * @param rows whole, 1 or more
 */
export function shapingRows(times: number, rows: number): number[] {
  const second = Math.floor(rows / 2);
  if (times <= second) {
    return times === 0 ? [] : evenMarks(times, second).flatMap((mark, i) => (mark ? [2 * i + 2] : []));
  }
  const each = Math.floor(times / rows);
  return evenMarks(times - each * rows, rows).flatMap((mark, i) =>
    Array.from({ length: each + (mark ? 1 : 0) }, () => i + 1),
  );
}

interface Place extends Meeting {
  readonly between: readonly [number, number];
}

/** Where stretches meet, from the first to the last; two inner corners with a stitch or two between them are one. */
function meetings({ stretches, joined, counts }: BandGround): Place[] {
  const n = stretches.length;
  const places = stretches.flatMap((one, i): Place[] => {
    if (i === n - 1 && !joined) return [];
    const to = (i + 1) % n;
    const meeting = meetingOf(one, stretches[to]!);
    return meeting ? [{ ...meeting, between: [i, to] }] : [];
  });
  const merged: Place[] = [];
  for (const place of places) {
    const last = merged.at(-1);
    const middle = place.between[0];
    const small = isLevel(stretches[middle]!) && counts[middle]! <= MIDDLE;
    const both = last?.between[1] === middle ? last.turn + place.turn : 0;
    if (last && small && Math.max(last.turn, place.turn) < 0 && both > -SHARPEST) {
      merged[merged.length - 1] = {
        turn: both,
        seam: last.seam || place.seam,
        between: [last.between[0], place.between[1]],
      };
    } else merged.push(place);
  }
  return merged;
}

/**
 * The corner stitch belongs to one edge: to the level one where the other is not, as the last stitch bound off does
 * (http://wildflowerwoolknits.blogspot.com/2009/07/everything-is-always-right.html), else to the one that ends there. A
 * V has one stitch at its middle where both its sides have an odd number together, and two where they have an even one
 * (zanotowane.pl/713/7790, a scanned book on knitting).
 */
function cornerStitches(
  { stretches, counts }: BandGround,
  [a, b]: readonly [number, number],
  point: boolean,
  known: readonly BandCorner[],
): number[] {
  const before = (i: number) => counts.slice(0, i).reduce((sum, count) => sum + count, 0);
  const total = before(counts.length);
  const at = (n: number) => ((n - 1 + total) % total) + 1;
  const last = before(a) + counts[a]!;
  const [between, other] = [(before(b) - last + total) % total, counts[b]!];
  if (between > 0) return Array.from({ length: between }, (_, i) => at(last + 1 + i));
  const apart = counts[a]! - other;
  if (point && a !== b) {
    if (apart % 2 === 0) return [at(last), at(last + 1)];
    return [apart < 0 ? at(last + 1) : at(last)];
  }
  const taken = (n: number) => known.some(({ stitches }) => stitches.includes(n));
  const choice = isLevel(stretches[b]!) && !isLevel(stretches[a]!) ? [last + 1, last] : [last, last + 1];
  const free = choice.map(at).find((n) => !taken(n));
  return [free ?? at(choice[0]!)];
}

/** Whether the corners take more from an edge than it has, its corner stitches left standing. */
function usedUp(counts: readonly number[], corners: readonly BandCorner[]): boolean {
  return counts.some((count, i) => {
    const lost = corners.reduce((sum, { between, turn, times }) => {
      return turn < 0 ? sum + between.filter((at) => at === i).length * times : sum;
    }, 0);
    return lost > 0 && lost >= count;
  });
}

/**
 * What lies beside the middle of a V in a rib worked in the round: without the one stitch there, whole repeats; two
 * middle stitches are a knit column of the rib (common practice).
 */
function ribBeside({ band, joined, target }: BandGround, corners: readonly BandCorner[]): RibBeside | null {
  const { multiple } = band;
  const middle = corners.find(({ point }) => point)?.stitches.length ?? 0;
  if (!joined || multiple < 2 || band.fabric !== 'rib' || middle === 0) return null;
  const own = middle === 1 ? 1 : 0;
  const count = target - own;
  const below = Math.floor(count / multiple) * multiple;
  return { count, multiple, whole: below === count, below: below + own, above: below + multiple + own };
}

function isLevel({ measured }: WorkedStretch): boolean {
  return measured.shape === 'horizontal';
}

function isUpright({ measured }: WorkedStretch): boolean {
  return measured.shape === 'vertical';
}
