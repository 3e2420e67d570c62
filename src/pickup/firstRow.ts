import type { FirstRow, RowGroup, RowWork } from './plan';
import { PlanError } from './problems';
import { evenParts } from './spread';

/** More groups than this can't be kept in the head: longer and shorter stretches are then worked apart. */
const MOST_GROUPS = 6;

/**
 * The first row or round that brings `from` stitches to `to`, its increases or decreases spaced as evenly as whole
 * numbers allow. In the round every stretch of plain stitches is followed by one; flat, half a stretch comes before
 * the first and half after the last. A decrease works two stitches together, an increase is made between two.
 *
 * @throws PlanError when there are more increases than stitches, or fewer than two stitches to each decrease
 */
export function firstRow(from: number, to: number, joined: boolean): FirstRow {
  if (from === to) return { from, to, joined, groups: [] };
  const change = to > from ? 'increase' : 'decrease';
  const times = Math.abs(to - from);
  if (change === 'increase' && times > from) throw new PlanError({ kind: 'too-many-increases', from, to });
  if (change === 'decrease' && 2 * times > from) throw new PlanError({ kind: 'too-many-decreases', from, to });
  const plain = change === 'increase' ? from : from - 2 * times;
  const even = groupsOf(evenParts(plain, times, 'even'), change, joined);
  const groups = even.length <= MOST_GROUPS ? even : groupsOf(evenParts(plain, times, 'grouped'), change, joined);
  return { from, to, joined, groups };
}

function groupsOf(gaps: readonly number[], change: 'increase' | 'decrease', joined: boolean): RowGroup[] {
  if (joined) {
    const units = gaps.map((gap) => unit(gap, change, 'after'));
    return merged(units);
  }
  // One gap is cut in two for the ends: one that halves exactly where there is one.
  const cut = cutGap(gaps);
  const gap = gaps[cut] ?? 0;
  const inner = [...gaps.slice(0, cut), ...gaps.slice(cut + 1)];
  // Before an increase the larger half: a stitch is made between two, or after the last, never before the first.
  const before = change === 'increase' ? Math.ceil(gap / 2) : Math.floor(gap / 2);
  const start: RowWork[] = plainWork(before);
  const end: RowWork[] = [{ work: change, count: 1 }, ...plainWork(gap - before)];
  return merged([start, ...inner.map((size) => unit(size, change, 'before')), end]);
}

/** The first longer gap that is even, else the first shorter one that is, else the first. */
function cutGap(gaps: readonly number[]): number {
  const longest = Math.max(...gaps);
  for (const size of [longest, longest - 1]) {
    const at = gaps.indexOf(size);
    if (at >= 0 && size % 2 === 0) return at;
  }
  return 0;
}

function plainWork(count: number): RowWork[] {
  return count > 0 ? [{ work: 'plain', count }] : [];
}

function unit(gap: number, change: 'increase' | 'decrease', place: 'before' | 'after'): RowWork[] {
  const works: RowWork[] = [{ work: change, count: 1 }];
  return place === 'before' ? [...works, ...plainWork(gap)] : [...plainWork(gap), ...works];
}

function merged(units: readonly (readonly RowWork[])[]): RowGroup[] {
  const groups: RowGroup[] = [];
  for (const works of units) {
    if (works.length === 0) continue;
    const last = groups.at(-1);
    if (last && JSON.stringify(last.works) === JSON.stringify(works)) {
      groups[groups.length - 1] = { works, times: last.times + 1 };
    } else groups.push({ works, times: 1 });
  }
  return groups;
}

/**
 * The first row that works the extra stitches of step holes together with the stitch before them, so that the holes
 * close.
 *
 * @param holes numbers (from 1) of the stitches picked up in holes, growing
 * @returns null without holes, or where too many of them lie side by side for each to take a stitch of its own along
 */
export function closingRow(from: number, holes: readonly number[], joined: boolean): FirstRow | null {
  const works: RowWork[] = [];
  let done = 0;
  for (const hole of holes) {
    const first = Math.max(hole - 1, done + 1);
    works.push(...plainWork(first - 1 - done), { work: 'decrease', count: 1 });
    done = first + 1;
  }
  if (holes.length === 0 || done > from) return null;
  works.push(...plainWork(from - done));
  return { from, to: from - holes.length, joined, groups: [{ times: 1, works }] };
}

/** Counts a first row out by its own works: the stitches it uses and the stitches it leaves. */
export function countOut(groups: readonly RowGroup[]): { readonly uses: number; readonly leaves: number } {
  let uses = 0;
  let leaves = 0;
  for (const { times, works } of groups) {
    for (const { work, count } of works) {
      uses += times * count * (work === 'plain' ? 1 : work === 'decrease' ? 2 : 0);
      leaves += times * count;
    }
  }
  return { uses, leaves };
}
