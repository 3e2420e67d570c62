import type { PlanProblem } from '../pickup';
import { stitchesText } from './words';

/** One sentence that says why no plan can be made, where, and how to mend it. */
export function planProblemText(problem: PlanProblem): string {
  const where = problem.pickup === undefined ? '' : `${problem.pickup}: `;
  switch (problem.kind) {
    case 'too-many-increases':
      return `${where}${stitchesText(problem.from)} can't be increased to ${problem.to} in one row, since that is more increases than stitches; pick up at least ${Math.ceil(problem.to / 2)} or ask for ${2 * problem.from} at most.`;
    case 'too-many-decreases':
      return `${where}${stitchesText(problem.from)} can't be decreased to ${problem.to} in one row, since a decrease needs two stitches; pick up ${2 * problem.to} at most or ask for at least ${Math.ceil(problem.from / 2)}.`;
    case 'nothing-to-pick-up':
      return `${where}none of its edges has an opening; name at least one edge of two stitches or rows under "along".`;
    case 'no-marker':
      return `${where}there is no marker ${problem.marker}; ${problem.markers === 0 ? 'give it sections first' : `name one from 1 to ${problem.markers}`}.`;
  }
}
