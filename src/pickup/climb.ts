import type { MeasuredEdge, WorkedStep } from '../shaping';
import type { Mm } from '../units';
import type { Along, AlongLine } from './along';
import type { EdgeOpening, NeedleChoice } from './openings';

/** A run of worked steps that all climb or all fall, from the corner (x, y) where the outline enters it. */
export interface Climb {
  readonly up: number;
  readonly steps: readonly WorkedStep[];
  readonly x: number;
  readonly y: number;
  /** Index of the first of these steps among all worked steps of the edge. */
  readonly first: number;
}

/** A place found bottom up, before rows are paired into chains or ridges. */
interface Place {
  readonly what: 'stitch' | 'row' | 'hole';
  readonly column: number;
  readonly row: number;
  readonly x: number;
  readonly y: number;
  readonly at: Along;
  /** Of a row: a quarter of a row further up, and whether the stitches of a step lie between it and the row below. */
  readonly after?: Along;
  readonly footed?: boolean;
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
export function climbOpenings(
  climb: Climb,
  edge: MeasuredEdge,
  line: AlongLine,
  cell: { readonly width: Mm; readonly height: Mm },
  choice: NeedleChoice,
): EdgeOpening[] {
  if (climb.up === 0) return flatStep(climb, line);
  const places = bottomUpPlaces(climb, edge, line, cell, choice);
  const openings = edge.selvage === 'plain' ? places.map(plain) : paired(places, climb, edge, choice);
  return climb.up > 0 ? openings : openings.reverse();
}

/** Stitches that lie flat at a turn: bound off or cast on together, one opening each. */
function flatStep({ steps, x, y, first }: Climb, line: AlongLine): EdgeOpening[] {
  const openings: EdgeOpening[] = [];
  let column = x;
  const [start, stop] = line.ends(first);
  const all = steps.reduce((sum, step) => sum + Math.abs(step.across), 0);
  steps.forEach((step) => {
    const forwards = Math.sign(step.across);
    const row = forwards < 0 ? y - 1 : y;
    for (let i = 0; i < Math.abs(step.across); i++) {
      const place = column + forwards * (i + 0.5);
      openings.push({
        kind: 'stitch',
        second: false,
        hole: false,
        column: Math.floor(place),
        row,
        x: place,
        y: row + 0.5,
        ...between(start, stop, (openings.length + 0.5) / all),
      });
    }
    column += step.across;
  });
  return openings;
}

function plain(place: Place): EdgeOpening {
  return {
    kind: place.what === 'row' ? 'row' : 'stitch',
    second: place.what === 'hole',
    hole: place.what === 'hole',
    column: place.column,
    row: place.row,
    x: place.x,
    y: place.y,
    edgeAt: place.at.edgeAt,
    joinAt: place.at.joinAt,
  };
}

function bottomUpPlaces(
  climb: Climb,
  edge: MeasuredEdge,
  line: AlongLine,
  cell: { readonly width: Mm; readonly height: Mm },
  { inset, stepHoles }: NeedleChoice,
): Place[] {
  const places: Place[] = [];
  // On a climbing edge the fabric lies towards -x, on a falling one towards +x.
  const inward = climb.up > 0 ? -1 : 1;
  const bottomUp = climb.up > 0 ? climb.steps : [...climb.steps].reverse();
  const end = climb.steps.reduce((sum, s) => ({ x: sum.x + s.across, y: sum.y + s.up }), { x: climb.x, y: climb.y });
  let { x, y } = climb.up > 0 ? climb : end;
  bottomUp.forEach((step, k) => {
    const index = climb.first + (climb.up > 0 ? k : climb.steps.length - 1 - k);
    const across = climb.up > 0 ? step.across : -step.across;
    const rows = Math.abs(step.up);
    const count = Math.abs(across);
    const foot = x + across;
    const everyRow = count === 1 && rows === 1 && onAdjoiningRow(bottomUp, k) && edge.line[0]?.kind === 'line';
    const tread = count >= 2 ? count : 0;
    const { rowsFirst = false } = step;
    // Stitches and rows of a step share its stretch of the line in proportion to their own lengths.
    const whole = tread * cell.width + rows * cell.height;
    const at = tread > 0 ? sharedBy(whole, line.at(index, y), line.at(index, y + rows)) : null;
    const takesIn = Math.sign(across) === inward;

    const putTread = () => {
      if (!at) return;
      const level = rowsFirst ? y + rows : y;
      const start = rowsFirst ? rows * cell.height : 0;
      for (let i = 0; i < tread; i++) {
        const place = x + Math.sign(across) * (i + 0.5);
        const row = takesIn ? level - 1 : level;
        const column = Math.floor(place);
        places.push({ what: 'stitch', column, row, x: place, y: row + 0.5, at: at(start + (i + 0.5) * cell.width) });
      }
      const topped = rowsFirst && k === bottomUp.length - 1;
      if (stepHoles && takesIn && !topped) {
        const hole = at(start + tread * cell.width);
        places.push({ what: 'hole', column: Math.floor(foot), row: level, x: foot, y: level, at: hole });
      }
    };
    const putRows = () => {
      const start = rowsFirst ? 0 : tread * cell.width;
      const place = (rowsFirst ? x : foot) + inward * inset;
      const column = Math.floor(place);
      // A chain or a ridge is not made over the foot of a step.
      const before = bottomUp[k - 1];
      const afterTread = rowsFirst ? before?.rowsFirst === true && Math.abs(before.across) >= 2 : tread > 0;
      for (let j = 0; j < rows; j++) {
        const row = y + j;
        const placeAt = (up: number) => (at ? at(start + (j + up) * cell.height) : line.at(index, y + j + up));
        // Side by side on a plain selvage; a chain or a ridge lies between two rows, clear of the decreases.
        const single = edge.selvage === 'plain';
        const apart = everyRow && single ? 0.25 : 0;
        if (everyRow) {
          places.push({ what: 'stitch', column, row, x: place, y: row + 0.5 - apart, at: placeAt(0.5 - apart) });
        }
        const here: Place = { what: 'row', column, row, x: place, y: row + 0.5 + apart, at: placeAt(0.5 + apart) };
        places.push(single ? here : { ...here, after: placeAt(0.5 + JUST_ABOVE), footed: j === 0 && afterTread });
      }
    };
    for (const put of rowsFirst ? [putRows, putTread] : [putTread, putRows]) put();
    x = foot;
    y += rows;
  });
  return places;
}

/** A single decrease or increase on one row, with another on the row before or after it. */
function onAdjoiningRow(steps: readonly WorkedStep[], k: number): boolean {
  return [steps[k - 1], steps[k + 1]].some((step) => step && Math.abs(step.across) === 1 && Math.abs(step.up) === 1);
}

/** Rows in twos: a chain or a ridge with its second place after it; stitches of steps stay where they are. */
function paired(places: readonly Place[], climb: Climb, edge: MeasuredEdge, choice: NeedleChoice): EdgeOpening[] {
  const inward = climb.up > 0 ? -1 : 1;
  const kind = edge.selvage === 'slipped' ? ('chain' as const) : ('ridge' as const);
  const rows = places.filter((place) => place.what === 'row');
  const openings = places.filter((place) => place.what !== 'row').map(plain);
  const inset = kind === 'chain' ? CHAIN_INSET : choice.garterAt === 'bump' ? BUMP_INSET : 1;
  const put = (second: boolean, row: Place, above: Place | undefined) => {
    const x = row.x + inward * (inset - choice.inset);
    openings.push({ kind, second, hole: false, column: Math.floor(x), row: row.row, x, ...midway(row, above) });
  };
  const pairs = Math.max(1, Math.floor(rows.length / 2));
  for (let i = 0; i < pairs; i++) {
    const [lower, upper, next] = rows.slice(2 * i, 2 * i + 3);
    if (!lower) break;
    put(false, lower, upper ?? lower);
    // A lone row makes neither a whole chain nor a gap beside it.
    if (upper) put(true, upper, next);
  }
  const rising = climb.up > 0 ? 1 : -1;
  return openings.sort((a, b) => rising * (a.edgeAt - b.edgeAt));
}

/** Between two rows; just above the lower one where there is no other or a step lies between them. */
function midway(lower: Place, upper: Place | undefined): Along & { readonly y: number } {
  if (upper && !upper.footed) return { y: (lower.y + upper.y) / 2, ...between(lower.at, upper.at, 0.5) };
  return { y: lower.y + JUST_ABOVE, ...(lower.after ?? lower.at) };
}

/** Places by their share of a stretch whose stitches and rows measure `whole`. */
function sharedBy(whole: Mm, low: Along, high: Along): (mm: Mm) => Along {
  return (mm) => between(low, high, mm / whole);
}

function between(a: Along, b: Along, fraction: number): Along {
  return {
    edgeAt: a.edgeAt + (b.edgeAt - a.edgeAt) * fraction,
    joinAt: a.joinAt + (b.joinAt - a.joinAt) * fraction,
  };
}
