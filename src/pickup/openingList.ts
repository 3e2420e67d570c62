import type { Mm, Rows, Stitches } from '../units';
import type { OpeningKind, OpeningList, OpeningSort } from './plan';

const first = (kind: OpeningKind): OpeningSort => ({ kind, second: false, hole: false });

export const STITCH = first('stitch');
export const ROW = first('row');
export const LIVE = first('live');
export const HOLE: OpeningSort = { kind: 'stitch', second: true, hole: true };
export const PAIRS = {
  slipped: { first: first('chain'), second: { ...first('chain'), second: true } },
  garter: { first: first('ridge'), second: { ...first('ridge'), second: true } },
} as const;

/** A list that is being made. */
export interface Openings extends OpeningList {
  readonly sort: OpeningSort[];
  readonly row: Rows[];
  readonly x: Stitches[];
  readonly y: Rows[];
  readonly edgeAt: Mm[];
  readonly joinAt: Mm[];
}

export function noOpenings(): Openings {
  return { sort: [], row: [], x: [], y: [], edgeAt: [], joinAt: [] };
}

/** These openings of a list, in this order. */
export function pickOut(list: OpeningList, indices: readonly number[]): Openings {
  const of = <T>(field: readonly T[]): T[] => indices.map((i) => field[i]!);
  return {
    sort: of(list.sort),
    row: of(list.row),
    x: of(list.x),
    y: of(list.y),
    edgeAt: of(list.edgeAt),
    joinAt: of(list.joinAt),
  };
}

/** One list of several, in a row. */
export function joinUp(lists: readonly Openings[]): Openings {
  if (lists.length === 1) return lists[0]!;
  const of = <T>(field: (one: Openings) => T[]): T[] => new Array<T>().concat(...lists.map(field));
  return {
    sort: of((one) => one.sort),
    row: of((one) => one.row),
    x: of((one) => one.x),
    y: of((one) => one.y),
    edgeAt: of((one) => one.edgeAt),
    joinAt: of((one) => one.joinAt),
  };
}

/** Turns a list round in its place. */
export function reverse(list: Openings): Openings {
  for (const field of [list.sort, list.row, list.x, list.y, list.edgeAt, list.joinAt]) field.reverse();
  return list;
}

/** What openings are counted in: rows, chains or ridges where there are any, else stitches. */
export function unitOf({ sort }: OpeningList): OpeningKind {
  return (sort.find(({ kind }) => kind !== 'stitch') ?? sort[0])?.kind ?? 'row';
}

/** The indices of the openings of these sorts. */
export function indicesOf({ sort }: OpeningList, wanted: (sort: OpeningSort) => boolean): number[] {
  const found: number[] = [];
  for (let i = 0; i < sort.length; i++) if (wanted(sort[i]!)) found.push(i);
  return found;
}
