import type { PickupPlan, PlannedEdge } from '../pickup';
import type { Units } from '../piece';
import { toUnit } from '../units';
import { shownOperands } from './factors';
import { fixedNumber, plainNumber, wantedText } from './numbers';
import { everyPlace, placesText } from './places';
import type { Voice } from './voice';

/**
 * The arithmetic of an edge's number as a teacher writes it on the board: `10.4 cm × 2.2 stitches to the cm = 22.9, so
 * 23`. Where the total moved it, that is said: `…, so 23; 22 here, to bring the total to 108`.
 */
export function edgeSum(plan: PickupPlan, edge: PlannedEdge, voice: Pick<Voice, 'terms' | 'units'>): string {
  const places = placesText(plan, edge, voice.terms);
  switch (edge.rate.kind) {
    case 'each':
      return edge.count === edge.openings
        ? `${edge.count}, ${everyPlace(plan, edge, voice.terms)}`
        : `${edge.count} from ${places}`;
    case 'ratio': {
      const { pick, of } = edge.rate;
      const exact = (edge.openings * pick) / of;
      return `${edge.openings} × ${pick}/${of} = ${wantedText(exact)}${settled(edge.count, exact, plan)}`;
    }
    case 'count':
      return `${edge.count}, as given`;
    case 'length':
      return lengthSum(plan, edge, voice) ?? `${edge.count} from ${places}`;
  }
}

/** What a length is counted in, within a sentence. */
export function unitName(units: Units): string {
  return units === 'in' ? 'inch' : 'cm';
}

function lengthSum(plan: PickupPlan, edge: PlannedEdge, { units }: Pick<Voice, 'units'>): string | null {
  const { bandGauge: gauge, pickup } = plan;
  if (edge.lengthMm === null || edge.wanted === null || gauge === null) return null;
  const left = 1 - pickup.band.drawIn / 100;
  const length = toUnit(edge.lengthMm, units);
  const perUnit = gauge.stitches / toUnit(gauge.over, units);
  const [a, b] = shownOperands([length, perUnit], (one = 0, other = 0) => one * other * left);
  const drawn = left === 1 ? '' : ` × ${plainNumber(left, 4)}`;
  return `${a} ${units} × ${b} stitches to the ${unitName(units)}${drawn} = ${wantedText(edge.wanted)}${settled(edge.count, edge.wanted, plan)}`;
}

/** Said where the count is not what the number alone would be rounded to. */
function settled(count: number, exact: number, plan: PickupPlan): string {
  const near = fixedNumber(exact);
  const alone = near.endsWith('.5') ? [Math.floor(exact), Math.ceil(exact)] : [Math.round(exact)];
  if (alone.length === 1 && alone[0] === count) return '';
  const why = alone.includes(count) ? '' : `, to bring the total to ${plan.picked}`;
  return `; ${count} here${why}`;
}
