import { BOUNDS } from './bounds';
import {
  quickLength,
  quickRows,
  type PlaceQuestion,
  type QuickFault,
  type QuickField,
  type QuickQuestion,
  type QuickUnit,
  type RowQuestion,
} from './quickQuestion';

/** One stitch alone has no first and last place, and no band. */
const LEAST_STITCHES = 2;
/** Shortest and longest edge that is asked about by its length, mm. */
const LENGTHS = [5, 10_000] as const;

type Range = readonly [least: number, most: number];

/** How many rows, ridges, chains or stitches an edge may have, or how long it may be in mm. */
export function quickRange(unit: QuickUnit): Range {
  switch (unit) {
    case 'length':
      return LENGTHS;
    case 'stitch':
      return [1, BOUNDS.pieceStitches];
    default:
      return [1, BOUNDS.pieceRows / quickRows(unit)];
  }
}

/** What is wrong with a question, its fields in the order of reading; null where it can be answered. */
export function quickFault(question: QuickQuestion): QuickFault | null {
  return question.kind === 'place' ? placeFault(question) : rowFault(question);
}

function placeFault(question: PlaceQuestion): QuickFault | null {
  const { place, over, unit, per10cm, sections } = question;
  const gauge = unit === 'stitch' ? BOUNDS.gauge.stitches : BOUNDS.gauge.rows;
  return (
    counted('place', place, [LEAST_STITCHES, 2 * BOUNDS.pieceRows], 'stitch') ??
    (unit === 'length' ? ranged('over', over, LENGTHS, unit) : counted('over', over, quickRange(unit), unit)) ??
    (per10cm === null ? null : ranged('per10cm', per10cm, gauge, unit === 'stitch' ? 'stitch' : 'row')) ??
    roomFault(question) ??
    (sections === null ? null : counted('sections', sections, BOUNDS.parts, 'stitch')) ??
    (sections !== null && sections > place
      ? { ok: false, field: 'sections', reason: 'more-sections-than-stitches', found: sections, place }
      : null)
  );
}

/** Whether the edge, or the first row that follows, can hold the stitches. */
function roomFault(question: PlaceQuestion): QuickFault | null {
  const { place, over, unit, per10cm } = question;
  const length = quickLength(question);
  if (length !== null) {
    const [least, most] = BOUNDS.gauge.stitches;
    const implied = (100 * place) / length;
    if (implied < least || implied > most) {
      return { ok: false, field: 'place', reason: 'no-such-gauge', per10cm: implied, least, most };
    }
  }
  if (unit === 'length' && per10cm === null) return countBelow(place, BOUNDS.pieceStitches);
  const rows = unit === 'length' ? Math.max(1, Math.round((over * (per10cm ?? 0)) / 100)) : over;
  if (unit === 'length' && rows > BOUNDS.pieceRows) {
    return { ok: false, field: 'per10cm', reason: 'too-many-rows', found: rows, most: BOUNDS.pieceRows };
  }
  // A chain and a ridge have a second place beside them, and a row can double what is on the needle.
  const places = rows * quickRows(unit);
  if (place <= 2 * places) return null;
  return {
    ok: false,
    field: 'place',
    reason: 'too-many-stitches',
    found: place,
    over: rows,
    unit: unit === 'length' ? 'row' : unit,
    places,
    most: 2 * places,
  };
}

function countBelow(place: number, most: number): QuickFault | null {
  return counted('place', place, [LEAST_STITCHES, most], 'stitch');
}

/** The stitches that are to be there after the row. */
export function rowTarget({ have, change, amount, amountIs }: RowQuestion): number {
  if (amountIs === 'to') return amount;
  return change === 'increase' ? have + amount : have - amount;
}

function rowFault(question: RowQuestion): QuickFault | null {
  const { have, change, amount, amountIs } = question;
  const least = amountIs === 'to' ? 0 : 1;
  return (
    counted('have', have, [LEAST_STITCHES, BOUNDS.pieceStitches], 'stitch') ??
    counted('amount', amount, [least, 2 * BOUNDS.pieceStitches], 'stitch') ??
    (amountIs === 'to' && amount < LEAST_STITCHES ? tooFew(have, amount) : null) ??
    changeFault(have, change, rowTarget(question))
  );
}

function tooFew(have: number, to: number): QuickFault {
  return { ok: false, field: 'amount', reason: 'leaves-too-few', have, to, least: LEAST_STITCHES };
}

function changeFault(have: number, change: RowQuestion['change'], to: number): QuickFault | null {
  const at = { ok: false, field: 'amount' } as const;
  if (to === have || to > have !== (change === 'increase')) return { ...at, reason: 'wrong-way', change, have, to };
  if (change === 'increase') return to > 2 * have ? { ...at, reason: 'too-many-increases', have, by: to - have } : null;
  if (2 * (have - to) > have) {
    return { ...at, reason: 'too-many-decreases', have, by: have - to, most: Math.floor(have / 2) };
  }
  return to < LEAST_STITCHES ? tooFew(have, to) : null;
}

function counted(field: QuickField, found: number, range: Range, unit: QuickUnit): QuickFault | null {
  const fault = ranged(field, found, range, unit);
  return fault ?? (Number.isInteger(found) ? null : { ok: false, field, reason: 'not-whole', found });
}

function ranged(field: QuickField, found: number, [least, most]: Range, unit: QuickUnit): QuickFault | null {
  // Written so that no number at all is out of range too.
  return found >= least && found <= most
    ? null
    : { ok: false, field, reason: 'out-of-range', found, least, most, unit };
}
