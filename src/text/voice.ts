import type { Design, Hand, Units } from '../piece';
import { termsFor, type Terms } from './terms';

/** How things are said: in whose terms, in which units, to which hand, in full or in brief. */
export interface Voice {
  readonly terms: Terms;
  readonly units: Units;
  readonly hand: Hand;
  readonly form: 'long' | 'short';
}

/** The voice that a design asks for; what is given in `changes` takes its place. */
export function voiceOf(design: Pick<Design, 'terms' | 'units' | 'hand'>, changes: Partial<Voice> = {}): Voice {
  return { terms: termsFor(design.terms), units: design.units, hand: design.hand, form: 'long', ...changes };
}
