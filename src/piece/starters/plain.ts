import type { Finish, GridPoint, Selvage } from '../design';
import { sizeFault, type Counts } from './counts';
import type { MeasureKey, StarterFault } from './kinds';
import { bellSide, mirrored, type Leg } from './legs';
import { slopeOf } from './steps';

interface Sides {
  readonly foot: string;
  readonly right: string;
  readonly top: string;
  readonly left: string;
  readonly finishes: readonly [foot: Finish, top: Finish];
  readonly selvage: Selvage;
}

/** Four edges round `stitches` by `rows`. */
function box(stitches: number, rows: number, { foot, right, top, left, finishes, selvage }: Sides): Leg[] {
  return [
    { id: foot, from: [0, 0], to: [stitches, 0], finish: finishes[0] },
    { id: right, from: [stitches, 0], to: [stitches, rows], selvage },
    { id: top, from: [stitches, rows], to: [0, rows], finish: finishes[1] },
    { id: left, from: [0, rows], to: [0, 0], selvage },
  ];
}

const SIDES: Sides = {
  foot: 'cast-on',
  right: 'side-right',
  top: 'bound-off',
  left: 'side-left',
  finishes: ['cast-on', 'bound-off'],
  selvage: 'plain',
};

export function strip(counts: Counts): Leg[] {
  return stripLegs(counts.value('stitches'), counts.value('rows'), 'plain');
}

/** A bare strip of `stitches` by `rows`: cast on, bound off, its right side the edge to pick up from. */
export function stripLegs(stitches: number, rows: number, selvage: Selvage, top: Finish = 'bound-off'): Leg[] {
  return box(stitches, rows, {
    ...SIDES,
    right: 'edge',
    left: 'other-edge',
    finishes: ['cast-on', top],
    selvage,
  });
}

function fabric(counts: Counts, width: MeasureKey, height: MeasureKey, selvage: Selvage): Leg[] | StarterFault {
  const [stitches, rows] = [counts.stitches(width, 2), counts.rows(height, 2)];
  return sizeFault([width, stitches], [height, rows]) ?? box(stitches, rows, { ...SIDES, selvage });
}

export function rectangle(counts: Counts): Leg[] | StarterFault {
  return fabric(counts, 'width', 'height', 'plain');
}

export function garterSquare(counts: Counts): Leg[] | StarterFault {
  return fabric(counts, 'side', 'side', 'garter');
}

/** Worked on held stitches and left on hold, a stitch slipped at the start of every row. */
export function heelFlap(counts: Counts): Leg[] {
  return box(counts.value('stitches'), counts.value('rows'), {
    foot: 'from-leg',
    right: 'edge-right',
    top: 'heel-turn',
    left: 'edge-left',
    finishes: ['live', 'live'],
    selvage: 'slipped',
  });
}

/** Stitches that a shawl begins with. */
const SHAWL_START = 2;

/** A triangle on its point: begun with two stitches, increased at both sides, bound off along the top. */
export function shawl(counts: Counts): Leg[] | StarterFault {
  const [half, rows] = [counts.stitches('shawl-width', 2, 0.5), counts.rows('shawl-depth', 2)];
  const big = sizeFault(['shawl-width', 2 * half], ['shawl-depth', rows]);
  if (big) return big;
  const start = SHAWL_START / 2;
  const sides: Leg[] = [{ id: 'side-right', from: [start, 0], to: [half, rows], selvage: 'garter' }];
  return [
    { id: 'cast-on', from: [-start, 0], to: [start, 0], finish: 'cast-on' },
    ...sides,
    { id: 'bound-off', from: [half, rows], to: [-half, rows], finish: 'bound-off' },
    ...mirrored(sides, 0),
  ];
}

/** Shares of half the upper arm: bound off at the underarm, and bound off along the top of the cap (our own choice). */
const CAP_UNDERARM = 0.16;
const CAP_TOP = 0.25;

/** Increased from the wrist to the upper arm; the cap is bell-shaped, level at the underarm and at its top. */
export function sleeve(counts: Counts): Leg[] | StarterFault {
  const [wrist, arm] = [counts.value('wrist'), counts.value('upper-arm')];
  if (wrist > arm) {
    return { ok: false, reason: 'too-wide', measure: 'wrist', found: wrist, than: 'upper-arm', width: arm };
  }
  const wide = counts.stitches('upper-arm', 3, 0.5);
  const narrow = Math.min(counts.stitches('wrist', 1, 0.5), wide);
  const foot = counts.rows('sleeve-length', 2);
  const top = foot + counts.rows('cap-height', 2);
  const bound = Math.max(1, Math.round(CAP_UNDERARM * wide));
  const end: GridPoint = [Math.max(1, Math.round(CAP_TOP * wide)), top];
  const steps = slopeOf(wide - narrow, foot, 1);
  const side: Leg = { id: 'side-right', from: [narrow, 0], to: [wide, foot], selvage: 'plain' };
  const start: GridPoint = [wide - bound, foot];
  const half: Leg[] = [
    steps ? { ...side, steps } : side,
    { id: 'underarm-right', from: side.to, to: start, finish: 'bound-off' },
    { id: 'cap-right', from: start, to: end, handles: bellSide(start, end), selvage: 'plain' },
  ];
  return [
    { id: 'cast-on', from: [-narrow, 0], to: [narrow, 0], finish: 'cast-on' },
    ...half,
    { id: 'cap-top', from: end, to: [-end[0], top], finish: 'bound-off' },
    ...mirrored(half, 0),
  ];
}
