import type { PlannedEdge } from '../pickup';
import type { Rate } from '../piece';
import { rateLabel, ratioText } from '../text';

export interface RateOption {
  readonly value: string;
  readonly text: string;
  readonly rate: Rate;
}

/** The rates that can be chosen for an edge: by length, one each, the plain ratios, and the one it has. */
export function rateOptions(edge: PlannedEdge): RateOption[] {
  const rates: Rate[] = [
    ...(edge.lengthMm !== null && edge.wanted !== null ? [{ kind: 'length' } as const] : []),
    { kind: 'each' },
  ];
  const options = rates.map((rate): RateOption => ({ value: rateKey(rate), text: rateLabel(rate), rate }));
  for (const choice of edge.ratios) {
    const rate: Rate = { kind: 'ratio', pick: choice.pick, of: choice.of };
    options.push({ value: rateKey(rate), text: ratioText(choice), rate });
  }
  const now = rateKey(edge.rate);
  return options.some(({ value }) => value === now)
    ? options
    : [...options, { value: now, text: rateLabel(edge.rate), rate: edge.rate }];
}

export function rateKey(rate: Rate): string {
  switch (rate.kind) {
    case 'each':
    case 'length':
      return rate.kind;
    case 'ratio':
      return `${rate.pick}/${rate.of}`;
    case 'count':
      return 'count';
  }
}
