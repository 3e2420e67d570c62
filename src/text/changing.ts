/** The words of a piece that is to be longer or shorter: what it does to the pattern's counts. */
import type { Units } from '../piece';
import type { Both, ChangedEdge, ChangedPickup, MovedEdge, StatedChange } from '../pickup';
import type { Mm } from '../units';
import { gapsText } from './buttonholes';
import type { EdgeNames } from './edgeName';
import { firstRowText } from './firstRow';
import { rowOrRound } from './rowOrRound';
import { fixedNumber, lengthText, plainNumber, wantedText } from './numbers';
import { tallyText } from './sections';
import { listed, rowsText } from './words';

export const CHANGING = {
  edge: 'If this edge is',
  way: 'Longer or shorter',
  ways: { longer: 'longer by', shorter: 'shorter by' },
  amount: 'By how much',
  units: 'Rows or length',
  rows: 'rows',
  what: 'Count',
  before: 'Before',
  after: 'After',
  make: 'Make this change',
  nothing: 'No pick-up changes.',
  ask: 'Say by how much, and the counts before and after stand here.',
  keeps: "The pattern's count keeps the ease that it has now.",
} as const;

/** `14 rows more, 126 in all: 5.0 cm.` and how a length became rows: `5.2 cm is 14.6 rows, so 15.` */
export function grownText(
  { rows, exactRows }: { readonly rows: number; readonly exactRows: number },
  rowMm: Mm | null,
  units: Units,
): string {
  const length = rowMm === null ? '' : `, ${lengthText(Math.abs(rows) * rowMm, units)}`;
  const said = `${rowsText(Math.abs(rows))} ${rows > 0 ? 'more' : 'fewer'}${length}.`;
  if (rowMm === null || Math.abs(exactRows - rows) < 1e-9) return said;
  const exact = Math.abs(exactRows);
  return `${lengthText(exact * rowMm, units)} is ${plainNumber(exact)} rows, so ${said}`;
}

/** The edges that change with the one that was asked for: `With it change: Front, left side, 112 to 126 rows.` */
export function alsoMovedText(moved: readonly MovedEdge[], names: EdgeNames, units: Units): string {
  const one = ({ edge, rows, lengthMm }: MovedEdge) =>
    rows.before !== rows.after || lengthMm.before === null || lengthMm.after === null
      ? `${names(edge)}, ${rows.before} to ${rowsText(rows.after)}`
      : `${names(edge)}, ${lengthText(lengthMm.before, units)} to ${lengthText(lengthMm.after, units)}`;
  return moved.length === 0 ? 'No other edge changes.' : `With it change: ${listed(moved.map(one), 'and')}.`;
}

/** Why an edge can't be made longer or shorter by that much, and what would do. */
export function notLengthenedText(
  refusal: { readonly why: 'no-edge' | 'no-rows' | 'no-gauge' | 'no-row' | 'too-short'; readonly most?: number },
  { gauge }: { readonly gauge: string },
): string {
  switch (refusal.why) {
    case 'no-edge':
      return 'That edge is not there any more: choose another.';
    case 'no-rows':
      return 'That edge has no rows: set its stitches in the table of the outline.';
    case 'no-gauge':
      return `The piece has no ${gauge}, so a length can't be turned into rows: give rows.`;
    case 'no-row':
      return 'That is less than one row, so nothing changes: give more.';
    case 'too-short':
      return `At most ${rowsText(refusal.most ?? 0)} can be taken out here without running into other shaping: give fewer, or redraw the outline.`;
  }
}

/** A line of the table before and after. */
export interface ChangeRow {
  readonly label: string;
  readonly before: string;
  readonly after: string;
}

/** All of a pick-up that a change of the piece touches: its edges, its total, and what follows from that. */
export function changeRows(changed: ChangedPickup, names: EdgeNames): ChangeRow[] {
  const { before, after, edges, pattern } = changed;
  const row = (label: string, of: (plan: ChangedPickup['before']) => string): ChangeRow => ({
    label,
    before: of(before),
    after: of(after),
  });
  const firstRow = row(`First ${rowOrRound(before)}`, ({ firstRow: { from, to, groups } }) =>
    from === to ? 'no change' : `${from} to ${to}: ${firstRowText({ groups })}`,
  );
  const more = [
    firstRow,
    row('Sections', ({ sections }) => (sections.length < 2 ? '' : tallyText(sections.map(({ count }) => count)))),
    row('Buttonholes', ({ holes }) => (holes ? `${holes.holes.length}, ${gapsText(holes)}` : '')),
  ].filter((one) => one.before !== one.after);
  return [
    ...edges.flatMap((edge) => edgeRows(edge, names(edge.edge))),
    row('In all', ({ target }) => `${target}`),
    ...patternRow('In all', pattern),
    ...more,
  ];
}

function edgeRows({ count, rows, wanted, pattern }: ChangedEdge, title: string): ChangeRow[] {
  const told = (at: keyof Both<unknown>) =>
    `${count[at]} on ${rowsText(rows[at])}${wanted[at] === null ? '' : ` (${fixedNumber(wanted[at])} wanted)`}`;
  return [{ label: title, before: told('before'), after: told('after') }, ...patternRow(title, pattern)];
}

function patternRow(title: string, pattern: StatedChange | null): ChangeRow[] {
  if (!pattern) return [];
  return [{ label: `${title}, by the pattern`, before: `${pattern.stated}`, after: wantedText(pattern.becomes) }];
}
