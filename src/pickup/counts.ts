import type { Pickup } from '../piece';
import { roundHalfDown } from '../units';
import { apportion, type Share } from './apportion';
import type { Note } from './plan';
import { fittingCounts, fitsMultiple, nearestFitting } from './total';
import type { WorkedStretch } from './stretches';
import type { Want } from './wants';

/** How many stitches each stretch gets, and what the first row has to reach. */
export interface Counts {
  readonly counts: readonly number[];
  readonly wanted: number;
  readonly target: number;
  readonly picked: number;
  readonly notes: readonly Note[];
}

/**
 * Settles the counts of a pick-up: fixed ones stay, the flexible ones share the rest of the total by least distortion,
 * twins equal. What cannot be picked up is left to the first row, and a note says why.
 */
export function countsOf(
  pickup: Pickup,
  stretches: readonly WorkedStretch[],
  wants: readonly Want[],
  twins: readonly number[],
): Counts {
  const notes: Note[] = [];
  const sum = wants.reduce((total, want) => total + want.asked, 0);
  // A bare strip wants what is demanded of it.
  const wanted = pickup.target !== null && wants.some((want) => want.bare) ? pickup.target : sum;
  const free = pickup.target === null && pickup.band.multiple === 1;
  const parts = pickup.sections?.counts === 'same' && pickup.sections.by === 'length' ? pickup.sections.parts : 0;
  // With the same count in every section there has to be something that can give way.
  const moves = wants.map((want) => want.flexible || (parts > 0 && !wants.some((one) => one.flexible)));
  const capped = wants.map((want) => Math.min(Math.round(want.asked), want.most));
  const fixed = capped.reduce((sum, count, i) => sum + (moves[i] ? 0 : count), 0);
  const shared = wants.reduce((sum, want, i) => sum + (moves[i] ? want.asked : 0), 0);
  const group = grouped(wants, moves, twins);
  const pairsOnly = group.singles.length === 0;
  let target = pickup.target ?? nearestFitting(wanted, pickup.band);
  if (free) {
    const most = wants.reduce((sum, want, i) => sum + (moves[i] ? want.most : 0), 0);
    const nearest = pairsOnly ? 2 * roundHalfDown(shared / 2) : roundHalfDown(shared);
    // What fixed edges ask beyond their openings is still wanted and made on the first row.
    const asked = wants.reduce((sum, want, i) => sum + (moves[i] ? 0 : Math.round(want.asked)), 0);
    target = asked + (nearest > most ? roundHalfDown(shared) : nearest);
  }
  if (pickup.target !== null && !fitsMultiple(target, pickup.band)) {
    const { multiple, plus } = pickup.band;
    const [below, above] = fittingCounts(target, pickup.band);
    notes.push({
      kind: 'target-off-multiple',
      target,
      multiple,
      plus,
      below: below ?? target,
      above: above ?? below ?? target,
    });
  }
  const each = parts > 0 ? Math.floor(target / parts) : 0;
  const goal = each > 0 ? each * parts : target;
  const shares = apportion(group.singles.map(share), group.pairs.map(share), Math.max(0, goal - fixed));
  const counts = [...capped];
  group.singles.forEach((one, k) => (counts[one.index] = shares.singles[k] ?? 0));
  group.pairs.forEach((one, k) => {
    counts[one.index] = shares.pairs[k] ?? 0;
    counts[one.twin] = shares.pairs[k] ?? 0;
  });
  const picked = counts.reduce((sum, count) => sum + count, 0);
  wants.forEach((want, i) => {
    const one = stretches[i];
    // A bare edge asks for its share of the demanded total, and so does any edge once all that can move is full.
    const byTotal = want.bare || (shares.short === 'openings' && moves[i] === true);
    const asked = byTotal ? Math.max(want.asked, ((goal - fixed) * want.asked) / shared) : want.asked;
    const asks = moves[i] ? Math.floor(asked) : asked;
    if (!one || asks <= want.most || (counts[i] ?? 0) < want.most) return;
    notes.push({
      kind: 'too-few-openings',
      edge: { piece: one.piece.id, edge: one.measured.id },
      wanted: asked,
      openings: want.most,
      unit: one.openings.sort[0]?.kind ?? 'row',
      made: picked < target ? 'first-row' : 'other-edges',
    });
  });
  if (each > 0 && picked === goal && goal !== target) {
    notes.push({ kind: 'same-sections', each, parts, picked, target });
  } else if (picked !== target && !notes.some((note) => note.kind === 'too-few-openings')) {
    const kind = shares.short === 'parity' ? 'twins-odd' : 'fixed-counts';
    notes.push({ kind, target, picked });
  }
  return { counts, wanted, target, picked, notes };
}

interface Member extends Share {
  readonly index: number;
  readonly twin: number;
}

function share({ wanted, most }: Member): Share {
  return { wanted, most };
}

function grouped(
  wants: readonly Want[],
  moves: readonly boolean[],
  twins: readonly number[],
): { singles: Member[]; pairs: Member[] } {
  const singles: Member[] = [];
  const pairs: Member[] = [];
  wants.forEach((want, index) => {
    if (!moves[index]) return;
    const twin = twins[index] ?? -1;
    // An opening in the very middle belongs to one half of an edge only.
    const most = Math.min(want.most, wants[twin]?.most ?? want.most);
    const member = { wanted: Math.max(want.asked, 1e-9), most, index, twin };
    if (twin < 0 || twin === index || !moves[twin]) singles.push(member);
    else if (index < twin) pairs.push(member);
  });
  return { singles, pairs };
}
