import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { planDesign, type DesignPlan, type PickupPlan } from '../../src/pickup';
import { readDesign, type ReadResult } from '../../src/piece';
import type { MeasuredEdge } from '../../src/shaping';

// Written in one, the bundler would make it an address of the page in tests that pretend to be a browser.
const here = import.meta.url;

export const samplesFolder = fileURLToPath(new URL('../../static/samples', here).href);

/** Every sample design, by the name of its file without the ending. */
export const SAMPLES = ['blanket', 'cardigan-front', 'heel-flap', 'pullover', 'strip', 'vest'] as const;

export type SampleName = (typeof SAMPLES)[number];

export function sampleFile(name: SampleName): string {
  return `${samplesFolder}/${name}.edgewise.json`;
}

export function readSample(name: SampleName): ReadResult {
  return readDesign(readFileSync(sampleFile(name), 'utf8'));
}

export function planSample(name: SampleName): DesignPlan {
  return planDesign(readSample(name).design);
}

export function pickupOf(plan: DesignPlan, id: string): PickupPlan {
  const found = plan.pickups.find(({ pickup }) => pickup.id === id);
  if (!found) throw new Error(`no pick-up ${id}`);
  return found;
}

/** The edge `edge` of piece `piece`, measured. */
export function edgeOf(plan: DesignPlan, piece: string, edge: string): MeasuredEdge {
  const found = plan.measured.find((one) => one.piece.id === piece)?.edges.find(({ id }) => id === edge);
  if (!found) throw new Error(`no edge ${edge} on ${piece}`);
  return found;
}

/** The counts of a pick-up's edges, by piece and edge, in working order. */
export function countsOf(pickup: PickupPlan): Record<string, number> {
  return Object.fromEntries(pickup.edges.map(({ piece, measured, count }) => [`${piece.id} ${measured.id}`, count]));
}
