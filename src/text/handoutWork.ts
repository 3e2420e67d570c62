import type { Design, Problem, StarterWords } from '../piece';
import type { PlanProblem } from '../pickup';
import { starterWords } from './starters';
import { quoted } from './words';

/** What the records of a handout's work are called, and why a gauge has no plan. */
export interface HandoutWords {
  readonly strip: StarterWords;
  readonly why: (fault: NoPlanAt) => string;
}

type NoPlanAt = { readonly kind: 'no-gauge'; readonly piece: string } | Problem | PlanProblem;

/** The words that planning a handout asks for, in the voice of its design. */
export function handoutWorkWords(design: Pick<Design, 'terms' | 'units' | 'hand'>): HandoutWords {
  return { strip: starterWords('strip', design), why: noPlanAtText };
}

/** Why the same work can't be planned at another gauge: a few words for a table. */
export function noPlanAtText(fault: NoPlanAt): string {
  switch (fault.kind) {
    case 'no-gauge':
      return `${quoted(fault.piece)} has no gauge, so no size to keep`;
    case 'no-length':
    case 'schedule-flat':
      return `too coarse: edge ${quoted(fault.edge)} would vanish`;
    case 'crossing':
      return `too coarse: ${quoted(fault.first)} would run into ${quoted(fault.second)}`;
    case 'piece-too-big':
      return `too fine: more than ${fault.limit} ${fault.what}`;
    case 'gauge-bounds':
      return `the band would have ${fault.per10cm < fault.min ? 'too few' : 'too many'} ${fault.what}`;
    case 'too-many-increases':
    case 'too-many-decreases':
      return `${fault.from} can't be made ${fault.to} in one row`;
    case 'nothing-to-pick-up':
      return 'no place to pick up from';
    default:
      return 'the outline does not fit its grid';
  }
}
