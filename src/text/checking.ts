/** The words of the panel that checks a pattern. */
import type { PickupPlan } from '../pickup';

export const CHECKING = {
  says: 'What the pattern says',
  edges: 'Counts and ratios, edge by edge',
  edge: 'Edge',
  count: 'Count',
  ratio: 'Ratio',
  ratioExample: '3 of 4',
  per: 'Counted in',
  whole: 'In all, and what came out',
  table: 'What is stated, beside what this piece needs',
  pattern: 'Pattern says',
  have: 'You have',
  needs: 'This piece needs',
  off: 'Off by',
  verdict: 'Verdict',
  implies: 'Gauge it implies',
  likely: 'Likely cause',
  sums: 'Does it agree with itself?',
  thresholds: 'Where the verdicts change',
  common: 'Common practice: set your own.',
  unreadRatio: 'Give a ratio as two numbers, such as 3 of 4 or 3/4.',
} as const;

/** The label of a field that says something of one edge: `Ratio: Front, neck left`. */
export function onEdgeLabel(what: string, title: string): string {
  return `${what}: ${title}`;
}

/** The head of the column of implied gauges, in the terms of the country. */
export function impliesHead(gauge: string): string {
  return CHECKING.implies.replace('Gauge', gauge.charAt(0).toUpperCase() + gauge.slice(1));
}

/** What this piece needs, the real number beside the whole one: `80`, `23 (23.5)`. */
export function needsText(wanted: string, planned: string): string {
  return wanted === '' || wanted === `${planned}.0` ? planned : `${planned} (${wanted})`;
}

/** The gist of a check, beside its closed panel: `2 of 3 lie flat`; empty where nothing is stated. */
export function checkGist({ stated }: Pick<PickupPlan, 'stated'>): string {
  const flat = stated.filter(({ verdict }) => verdict === 'lies flat').length;
  return stated.length === 0 ? '' : `${flat} of ${stated.length} ${stated.length === 1 ? 'lies' : 'lie'} flat`;
}
