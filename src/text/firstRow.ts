import type { FirstRow, Note, PickupPlan, RowGroup, RowWork } from '../pickup';
import { listed, stitchesText, times, timesMore } from './words';

/**
 * A first row or round in a knitter's words, empty when nothing changes. A row that is one repeat, with or without
 * something before and after it, is starred: `k3, *m1, k6; repeat from * 13 more times; m1, k3`. Several repeats stand
 * in brackets: `(k1, k2tog) 25 times, (k2, k2tog) 14 times`. k is a plain stitch, m1 an increase made between two
 * stitches (it uses none), k2tog two stitches worked as one. In a rib the plain stitches are `rib 10`, and each change
 * is worked as its column: m1 or m1p, k2tog or p2tog.
 */
export function firstRowText({ groups }: Pick<FirstRow, 'groups'>): string {
  const said = sayingOf(groups);
  const worksText = (group: RowGroup) => group.works.map(said).join(', ');
  const bracketed = (group: RowGroup) =>
    group.times === 1 ? worksText(group) : `(${worksText(group)}) ${times(group.times)}`;
  const repeats = groups.filter((group) => group.times > 1);
  if (repeats.length !== 1) return groups.map(bracketed).join(', ');
  const at = groups.findIndex((group) => group.times > 1);
  const repeat = groups[at]!;
  const before = groups.slice(0, at).map(worksText);
  const after = groups.slice(at + 1).map(worksText);
  const starred = `*${worksText(repeat)}; repeat from * ${timesMore(repeat.times - 1)}`;
  return [[...before, starred].join(', '), ...(after.length > 0 ? [after.join(', ')] : [])].join('; ');
}

/** The proof of a first row, counted out by its own works: `uses 131 stitches, leaves 92`. */
export function firstRowProof({ groups }: Pick<FirstRow, 'groups'>): string {
  const { uses, leaves } = countedOut(groups);
  return `uses ${stitchesText(uses)}, leaves ${leaves}`;
}

function countedOut(groups: readonly RowGroup[]): { uses: number; leaves: number } {
  let uses = 0;
  let leaves = 0;
  for (const group of groups) {
    for (const { work, count } of group.works) {
      uses += group.times * count * USES[work];
      leaves += group.times * count;
    }
  }
  return { uses, leaves };
}

/** Stitches that one work takes from the left needle; each leaves one on the right needle. */
const USES: Readonly<Record<RowWork['work'], number>> = { plain: 1, increase: 0, decrease: 2 };

/** How one work is said: plain stitches as those of a rib where the changes keep one. */
function sayingOf(groups: readonly RowGroup[]): (work: RowWork) => string {
  const ribbed = groups.some(({ works }) => works.some(({ as }) => as !== undefined));
  return ({ work, count, as }) => {
    if (work === 'plain') return ribbed ? `rib ${count}` : `k${count}`;
    const purled = as === 'purl';
    const name = work === 'increase' ? (purled ? 'm1p' : 'm1') : purled ? 'p2tog' : 'k2tog';
    return count === 1 ? name : `${name} ${times(count)}`;
  };
}

/**
 * A first row section by section, in the order it is worked, each with its proof: `section 1: k7, m1, k7 (uses 14
 * stitches, leaves 15)`, or `section 2: no change, 14`; empty where it is placed over the row as a whole.
 */
export function sectionRowsText({ parts = [] }: Pick<FirstRow, 'parts'>): string[] {
  return parts.map((row) => {
    const name = `section ${row.section}`;
    if (row.groups.length === 0) return `${name}: no change, ${row.to}`;
    return `${name}: ${firstRowText(row)} (${firstRowProof(row)})`;
  });
}

/** A first row in words with its proof, section by section where it is placed so. */
export function provedRow(row: FirstRow): string {
  const sections = sectionRowsText(row);
  const whole = firstRowProof(row);
  return sections.length > 0 ? `${sections.join('; ')}: in all it ${whole}` : `${firstRowText(row)} (${whole})`;
}

/**
 * How the changes of a first row are placed, as it could be kept: `spaced evenly`, or `section by section, in the rib
 * and clear of markers and seams`.
 */
export function placingText({ pickup, firstRow, notes }: Pick<PickupPlan, 'pickup' | 'firstRow' | 'notes'>): string {
  const wish = pickup.firstRow;
  const kept = (kind: Note['kind']) => notes.every((note) => note.kind !== kind);
  const ways = [
    ...(firstRow.parts ? ['section by section'] : []),
    ...(wish?.rib && kept('row-not-in-rib') ? ['in the rib'] : []),
    ...(wish?.clear && kept('row-not-clear') ? ['clear of markers and seams'] : []),
  ];
  return ways.length === 0 ? 'spaced evenly' : listed(ways);
}
