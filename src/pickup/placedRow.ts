import { firstRow } from './firstRow';
import type { FirstRow, RowGroup, RowWork } from './plan';
import { columnOf, type Rib } from './rib';

/** How the increases or decreases of a first row are placed. Counts are of stitches in the order the row is worked. */
export interface RowWish {
  /** How many stitches lie before each marker and seam. */
  readonly marks: readonly number[];
  /** Keep clear of them: no increase stands at one, no decrease takes a stitch from either side of one. */
  readonly clear: boolean;
  /** Keep this rib: increases become purl columns, decreases are worked as the column they leave. */
  readonly rib: Rib | null;
  /** Stretches that are put right each by itself, from and to how many stitches; null for the row as a whole. */
  readonly parts: readonly { readonly from: number; readonly to: number }[] | null;
}

/** A first row with what it kept of the wish, and its stretches where they were put right each by itself. */
export interface PlacedRow extends Omit<FirstRow, 'parts'> {
  readonly keptClear: boolean;
  readonly keptRib: boolean;
  readonly parts: readonly FirstRow[];
}

/** One increase or decrease: so many stitches are worked off the left needle before it. */
interface Change {
  readonly before: number;
  readonly part: number;
}

/** A change is moved by no more than this, in stitches, or by two repeats of a rib. */
const MOST_MOVED = 8;
/** What it costs a decrease to stand right beside a mark: a little more than to move by one stitch. */
const BESIDE = 1.5;
/** Longest repeat that is looked for, in changes. */
const LONGEST_REPEAT = 4;

/**
 * The first row that brings `from` stitches to `to`, spaced as firstRow spaces it and then moved where the wish asks
 * for it: by the least sum of squared moves, exactly, by dynamic programming. What can't be kept (too many changes in
 * too little room) is let go, the rib last, and the row says so. The band's first row worked flat is a wrong-side row.
 *
 * @throws PlanError as firstRow does, for the row or any of its stretches
 */
export function placedRow(from: number, to: number, joined: boolean, wish: RowWish): PlacedRow {
  const parts = wish.parts ?? [{ from, to }];
  const rows = parts.map((part) => firstRow(part.from, part.to, wish.parts ? false : joined));
  const kind = to >= from ? 'increase' : 'decrease';
  // Stretches that change in both directions are placed as they are: each keeps to its own.
  const oneWay = rows.every((row) => row.to === row.from || row.to > row.from === to > from);
  const starts = sumsBefore(parts.map((part) => part.from));
  const changes = rows.flatMap((row, part) => changesOf(row, starts[part]!).map((before) => ({ before, part })));
  const ends = starts.map((start, i) => start + parts[i]!.from);
  for (const rule of rulesOf(wish, oneWay)) {
    const moved = movedChanges(changes, { from, to, joined, kind, starts, ends, marks: wish.marks, ...rule });
    if (moved) return builtRow(moved, { from, to, joined, kind, parts, starts, rib: rule.rib, wish });
  }
  return { ...wholeRow(rows, from, to, joined), keptClear: false, keptRib: false, parts: wish.parts ? rows : [] };
}

interface Rule {
  readonly clear: boolean;
  readonly rib: Rib | null;
}

function rulesOf({ clear, rib }: RowWish, oneWay: boolean): Rule[] {
  if (!oneWay) return [];
  return [
    { clear, rib },
    ...(clear && rib ? [{ clear: false, rib }] : []),
    ...(rib ? [{ clear, rib: null }] : []),
    { clear: false, rib: null },
  ];
}

function sumsBefore(values: readonly number[]): number[] {
  let sum = 0;
  return values.map((value) => (sum += value) - value);
}

function changesOf({ groups }: FirstRow, start: number): number[] {
  const found: number[] = [];
  let used = start;
  for (const { times, works } of groups) {
    for (let i = 0; i < times; i++) {
      for (const { work, count } of works) {
        if (work === 'plain') used += count;
        for (let k = 0; work !== 'plain' && k < count; k++) {
          found.push(used);
          used += work === 'decrease' ? 2 : 0;
        }
      }
    }
  }
  return found;
}

interface Ground extends Rule {
  readonly from: number;
  readonly to: number;
  readonly joined: boolean;
  readonly kind: 'increase' | 'decrease';
  readonly starts: readonly number[];
  readonly ends: readonly number[];
  readonly marks: readonly number[];
}

/** The changes at their new places, or null where there is no room for all of them. */
function movedChanges(changes: readonly Change[], ground: Ground): Change[] | null {
  if (!ground.clear && !ground.rib) return [...changes];
  const reach = Math.max(MOST_MOVED, ground.rib ? 2 * (ground.rib.knit + ground.rib.purl) : 0);
  const marks = marksOf(ground.marks, ground.from, ground.joined);
  const apart = ground.kind === 'decrease' ? 2 : 1;
  const width = 2 * reach + 1;
  const cost = changes.map(() => new Float64Array(width).fill(Infinity));
  const back = changes.map(() => new Int16Array(width).fill(-1));
  changes.forEach((change, j) => {
    const previous = changes[j - 1];
    let [best, bestAt, seen] = [j === 0 ? 0 : Infinity, -1, 0];
    for (let k = 0; k < width; k++) {
      const place = change.before + k - reach;
      // The cheapest place of the change before this one that leaves room.
      for (; previous && seen < width && previous.before + seen - reach <= place - apart; seen++) {
        if (cost[j - 1]![seen]! < best) [best, bestAt] = [cost[j - 1]![seen]!, seen];
      }
      const own = costAt(place, k - reach, change.part, j, marks, ground);
      cost[j]![k] = best + own;
      back[j]![k] = bestAt;
    }
  });
  const last = cost.at(-1);
  if (!last) return [];
  let at = last.indexOf(Math.min(...last));
  if (!Number.isFinite(last[at])) return null;
  const moved: Change[] = [];
  for (let j = changes.length - 1; j >= 0; j--) {
    moved.push({ before: changes[j]!.before + at - reach, part: changes[j]!.part });
    at = back[j]![at]!;
  }
  return moved.reverse();
}

function costAt(
  place: number,
  by: number,
  part: number,
  j: number,
  marks: ReadonlySet<number>,
  ground: Ground,
): number {
  const { kind, starts, ends, clear, rib, to, joined } = ground;
  const [start, end] = [starts[part]!, ends[part]!];
  const increase = kind === 'increase';
  // An increase is made between two stitches or after the last, never before the first.
  if (place < start + (increase ? 1 : 0) || place + (increase ? 0 : 2) > end) return Infinity;
  let cost = by * by;
  if (clear) {
    if (increase ? marks.has(place) : marks.has(place + 1)) return Infinity;
    if (!increase && (marks.has(place) || marks.has(place + 2))) cost += BESIDE;
  }
  if (rib && increase && columnAt(rib, place + j, to, joined) !== 'purl') return Infinity;
  return cost;
}

/** The column, as the right side shows it, of a stitch of the finished row in the order it is worked. */
function columnAt(rib: Rib, at: number, count: number, joined: boolean): 'knit' | 'purl' {
  return columnOf(rib, joined ? at : count - 1 - at, count, joined);
}

interface Building {
  readonly from: number;
  readonly to: number;
  readonly joined: boolean;
  readonly kind: 'increase' | 'decrease';
  readonly parts: readonly { readonly from: number; readonly to: number }[];
  readonly starts: readonly number[];
  readonly rib: Rib | null;
  readonly wish: RowWish;
}

function builtRow(changes: readonly Change[], build: Building): PlacedRow {
  const { from, to, joined, kind, parts, starts, rib, wish } = build;
  let done = 0;
  const rows = parts.map((part, p): FirstRow => {
    const units: RowWork[][] = [];
    let used = starts[p]!;
    for (const { before } of changes.filter((change) => change.part === p)) {
      const left = kind === 'increase' ? before + done : before - done;
      const column = rib ? columnAt(rib, left, to, joined) : null;
      units.push([
        ...plain(before - used),
        { work: kind, count: 1, ...(column ? { as: workedAs(column, joined) } : {}) },
      ]);
      used = before + (kind === 'decrease' ? 2 : 0);
      done += 1;
    }
    const rest = plain(starts[p]! + part.from - used);
    const groups = [...repeated(units), ...(rest.length > 0 ? [{ times: 1, works: rest }] : [])];
    const changed = part.from !== part.to;
    return { from: part.from, to: part.to, joined: wish.parts ? false : joined, groups: changed ? groups : [] };
  });
  const [keptClear, keptRib] = [isClear(changes, build), rib !== null];
  return { ...wholeRow(rows, from, to, joined), keptClear, keptRib, parts: wish.parts ? rows : [] };
}

/** The stretches end to end; one without a change is worked plain. */
function wholeRow(rows: readonly FirstRow[], from: number, to: number, joined: boolean): FirstRow {
  const changes = rows.some(({ groups }) => groups.length > 0);
  const groups = rows.flatMap((row) => (row.groups.length > 0 ? row.groups : [{ times: 1, works: plain(row.from) }]));
  return { from, to, joined, groups: changes ? groups : [] };
}

/** The beginning of a round is one too. */
function marksOf(marks: readonly number[], from: number, joined: boolean): ReadonlySet<number> {
  return new Set(joined ? [...marks, 0, from] : marks);
}

function isClear(changes: readonly Change[], { wish, kind, from, joined }: Building): boolean {
  const marks = marksOf(wish.marks, from, joined);
  return changes.every(({ before }) => !marks.has(kind === 'increase' ? before : before + 1));
}

/** A purl column is knitted on the wrong side, and the other way round. */
function workedAs(column: 'knit' | 'purl', joined: boolean): 'knit' | 'purl' {
  return joined ? column : column === 'knit' ? 'purl' : 'knit';
}

function plain(count: number): RowWork[] {
  return count > 0 ? [{ work: 'plain', count }] : [];
}

/** Units one after the other as groups: at each place the repeat of one to four units that covers most. */
function repeated(units: readonly (readonly RowWork[])[]): RowGroup[] {
  const keys = units.map((unit) => JSON.stringify(unit));
  const groups: RowGroup[] = [];
  for (let i = 0; i < units.length;) {
    let [period, times] = [1, 1];
    for (let length = 1; length <= LONGEST_REPEAT; length++) {
      let n = 1;
      while (keys.slice(i, i + length).every((key, k) => keys[i + n * length + k] === key)) n += 1;
      if (n > 1 && n * length > period * times) [period, times] = [length, n];
    }
    groups.push({ times, works: units.slice(i, i + period).flat() });
    i += period * times;
  }
  return groups;
}
