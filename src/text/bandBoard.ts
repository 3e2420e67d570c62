import type { BandCorner, BandEdge, PickupPlan } from '../pickup';
import { toUnit } from '../units';
import { shownOperands } from './factors';
import { fixedNumber, plainNumber } from './numbers';
import { rowOrRound } from './rowOrRound';
import { unitName } from './sum';
import type { Voice } from './voice';
import { counted } from './words';

type Saying = Pick<Voice, 'units'>;

const product = (...all: readonly number[]) => all.reduce((value, one) => value * one, 1);

/** The arithmetic of a free edge: the depth, what each kind of corner and the curves add, the sum, its stitches. */
export function freeEdgeLines(plan: PickupPlan, free: BandEdge, { units }: Saying): string[] {
  const { bandGauge: gauge } = plan;
  if (!gauge) return [];
  const perUnit = gauge.rows / toUnit(gauge.over, units);
  const depth = toUnit(free.depthMm, units);
  const left = 1 - plan.pickup.band.drawIn / 100;
  const perStitch = gauge.stitches / toUnit(gauge.over, units);
  const noun = `${rowOrRound(plan)}s`;
  const [, rate] = shownOperands([free.rows, perUnit], (a = 0, b = 1) => a / b);
  const lines = [`Depth: ${free.rows} ${noun} ÷ ${rate} to the ${unitName(units)} = ${fixedNumber(depth)} ${units}`];
  const addends = [toUnit(free.edgeMm, units)];
  for (const { n, turn } of turnsOf(free.corners)) {
    const tangent = Math.tan(Math.abs(turn) / 2);
    const adds = 2 * n * tangent * depth;
    const [a, b] = shownOperands([tangent, depth], (one = 0, other = 0) => 2 * n * one * other);
    const which = counted(n, `${turn > 0 ? 'outer' : 'inner'} corner`);
    lines.push(
      `${which} of ${degrees(turn)} degrees, half of which has the tangent ${a}: ${n} × 2 × ${a} × ${b} = ${fixedNumber(adds)} ${units}`,
    );
    addends.push(Math.sign(turn) * adds);
  }
  const curve = toUnit(free.freeMm, units) - addends.reduce((sum, one) => sum + one, 0);
  if (Math.abs(curve) >= 0.05) {
    const turn = curve / depth;
    const [a, b] = shownOperands([Math.abs(turn), depth], product);
    lines.push(
      `Curves turn by ${degrees(turn)} degrees, in radians ${a}: ${a} × ${b} = ${fixedNumber(Math.abs(curve))} ${units}`,
    );
    addends.push(curve);
  }
  const [first, ...rest] = addends;
  const signed = (...sizes: readonly number[]) =>
    sizes.reduce((sum, size, i) => sum + (i > 0 && rest[i - 1]! < 0 ? -size : size), 0);
  const sizes = [first!, ...rest.map(Math.abs)];
  const shown = shownOperands(sizes, signed);
  const sum = shown.map((size, i) => (i === 0 ? size : ` ${rest[i - 1]! < 0 ? '−' : '+'} ${size}`)).join('');
  const length = toUnit(free.freeMm, units);
  if (rest.length > 0) lines.push(`In all: ${sum} = ${fixedNumber(length)} ${units}`);
  const factors = [length, perStitch, ...(left === 1 ? [] : [left])];
  const [long, wide, drawn] = shownOperands(factors, product);
  const stays = drawn === undefined ? '' : ` × ${drawn}`;
  lines.push(
    `${long} ${units} × ${wide} stitches to the ${unitName(units)}${stays} = ${fixedNumber(free.freeStitches)}`,
  );
  return lines;
}

/** The arithmetic of a corner: tan(angle / 2) * row height / stitch width in a row, by all rows. */
export function cornerLines(plan: PickupPlan, free: BandEdge, corner: BandCorner, { units }: Saying): string[] {
  const { bandGauge: gauge } = plan;
  if (!gauge) return [];
  const over = toUnit(gauge.over, units);
  const left = 1 - plan.pickup.band.drawIn / 100;
  const noun = rowOrRound(plan);
  const tangent = Math.tan(Math.abs(corner.turn) / 2);
  const work = (a = 0, b = 0, c = 1, d = 1) => ((a * b) / c) * d;
  const [a, b, c, d] = shownOperands([tangent, gauge.stitches / over, gauge.rows / over, left], work, 2);
  const drawn = left === 1 ? '' : ` × ${d}`;
  const all = corner.perRow * free.rows;
  const [each] = shownOperands([corner.perRow, free.rows], product);
  const so = fixedNumber(all) === fixedNumber(corner.times) ? '' : `, so ${corner.times}`;
  const per = unitName(units);
  return [
    `${degrees(corner.turn)} degrees, half of which has the tangent ${a}.`,
    `Each side in a ${noun}: ${a} × ${b} stitches to the ${per} ÷ ${c} ${noun}s to the ${per}${drawn} = ${fixedNumber(corner.perRow, 2)}`,
    `In ${counted(free.rows, noun)}: ${each} × ${free.rows} = ${fixedNumber(all)}${so}`,
  ];
}

/** Corners by how far they turn, with their number. */
function turnsOf(corners: readonly BandCorner[]): { readonly turn: number; readonly n: number }[] {
  const turns: { turn: number; n: number }[] = [];
  for (const { turn } of corners) {
    const known = turns.find((one) => Math.abs(one.turn - turn) < 1e-9);
    if (known) known.n += 1;
    else turns.push({ turn, n: 1 });
  }
  return turns;
}

function degrees(turn: number): string {
  return plainNumber((Math.abs(turn) * 180) / Math.PI);
}
