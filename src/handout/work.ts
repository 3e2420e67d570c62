import type { DesignPlan, PickupPlan } from '../pickup';
import type { Handout } from '../piece';
import type { Voice } from '../text';
import type { Gauge } from '../units';
import type { Size } from './paper';

/** The same work at another gauge, planned by whoever asks for the handout; null with the reason where it can't be. */
export interface AtGauge {
  readonly gauge: Gauge;
  readonly plan: PickupPlan | null;
  readonly why?: string;
}

/** A strip for practice: a piece of its own with one pick-up along its side. */
export interface PracticeStrip {
  readonly gauge: Gauge;
  readonly plan: DesignPlan;
}

/** What a handout is made from. Nothing in it is planned here. */
export interface Work {
  readonly plan: DesignPlan;
  /** Which of its pick-ups is printed. */
  readonly pickup: number;
  readonly handout: Handout;
  readonly gauges: readonly AtGauge[];
  readonly strips: readonly PracticeStrip[];
}

/** The same with what every block needs to know. */
export interface Sheet extends Work {
  readonly chosen: PickupPlan;
  readonly voice: Voice;
  readonly size: Size;
  /** Width of a column, mm. */
  readonly width: number;
  /** How high all that stands before this block is, one under the other, mm. */
  readonly above: number;
}
