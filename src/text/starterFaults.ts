import type { StarterFault } from '../piece';
import { lengthText, plainNumber } from './numbers';
import { measureLabel } from './starters';
import type { Voice } from './voice';

/** Why no piece can be drawn to some measures, and how to mend it, in a sentence. */
export function starterFaultText(fault: StarterFault, { terms, units }: Pick<Voice, 'terms' | 'units'>): string {
  const length = (mm: number) => lengthText(mm, units);
  const label = measureLabel(fault.measure, terms);
  switch (fault.reason) {
    case 'out-of-range': {
      const shown = (value: number) => (fault.unit === 'mm' ? length(value) : plainNumber(value));
      const range = `${shown(fault.least)} to ${shown(fault.most)}`;
      return Number.isFinite(fault.found)
        ? `${label}: ${shown(fault.found)} is too ${fault.found < fault.least ? 'little' : 'much'}; give ${range}.`
        : `${label}: this is no number; give ${range}.`;
    }
    case 'not-whole':
      return `${label}: ${plainNumber(fault.found, 4)} is not whole; give ${Math.floor(fault.found)} or ${Math.ceil(fault.found)}.`;
    case 'no-room':
      return fault.shoulders === 2
        ? `A neck of ${length(fault.found)} and two shoulders of ${length(fault.shoulder)} each are wider than the chest of ${length(fault.width)}; make the chest wider, or the neck or the shoulders narrower.`
        : `Half a neck of ${length(fault.found)} and a shoulder of ${length(fault.shoulder)} are wider than the front of ${length(fault.width)}; make the front wider, or the neck or the shoulder narrower.`;
    case 'too-wide':
      return fault.measure === 'wrist'
        ? `A wrist of ${length(fault.found)} is wider than the upper arm of ${length(fault.width)}; make the wrist narrower or the upper arm wider.`
        : `A neck of ${length(fault.found)} leaves no room for raglan lines on a chest of ${length(fault.width)}; make the neck narrower or the chest wider.`;
    case 'too-deep':
      return `A neck ${length(fault.found)} deep reaches the foot of a piece ${length(fault.height)} long; make the neck shallower or the piece longer.`;
    case 'too-big':
      return `${label}: in this ${terms.gauge} it comes to ${fault.found} ${fault.what}, and ${fault.limit} is the most; make it smaller or the ${terms.gauge} coarser.`;
  }
}
