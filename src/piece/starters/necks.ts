import type { GridPoint } from '../design';
import { quarterDown, type Leg } from './legs';
import { boundOffIn, slopeOf } from './steps';

/** Stitches of half the neck that are bound off together at its middle: a third (zanotowane.pl/713/7786). */
function centreOf(half: number): number {
  return Math.max(1, Math.round(half / 3));
}

/** The middle of a neck, from +x to -x. */
function middleOf(half: number, y: number): Leg {
  return { id: 'neck-center', from: [half, y], to: [-half, y], finish: 'bound-off' };
}

/** Half a neck: its edge from the shoulder down, and what is left at the middle. */
export type Neck = (half: number, top: number, depth: number) => { readonly leg: Leg; readonly middle: Leg | null };

/** Bound off at the middle, then curved: level at the middle and plumb at the shoulder. */
export const round =
  (id: string): Neck =>
  (half, top, depth) => {
    const centre = centreOf(half);
    const from: GridPoint = [half, top];
    const to: GridPoint = [centre, top - depth];
    const leg: Leg = { id, from, to, handles: quarterDown(from, to), selvage: 'plain' };
    return { leg, middle: middleOf(centre, top - depth) };
  };

/** Decreased from a point at the middle. */
export const pointed: Neck = (half, top, depth) => {
  const steps = slopeOf(half, depth, -1);
  const leg: Leg = {
    id: 'neck-left',
    from: [half, top],
    to: [0, top - depth],
    selvage: 'plain',
    ...(steps ? { steps } : {}),
  };
  return { leg, middle: null };
};

/** The shallow neck of a back: bound off at the middle, and a quarter of it in a few goes at each side. */
export const shallow: Neck = (half, top, depth) => {
  const side = Math.max(1, Math.round(half / 4));
  const goes = Math.min(side, depth / 2);
  const leg: Leg = {
    id: 'neck-right',
    from: [half, top],
    to: [half - side, top - depth],
    selvage: 'plain',
    steps: boundOffIn(side, goes, depth),
  };
  return { leg, middle: middleOf(half - side, top - depth) };
};
