import type { Units } from '../piece';
import type { PickupPlan, PlannedEdge } from '../pickup';
import type { MeasuredEdge } from '../shaping';
import { toUnit, type Gauge } from '../units';
import { shownOperands } from './factors';
import { fixedNumber, lengthText, percentText, plainNumber } from './numbers';
import { unitName } from './sum';
import type { Voice } from './voice';
import { counted, rowsText, stitchesText } from './words';

type Saying = Pick<Voice, 'terms' | 'units'>;

/** One step of a schedule and how often it comes. */
interface Flight {
  readonly across: number;
  readonly up: number;
  times: number;
}

/**
 * The arithmetic behind an edge's length: stitches and rows by the gauge, the hypotenuse of a slope, the steps of a
 * schedule one by one; then the part that is picked up, the join and the tape, where they count. Empty without a gauge.
 */
export function lengthLines(plan: PickupPlan, edge: PlannedEdge, voice: Saying): string[] {
  const { units } = voice;
  const gauge = edge.piece.gauge;
  if (!gauge || edge.edgeMm === null || edge.joinMm === null || edge.lengthMm === null) return [];
  const lines = outlineLines(edge.measured, gauge, voice);
  const [from, to] = edge.stretch.part;
  if (from !== 0 || to !== 1) {
    lines.push(`From ${share(from)} to ${share(to)} of it: ${lengthText(edge.edgeMm, units)}.`);
  }
  if (edge.measuredMm !== null) lines.push(`The tape says ${lengthText(edge.measuredMm, units)}, and that counts.`);
  else if (plan.pickup.measure === 'join' && edge.shape !== 'horizontal') {
    const inside = { 1: 'one stitch', 0.5: 'half a stitch', 0: 'no stitch' }[plan.pickup.inset];
    lines.push(`The join, ${inside} inside the edge: ${lengthText(edge.joinMm, units)}, and that counts.`);
  }
  return lines;
}

function share(part: number): string {
  return percentText(part).replace('.0%', '%');
}

function outlineLines(edge: MeasuredEdge, gauge: Gauge, voice: Saying): string[] {
  const { units } = voice;
  const over = toUnit(gauge.over, units);
  const [perStitch, perRow] = [gauge.stitches / over, gauge.rows / over];
  const { stitches, rows } = edge;
  const divided = (count: number, noun: string, per: number, decimals: number) =>
    divisionLine(count, noun, per, decimals, units);
  if (edge.shape === 'horizontal') return [divided(stitches, stitchesText(stitches), perStitch, 1)];
  if (edge.shape === 'vertical') return [divided(rows, rowsText(rows), perRow, 1)];
  if (edge.edge.path === 'stepped') return steppedLines(edge, perStitch, perRow, voice);
  const legs = [stitches / perStitch, rows / perRow];
  const [across, up] = shownOperands(legs, hypotenuse);
  const direct = fixedNumber(Math.hypot(...legs));
  const straight = `√(${across}² + ${up}²) = ${direct} ${units}`;
  return [
    `Across: ${divided(stitches, stitchesText(stitches), perStitch, decimalsOf(across))}`,
    `Up: ${divided(rows, rowsText(rows), perRow, decimalsOf(up))}`,
    ...(edge.edge.path === 'curve'
      ? [
          `Straight from corner to corner: ${straight}`,
          `Along the curve: ${fixedNumber(toUnit(edge.edgeMm, units))} ${units}`,
        ]
      : [`Along the slope: ${straight}`]),
  ];
}

/** `8 rows ÷ 3 to the cm = 2.7 cm`. */
function divisionLine(count: number, noun: string, per: number, decimals: number, units: Units): string {
  const [, shown] = shownOperands([count, per], (a = 0, b = 1) => a / b, decimals);
  return `${noun} ÷ ${shown} to the ${unitName(units)} = ${fixedNumber(count / per, decimals)} ${units}`;
}

function hypotenuse(across = 0, up = 0): number {
  return Math.hypot(across, up);
}

function decimalsOf(shown = ''): number {
  return Math.max(1, shown.split('.')[1]?.length ?? 0);
}

/** Each step is one straight line, its stitches across by its rows up; alike ones stand together. */
function steppedLines(
  edge: MeasuredEdge,
  perStitch: number,
  perRow: number,
  { units, terms: { even } }: Saying,
): string[] {
  const flights: Flight[] = [];
  for (const step of edge.worked) {
    const [across, up] = [Math.abs(step.across), Math.abs(step.up)];
    const known = flights.find((one) => one.across === across && one.up === up);
    if (known) known.times += 1;
    else flights.push({ across, up, times: 1 });
  }
  const lengths = flights.map(({ across, up }) => Math.hypot(across / perStitch, up / perRow));
  const all = (...each: readonly number[]) => each.reduce((sum, one, i) => sum + one * flights[i]!.times, 0);
  const shown = shownOperands(lengths, all);
  const lines = flights.map(({ across, up }, i) => {
    const decimals = decimalsOf(shown[i]);
    if (across === 0) return divisionLine(up, `${rowsText(up)} ${even}`, perRow, decimals, units);
    const [a, b] = shownOperands([across / perStitch, up / perRow], hypotenuse, decimals);
    const size = `${stitchesText(across)} by ${rowsText(up)}`;
    return `A step of ${size}: √(${a}² + ${b}²) = ${fixedNumber(lengths[i]!, decimals)} ${units}`;
  });
  const terms = flights.map(({ times }, i) => (times === 1 ? shown[i]! : `${times} × ${shown[i]}`));
  const total = `${plainNumber(all(...lengths))} ${units}`;
  return lines.length === 1 && flights[0]!.times === 1
    ? lines
    : [...lines, `${counted(edge.worked.length, 'step')}: ${terms.join(' + ')} = ${total}`];
}
