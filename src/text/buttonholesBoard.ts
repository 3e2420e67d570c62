import type { PickupPlan } from '../pickup';
import { gapsText } from './buttonholes';
import { plainNumber } from './numbers';
import { counted } from './words';

/**
 * How the stitches between the buttonholes are reckoned: what the ends and the holes leave, shared out over one gap less
 * than there are holes (http://knittingrobin.blogspot.com/2012/08). No lines where there are no gaps.
 */
export function buttonholesBoard({ pickup: { buttonholes: wish }, holes: row, target }: PickupPlan): string[] {
  if (!wish || !row || row.gaps.length === 0) return [];
  const { holes, stitches, from, to } = wish;
  const left = target - from - to - holes * stitches;
  const gaps = holes - 1;
  const least = Math.floor(left / gaps);
  const longer = left - gaps * least;
  const kinds = `${counted(gaps - longer, 'gap')} of ${least} and ${longer} of ${least + 1}`;
  return [
    `${target} in all, less both ends and the holes: ${target} − ${from} − ${to} − ${holes} × ${stitches} = ${left}`,
    `One gap less than there are holes: ${holes} − 1 = ${gaps}`,
    `${left} ÷ ${gaps} = ${plainNumber(left / gaps, 2)}${longer === 0 ? '' : `, so ${kinds}`}`,
    ...(longer === 0 ? [] : [`${gaps - longer} × ${least} + ${longer} × ${least + 1} = ${left}`]),
    ...(row.rib ? [`Moved into the purl columns of the rib: ${gapsText(row)}.`] : []),
  ];
}
