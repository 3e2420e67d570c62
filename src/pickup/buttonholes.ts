import type { Buttonholes, Pickup } from '../piece';
import type { Mm } from '../units';
import type { Hole, HoleRow } from './holeRow';
import type { Note } from './plan';
import { ribOf } from './rib';
import { movedIntoPurl } from './ribHoles';
import type { UsedPlaces } from './sections';
import { evenMarks } from './spread';

/**
 * Stitches between the buttonholes of a band of `total` stitches: what is left when the holes and both ends are taken
 * off, divided by one less than the holes (http://knittingrobin.blogspot.com/2012/08). The gaps differ by one at most
 * and mirror each other, the longer ones towards the middle, unless an odd stitch over an even number of gaps forbids
 * it: that one then lies in the first half. One hole leaves no gap, and what is left goes behind it.
 * Null where a gap would have no stitch.
 */
export function gapsBetween(total: number, { holes, stitches, from, to }: Buttonholes): number[] | null {
  const left = total - from - to - holes * stitches;
  const parts = holes - 1;
  if (left < parts) return null;
  if (parts === 0) return [];
  const least = Math.floor(left / parts);
  const longer = left - least * parts;
  const half = Math.floor(parts / 2);
  const middle = parts % 2 === 1 && longer % 2 === 1 ? 1 : 0;
  const each = Math.floor((longer - middle) / 2);
  const outwards = half === 0 ? [] : evenMarks(each, half);
  const second = outwards.map((mark) => least + (mark ? 1 : 0));
  const first = [...second].reverse();
  // The odd one takes the place nearest the middle that is still free.
  if (2 * each + middle < longer) first[first.lastIndexOf(least)]! += 1;
  return [...first, ...(parts % 2 === 1 ? [least + middle] : []), ...second];
}

/** Stitches in all of a band with these buttonholes and `gap` stitches between each two. */
export function stitchesFor({ holes, stitches, from, to }: Buttonholes, gap: number): number {
  return from + to + holes * stitches + (holes - 1) * gap;
}

/** Both ends where the gaps are `gap` stitches, alike or the last one a stitch longer; null where one has no stitch. */
export function endsFor(
  total: number,
  { holes, stitches }: Pick<Buttonholes, 'holes' | 'stitches'>,
  gap: number,
): Pick<Buttonholes, 'from' | 'to'> | null {
  const left = total - holes * stitches - (holes - 1) * gap;
  const from = Math.floor(left / 2);
  return from < 1 ? null : { from, to: left - from };
}

/** The most buttonholes with at least `gap` stitches between them; null where there is no room for one. */
export function holesFor(
  total: number,
  { stitches, from, to }: Pick<Buttonholes, 'stitches' | 'from' | 'to'>,
  gap: number,
): number | null {
  const holes = Math.floor((total - from - to + gap) / (stitches + gap));
  return holes < 1 ? null : holes;
}

/**
 * The buttonholes of a pick-up: counted on the stitches that the first row leaves, moved into the purl columns of the
 * rib where that is asked for, and placed along the join between the points that those stand on.
 */
export function holeRow(
  { buttonholes: wish, band, joined }: Pick<Pickup, 'buttonholes' | 'band' | 'joined'>,
  total: number,
  used: UsedPlaces,
): { readonly holes: HoleRow | null; readonly notes: readonly Note[] } {
  if (!wish) return { holes: null, notes: [] };
  const even = gapsBetween(total, wish);
  if (!even) {
    const note = { kind: 'buttonholes-do-not-fit', holes: wish.holes, needed: stitchesFor(wish, 1), total } as const;
    return { holes: null, notes: [note] };
  }
  const { stitches, from } = wish;
  const rib = wish.rib ? ribOf(band) : null;
  const evenly = [...even, 0].map((_, i) => even.slice(0, i).reduce((sum, gap) => sum + gap + stitches, from));
  const moved = rib && movedIntoPurl(evenly, stitches, { rib, total, joined });
  const firsts = moved ?? evenly;
  const along = (stitch: number) => placeOn(used, (stitch * used.length) / total);
  const holes = firsts.map((start): Hole => {
    const end = start + stitches;
    const middle = (start + end) / 2;
    return { first: start + 1, last: end, middle, alongMm: along(middle), fromMm: along(start), toMm: along(end) };
  });
  const gaps = holes.slice(1).map(({ first }, i) => first - 1 - holes[i]!.last);
  const row = { stitches, before: holes[0]!.first - 1, after: total - holes.at(-1)!.last, gaps, holes };
  const notes: Note[] = wish.rib && !moved ? [{ kind: 'buttonholes-not-in-rib', why: rib ? 'no-room' : 'no-rib' }] : [];
  return { holes: { ...row, rib: moved ? rib : null }, notes };
}

/** Where the end of the first `count` stitches lies along the join: point n stands in the middle of its stitch. */
function placeOn(used: UsedPlaces, count: number): Mm {
  const at = Math.min(Math.max(count - 0.5, 0), used.length - 1);
  const low = Math.floor(at);
  const before = used.at(low) ?? 0;
  return before + (at - low) * ((used.at(low + 1) ?? before) - before);
}
