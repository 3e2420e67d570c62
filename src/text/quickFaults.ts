import type { QuickFault, QuickField, QuickUnit, Units } from '../piece';
import { lengthText, plainNumber } from './numbers';
import { quickGaugeOver, type QuickUnread } from './readQuick';
import { counted, stitchesText } from './words';

const NOUNS: Readonly<Record<Exclude<QuickUnit, 'length'>, readonly [one: string, many: string]>> = {
  row: ['row', 'rows'],
  ridge: ['ridge', 'ridges'],
  chain: ['chain', 'chains'],
  stitch: ['stitch', 'stitches'],
};

/** `88 rows`, `1 chain`: how much of an edge is asked about, without its length. */
export function quickCounted(count: number, unit: Exclude<QuickUnit, 'length'>): string {
  return counted(count, ...NOUNS[unit]);
}

/** Why a question has no answer, and what to type instead: one sentence, to stand beside its field. */
export function quickFaultText(fault: QuickFault | QuickUnread, units: Units): string {
  switch (fault.reason) {
    case 'empty':
      return 'Type a number here.';
    case 'not-a-number':
      return `“${fault.typed}” is not a number: type one, such as 71.`;
    case 'ambiguous':
      return `“${fault.typed}” may be thousands or a decimal: type it without a sign, or with a point.`;
    case 'unknown-unit':
      return `“${fault.typed}” has a unit that is not known here: use cm, mm or in.`;
    case 'not-whole':
      return `${plainNumber(fault.found, 2)} is not whole: type ${Math.floor(fault.found)} or ${Math.ceil(fault.found)}.`;
    case 'out-of-range':
      return rangeText(fault, units);
    case 'too-many-stitches': {
      const room = quickCounted(fault.over, fault.unit === 'length' ? 'row' : fault.unit);
      const [, many] = NOUNS[fault.unit === 'length' ? 'row' : fault.unit];
      return `${room} have room for ${fault.places}, and the first row can make ${fault.most} of them at most: ask for that or fewer, or for more ${many}.`;
    }
    case 'more-sections-than-stitches':
      return `${stitchesText(fault.place)} can't fill ${fault.found} sections: ask for ${fault.place} at most.`;
    case 'no-such-gauge':
      return `That would be ${scaled(fault.per10cm, units)} stitches to ${overText(units)}, and knitting has ${scaled(fault.least, units)} to ${scaled(fault.most, units)}: check the count and the length.`;
    case 'too-many-rows':
      return `That edge would have ${fault.found} rows, and ${fault.most} is the most: check the length and its rows.`;
    case 'too-many-increases':
      return `${stitchesText(fault.have)} can't take ${fault.by} increases in one row, since that is more increases than stitches: ask for ${fault.have} at most.`;
    case 'too-many-decreases':
      return `${stitchesText(fault.have)} can't take ${fault.by} decreases in one row, since each takes two: ask for ${fault.most} at most.`;
    case 'leaves-too-few':
      return `${stitchesText(fault.to)} would be left: keep ${fault.least} at least.`;
    case 'wrong-way':
      return fault.to === fault.have
        ? `There are ${fault.have} already, so nothing changes: type another number.`
        : `${fault.to} is ${fault.to > fault.have ? 'more' : 'fewer'} than ${fault.have}: to ${fault.change}, type a ${fault.change === 'increase' ? 'higher' : 'lower'} number.`;
  }
}

function rangeText(fault: Extract<QuickFault, { reason: 'out-of-range' }>, units: Units): string {
  const { field, found, least, most, unit } = fault;
  const off = found < least ? 'too few' : 'too many';
  if (field === 'per10cm') {
    const many = unit === 'stitch' ? 'stitches' : 'rows';
    return `Type ${scaled(least, units)} to ${scaled(most, units)} ${many} to ${overText(units)}: ${scaled(found, units)} is ${off}.`;
  }
  if (unit === 'length') {
    const size = found < least ? 'too short' : 'too long';
    return `Type a length from ${lengthText(least, units)} to ${lengthText(most, units)}: ${lengthText(found, units)} is ${size}.`;
  }
  return `Type ${least} to ${most} ${ASKED[field] ?? NOUNS[unit][1]}: ${plainNumber(found, 2)} is ${off}.`;
}

const ASKED: Readonly<Partial<Record<QuickField, string>>> = { sections: 'sections' };

/** `10 cm`, `4 in`: over what a gauge is told. */
export function overText(units: Units): string {
  return units === 'in' ? '4 in' : '10 cm';
}

function scaled(per10cm: number, units: Units): string {
  return plainNumber((per10cm * quickGaugeOver(units)) / 100);
}
