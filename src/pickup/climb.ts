import type { MeasuredEdge, WorkedStep } from '../shaping';
import type { Mm } from '../units';
import type { Along, AlongLine } from './along';
import type { NeedleChoice } from './openings';
import { HOLE, noOpenings, PAIRS, pickOut, reverse, ROW, STITCH, type Openings } from './openingList';
import type { OpeningSort } from './plan';

/** A run of worked steps that all climb or all fall, from the corner (x, y) where the outline enters it. */
export interface Climb {
  readonly up: number;
  readonly steps: readonly WorkedStep[];
  readonly x: number;
  readonly y: number;
  /** Index of the first of these steps among all worked steps of the edge. */
  readonly first: number;
}

/** What all openings of an edge are found by. */
export interface Ground {
  readonly edge: MeasuredEdge;
  readonly line: AlongLine;
  readonly cell: { readonly width: Mm; readonly height: Mm };
  readonly choice: NeedleChoice;
}

/** A worked step seen bottom up: its bound-off or cast-on stitches (the tread) and its rows (the riser). */
interface Flight {
  /** Among all worked steps of the edge. */
  readonly index: number;
  /** Its lower corner. */
  readonly x: number;
  readonly y: number;
  readonly across: number;
  /** Stitches bound off or cast on together: 0 where there is but one, or none. */
  readonly tread: number;
  readonly rows: number;
  readonly rowsFirst: boolean;
  /** Stitches and rows of a step share its stretch of the line in proportion to their own lengths. */
  readonly shared: { readonly low: Along; readonly high: Along } | null;
}

/** How far inside the edge line the needle goes into a chain stitch and into a garter bump, in stitches. */
const CHAIN_INSET = 0.5;
const BUMP_INSET = 0.25;
/** A place with no row or a step above it lies this many rows above the middle of its row. */
const JUST_ABOVE = 0.25;

/**
 * The openings of one climb, in the direction of the outline. They are found bottom up, as the piece was knitted: each
 * step has its bound-off or cast-on stitches first (the tread), then its rows (the riser).
 */
export function climbOpenings(climb: Climb, ground: Ground): Openings {
  if (climb.up === 0) return flatStep(climb, ground.line);
  // On a climbing edge the fabric lies towards -x, on a falling one towards +x.
  const inward = climb.up > 0 ? -1 : 1;
  const flights = flightsOf(climb, ground);
  const { selvage } = ground.edge;
  const found = noOpenings();
  const rows = selvage === 'plain' ? found : noOpenings();
  flights.forEach((flight, k) => {
    const { rowsFirst } = flight;
    if (!rowsFirst) putTread(flight, flights, inward, ground, found);
    const everyRow = isSingle(flight) && (isSingle(flights[k - 1]) || isSingle(flights[k + 1]));
    putRows(flight, everyRow && ground.edge.line[0]?.kind === 'line', inward, ground, found, rows);
    if (rowsFirst) putTread(flight, flights, inward, ground, found);
  });
  const openings = selvage === 'plain' ? found : paired(rows, found, PAIRS[selvage], flights, inward, ground);
  return climb.up > 0 ? openings : reverse(openings);
}

/** Stitches that lie flat at a turn: bound off or cast on together, one opening each. */
function flatStep({ steps, x, y, first }: Climb, line: AlongLine): Openings {
  const openings = noOpenings();
  let column = x;
  const [start, stop] = line.ends(first);
  const all = steps.reduce((sum, step) => sum + Math.abs(step.across), 0);
  steps.forEach((step) => {
    const forwards = Math.sign(step.across);
    const row = forwards < 0 ? y - 1 : y;
    for (let i = 0; i < Math.abs(step.across); i++) {
      putBetween(openings, start, stop, (openings.x.length + 0.5) / all);
      put(openings, STITCH, row, column + forwards * (i + 0.5), row + 0.5);
    }
    column += step.across;
  });
  return openings;
}

function flightsOf(climb: Climb, { line }: Ground): Flight[] {
  const { up, steps, first } = climb;
  let { x, y } = climb;
  if (up < 0) for (const step of steps) [x, y] = [x + step.across, y + step.up];
  const flights: Flight[] = [];
  for (let k = 0; k < steps.length; k++) {
    const at = up > 0 ? k : steps.length - 1 - k;
    const step = steps[at]!;
    const index = first + at;
    const across = up > 0 ? step.across : -step.across;
    const rows = Math.abs(step.up);
    const tread = Math.abs(across) >= 2 ? Math.abs(across) : 0;
    const shared = tread > 0 ? { low: line.at(index, y), high: line.at(index, y + rows) } : null;
    flights.push({ index, x, y, across, tread, rows, rowsFirst: step.rowsFirst === true, shared });
    x += across;
    y += rows;
  }
  return flights;
}

function putTread(flight: Flight, flights: readonly Flight[], inward: number, ground: Ground, to: Openings): void {
  const { x, y, across, tread, rows, rowsFirst } = flight;
  if (tread === 0) return;
  const takesIn = Math.sign(across) === inward;
  const level = rowsFirst ? y + rows : y;
  const row = takesIn ? level - 1 : level;
  const up = rowsFirst ? rows : 0;
  for (let i = 0; i < tread; i++) {
    putAlong(to, flight, i + 0.5, up, ground);
    put(to, STITCH, row, x + Math.sign(across) * (i + 0.5), row + 0.5);
  }
  const topped = rowsFirst && flight === flights.at(-1);
  if (!ground.choice.stepHoles || !takesIn || topped) return;
  putAlong(to, flight, tread, up, ground);
  put(to, HOLE, level, x + across, level);
}

/** The rows of a flight, and with `everyRow` the single decrease or increase on each of them. */
function putRows(
  flight: Flight,
  everyRow: boolean,
  inward: number,
  ground: Ground,
  stitches: Openings,
  to: Openings,
): void {
  const { x, y, across, rows, tread, rowsFirst } = flight;
  const place = (rowsFirst ? x : x + across) + inward * ground.choice.inset;
  const gone = rowsFirst ? 0 : tread;
  // Side by side on a plain selvage; a chain or a ridge lies between two rows, clear of the decreases.
  const apart = everyRow && stitches === to ? 0.25 : 0;
  for (let j = 0; j < rows; j++) {
    const row = y + j;
    if (everyRow) {
      putAlong(stitches, flight, gone, j + 0.5 - apart, ground);
      put(stitches, STITCH, row, place, row + 0.5 - apart);
    }
    putAlong(to, flight, gone, j + 0.5 + apart, ground);
    put(to, ROW, row, place, row + 0.5 + apart);
  }
}

/** A single decrease or increase on one row. With another on the row before or after it, it is an opening itself. */
function isSingle(flight: Flight | undefined): boolean {
  return flight !== undefined && Math.abs(flight.across) === 1 && flight.rows === 1;
}

/** Rows in twos: a chain or a ridge with its second place after it; stitches of steps stay where they are. */
function paired(
  rows: Openings,
  openings: Openings,
  { first, second }: (typeof PAIRS)['slipped' | 'garter'],
  flights: readonly Flight[],
  inward: number,
  ground: Ground,
): Openings {
  const { choice, edge } = ground;
  const inset = edge.selvage === 'slipped' ? CHAIN_INSET : choice.garterAt === 'bump' ? BUMP_INSET : 1;
  const flightOf = flights.flatMap((flight) => Array.from({ length: flight.rows }, () => flight));
  // A chain or a ridge is not made over the foot of a step.
  const footed = flights.flatMap((flight, k) => {
    const before = flights[k - 1];
    const step = flight.rowsFirst ? before?.rowsFirst === true && before.tread > 0 : flight.tread > 0;
    return Array.from({ length: flight.rows }, (_, j) => step && j === 0);
  });
  const putPair = (sort: OpeningSort, lower: number, upper: number) => {
    const y = rows.y[lower]!;
    const x = rows.x[lower]! + inward * (inset - choice.inset);
    if (upper < rows.x.length && !footed[upper]) {
      openings.edgeAt.push(rows.edgeAt[lower]! + (rows.edgeAt[upper]! - rows.edgeAt[lower]!) * 0.5);
      openings.joinAt.push(rows.joinAt[lower]! + (rows.joinAt[upper]! - rows.joinAt[lower]!) * 0.5);
      put(openings, sort, rows.row[lower]!, x, (y + rows.y[upper]!) / 2);
    } else {
      // Just above the lower row where there is no other or a step lies between them.
      const flight = flightOf[lower]!;
      putAlong(openings, flight, flight.rowsFirst ? 0 : flight.tread, y + JUST_ABOVE - flight.y, ground);
      put(openings, sort, rows.row[lower]!, x, y + JUST_ABOVE);
    }
  };
  const count = rows.x.length;
  for (let lower = 0; lower < count; lower += 2) {
    // The odd row at the top goes with the chain below it; a lone row makes neither a whole chain nor a gap beside it.
    if (lower + 1 === count && lower > 0) break;
    putPair(first, lower, Math.min(lower + 1, count - 1));
    if (lower + 1 < count) putPair(second, lower + 1, lower + 2);
  }
  const order = openings.x.map((_, i) => i);
  const upwards = inward < 0 ? 1 : -1;
  return pickOut(
    openings,
    order.sort((a, b) => upwards * (openings.edgeAt[a]! - openings.edgeAt[b]!)),
  );
}

/** Puts how far along the edge and its join a place lies: so many stitches along its tread, so many rows up. */
function putAlong(to: Openings, flight: Flight, stitches: number, up: number, { line, cell }: Ground): void {
  const { shared, tread, rows } = flight;
  if (!shared) {
    line.put(to, flight.index, flight.y + up);
    return;
  }
  const whole = tread * cell.width + rows * cell.height;
  putBetween(to, shared.low, shared.high, (stitches * cell.width + up * cell.height) / whole);
}

function putBetween(to: Openings, a: Along, b: Along, fraction: number): void {
  to.edgeAt.push(a.edgeAt + (b.edgeAt - a.edgeAt) * fraction);
  to.joinAt.push(a.joinAt + (b.joinAt - a.joinAt) * fraction);
}

function put(to: Openings, sort: OpeningSort, row: number, x: number, y: number): void {
  to.sort.push(sort);
  to.row.push(row);
  to.x.push(x);
  to.y.push(y);
}
