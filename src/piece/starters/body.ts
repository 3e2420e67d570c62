import type { GridPoint } from '../design';
import type { Counts } from './counts';
import type { MeasureKey, StarterFault } from './kinds';
import { mirrored, type Leg } from './legs';
import { pointed, round, shallow, type Neck } from './necks';
import { armholeSteps, boundOffIn } from './steps';

/** What every part of a body has above its foot, in stitches and rows; `x` runs outwards from the neck. */
interface Upper {
  /** Rows from the foot to the armhole, to the outer end of the shoulder and to its inner end. */
  readonly armhole: number;
  readonly shoulder: number;
  readonly top: number;
}

function upperOf(counts: Counts): Upper {
  const armhole = counts.rows('length', 2);
  const shoulder = armhole + counts.rows('armhole', 4);
  return { armhole, shoulder, top: shoulder + counts.rows('shoulder-drop', 0) };
}

/** Share of an armhole's stitches that is bound off at the underarm at once; the rest is decreased. */
const UNDERARM = 0.4;

/**
 * The outer edge of a body from the foot of its side to the neck, climbing: side, underarm, armhole, shoulder. What is
 * without a stitch is left out.
 * @param xs stitches at the side, at the armhole's top and at the neck
 */
function outerLegs(xs: readonly [side: number, armhole: number, neck: number], upper: Upper, suffix: string): Leg[] {
  const [side, armhole, neck] = xs;
  const inset = side - armhole;
  const bound = inset < 2 ? 0 : Math.max(1, Math.round(UNDERARM * inset));
  const legs: Leg[] = [{ id: `side${suffix}`, from: [side, 0], to: [side, upper.armhole], selvage: 'plain' }];
  const foot: GridPoint = [side - bound, upper.armhole];
  if (bound > 0) legs.push({ id: `underarm${suffix}`, from: [side, upper.armhole], to: foot, finish: 'bound-off' });
  const outer: GridPoint = [armhole, upper.shoulder];
  const left = inset - bound;
  legs.push({
    id: `armhole${suffix}`,
    from: foot,
    to: outer,
    selvage: 'plain',
    ...(left > 0 ? { steps: armholeSteps(left, upper.shoulder - upper.armhole) } : {}),
  });
  const goes = (upper.top - upper.shoulder) / 2;
  const across = armhole - neck;
  legs.push({
    id: `shoulder${suffix}`,
    from: outer,
    to: [neck, upper.top],
    finish: 'bound-off',
    ...(goes > 0 && goes <= across ? { steps: boundOffIn(across, goes, upper.top - upper.shoulder) } : {}),
  });
  return legs;
}

function deepFault(counts: Counts, measure: MeasureKey, heights: readonly MeasureKey[]): StarterFault | null {
  const height = heights.reduce((sum, key) => sum + counts.value(key), 0);
  const found = counts.value(measure);
  return found < height ? null : { ok: false, reason: 'too-deep', measure, found, height };
}

const HEIGHTS = ['length', 'armhole', 'shoulder-drop'] as const;

/** The whole outline of a piece that mirrors itself about 0: the foot, its +x half, the middle if any, the other half. */
function both(half: readonly Leg[], foot: number, middle: Leg | null): Leg[] {
  return [
    { id: 'cast-on', from: [-foot, 0], to: [foot, 0], finish: 'cast-on' },
    ...half,
    ...(middle ? [middle] : []),
    ...mirrored(half, 0),
  ];
}

/** A body that mirrors itself. The wearer's left is on the right of a front, seen with the right side facing. */
function wholeBody(
  counts: Counts,
  suffix: '-left' | '-right',
  depthKey: MeasureKey,
  neckOf: Neck,
): Leg[] | StarterFault {
  const [chest, neck, shoulder] = [counts.value('chest'), counts.value('neck-width'), counts.value('shoulder')];
  if (neck + 2 * shoulder > chest) {
    const found = {
      measure: 'neck-width',
      found: neck,
      shoulder,
      shoulders: 2,
      within: 'chest',
      width: chest,
    } as const;
    return { ok: false, reason: 'no-room', ...found };
  }
  const deep = deepFault(counts, depthKey, HEIGHTS);
  if (deep) return deep;
  const side = counts.stitches('chest', 3, 0.5);
  const half = Math.min(counts.stitches('neck-width', 2, 0.5), side - 1);
  const armhole = Math.min(half + counts.stitches('shoulder', 1), side);
  const upper = upperOf(counts);
  const { leg, middle } = neckOf(half, upper.top, Math.min(counts.rows(depthKey, 2), upper.top - 2));
  return both([...outerLegs([side, armhole, half], upper, suffix), leg], side, middle);
}

export function roundNeck(counts: Counts): Leg[] | StarterFault {
  return wholeBody(counts, '-left', 'neck-depth', round('neck-left'));
}

export function vNeck(counts: Counts): Leg[] | StarterFault {
  return wholeBody(counts, '-left', 'v-depth', pointed);
}

export function back(counts: Counts): Leg[] | StarterFault {
  return wholeBody(counts, '-right', 'back-neck-depth', shallow);
}

/** The left front of a cardigan, its front edge at 0 and its side on the right; the right front is its mirror image. */
function leftFront(counts: Counts): Leg[] | StarterFault {
  const [width, neck, shoulder] = [counts.value('front-width'), counts.value('half-neck'), counts.value('shoulder')];
  if (neck + shoulder > width) {
    const found = { measure: 'half-neck', found: neck, shoulder, shoulders: 1, within: 'front-width', width } as const;
    return { ok: false, reason: 'no-room', ...found };
  }
  const deep = deepFault(counts, 'neck-depth', HEIGHTS);
  if (deep) return deep;
  const side = counts.stitches('front-width', 3);
  const half = Math.min(counts.stitches('half-neck', 2), side - 1);
  const armhole = Math.min(half + counts.stitches('shoulder', 1), side);
  const upper = upperOf(counts);
  const depth = Math.min(counts.rows('neck-depth', 2), upper.top - 2);
  const { leg } = round('neck')(half, upper.top, depth);
  const foot = upper.top - depth;
  return [
    { id: 'cast-on', from: [0, 0], to: [side, 0], finish: 'cast-on' },
    ...outerLegs([side, armhole, half], upper, ''),
    leg,
    { id: 'neck-front', from: leg.to, to: [0, foot], finish: 'bound-off' },
    { id: 'front-edge', from: [0, foot], to: [0, 0], selvage: 'plain' },
  ];
}

export function cardiganLeft(counts: Counts): Leg[] | StarterFault {
  return leftFront(counts);
}

export function cardiganRight(counts: Counts): Leg[] | StarterFault {
  const legs = leftFront(counts);
  if (!Array.isArray(legs)) return legs;
  const turned = mirrored(legs, legs[0]?.to[0] ?? 0);
  // The cast-on stays the first edge.
  return [...turned.slice(-1), ...turned.slice(0, -1)];
}

/** Stitches bound off at each underarm of a raglan, as a length: our own choice. */
const RAGLAN_UNDERARM = 20;

export function raglan(counts: Counts): Leg[] | StarterFault {
  const [chest, neck] = [counts.value('chest'), counts.value('neck-width')];
  if (neck > chest - 4 * RAGLAN_UNDERARM) {
    return { ok: false, reason: 'too-wide', measure: 'neck-width', found: neck, than: 'chest', width: chest };
  }
  const deep = deepFault(counts, 'neck-depth', ['length', 'raglan-depth']);
  if (deep) return deep;
  const side = counts.stitches('chest', 5, 0.5);
  const half = Math.min(counts.stitches('neck-width', 2, 0.5), side - 3);
  const bound = Math.min(Math.max(1, Math.round((RAGLAN_UNDERARM * side * 2) / chest)), side - half - 2);
  const foot = counts.rows('length', 2);
  const top = foot + counts.rows('raglan-depth', 4);
  // One stitch is left at the top of each raglan line, and fastened off.
  const tip: GridPoint = [half + 1, top];
  const { leg, middle } = round('neck-left')(half, top, Math.min(counts.rows('neck-depth', 2), top - 2));
  const line: Leg = { id: 'raglan-left', from: [side - bound, foot], to: tip, selvage: 'plain' };
  const legs: Leg[] = [
    { id: 'side-left', from: [side, 0], to: [side, foot], selvage: 'plain' },
    { id: 'underarm-left', from: [side, foot], to: line.from, finish: 'bound-off' },
    line,
    { id: 'tip-left', from: tip, to: [half, top], finish: 'bound-off' },
    leg,
  ];
  return both(legs, side, middle);
}
