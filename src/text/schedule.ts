import type { MeasuredEdge } from '../shaping';
import { knitItems, knitParts, type KnitItem, type KnitPart } from './steps';
import type { Voice } from './voice';
import { everyNth, rowsText, times } from './words';

/** From this many equal amounts on, a list says how often instead of repeating the number. */
const LONG_LIST = 4;

/**
 * The shaping schedule of an edge as a knitter would say it, bottom up, with right-side rows first in the fabric:
 * `bind off 5, 4, 3, 2 at the right edge on every second row (at the start of right-side rows); decrease 1 every
 * second row 2 times, every fourth row 3 times; work 6 rows even`. Bind-offs and cast-ons come at the start of a row:
 * for a right-handed knitter of right-side rows on the fabric's right edge, of wrong-side rows on its left one.
 *
 * @param place what to call the edge instead of `right edge` or `left edge`, such as `neck edge`
 */
export function scheduleText(
  edge: Pick<MeasuredEdge, 'shape' | 'side' | 'finish' | 'stitches' | 'worked' | 'from'>,
  voice: Pick<Voice, 'terms' | 'hand'>,
  place?: string,
): string {
  if (edge.shape === 'horizontal') return horizontalText(edge, voice);
  return knitParts(edge)
    .map((part) => partText(part, voice, place))
    .join('; ');
}

function horizontalText(
  { finish, stitches }: Pick<MeasuredEdge, 'finish' | 'stitches'>,
  { terms }: Pick<Voice, 'terms'>,
): string {
  switch (finish) {
    case 'cast-on':
      return `cast on ${stitches}`;
    case 'bound-off':
      return `${terms.bindOff} ${stitches}`;
    case 'live':
      return `leave ${stitches} on hold`;
    case 'provisional':
      return `cast on ${stitches} provisionally`;
  }
}

function partText(part: KnitPart, voice: Pick<Voice, 'terms' | 'hand'>, place?: string): string {
  if (part.kind === 'flat') {
    const verb = part.stitches < 0 ? voice.terms.bindOff : 'cast on';
    return `${verb} ${Math.abs(part.stitches)} together`;
  }
  const at = ` at the ${place ?? `${part.side} edge`}`;
  const rightSide = (part.side === 'right') === (voice.hand === 'right');
  let placed = false;
  return knitItems(part.steps)
    .map((item) => {
      const where = placed || item.kind === 'even' ? '' : at;
      placed ||= item.kind !== 'even';
      return itemText(item, where, rightSide ? 'right-side' : 'wrong-side', voice);
    })
    .join('; ');
}

function itemText(item: KnitItem, where: string, rows: string, { terms }: Pick<Voice, 'terms'>): string {
  switch (item.kind) {
    case 'even':
      return `work ${rowsText(item.rows)} ${terms.even}`;
    case 'together': {
      const verb = item.out ? 'cast on' : terms.bindOff;
      const first = item.amounts[0] ?? 0;
      if (item.amounts.length === 1) {
        return `${verb} ${first}${where}${item.every > 0 ? ` at the start of the next ${rows} row` : ''}`;
      }
      const start = item.every % 2 === 0 ? ` (at the start of ${rows} rows)` : '';
      const interval = `on ${everyNth(item.every, 'row')}`;
      const alike = item.amounts.every((amount) => amount === first);
      if (alike) return `${verb} ${first}${where} ${interval} ${timesDigits(item.amounts.length)}${start}`;
      return `${verb} ${amountsText(item.amounts)}${where} ${interval}${start}`;
    }
    case 'single': {
      const verb = item.out ? 'increase' : 'decrease';
      const [only] = item.rates;
      if (item.rates.length === 1 && only?.times === 1) {
        return `${verb} 1${where}${only.every > 0 ? ' on the next row' : ''}`;
      }
      const rates = item.rates.map(({ every, times: n }) => `${everyNth(every, 'row')} ${timesDigits(n)}`);
      return `${verb} 1${where} ${rates.join(', ')}`;
    }
  }
}

/** `once`, `2 times`: after an ordinal, `every second row twice` is read wrong. */
function timesDigits(n: number): string {
  return n === 1 ? times(1) : `${n} times`;
}

/** `5, 4, 3, 2`, and `3, 2 (5 times)` where a number comes again and again. */
export function amountsText(amounts: readonly number[]): string {
  const runs: { amount: number; count: number }[] = [];
  for (const amount of amounts) {
    const last = runs.at(-1);
    if (last?.amount === amount) last.count += 1;
    else runs.push({ amount, count: 1 });
  }
  return runs
    .map(({ amount, count }) =>
      count < LONG_LIST ? Array.from({ length: count }, () => amount).join(', ') : `${amount} (${count} times)`,
    )
    .join(', ');
}
