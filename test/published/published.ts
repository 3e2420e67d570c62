import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { it } from 'vitest';
import { planDesign, type DesignPlan, type PickupPlan, type PlannedEdge } from '../../src/pickup';
import { readDesign, type Design } from '../../src/piece';

export const folder = fileURLToPath(new URL('.', import.meta.url));

/**
 * A check against a published source, told in words: what the source says and, where its arithmetic is wrong, what is
 * right. The id is the case's in coverage.test.ts.
 */
export function source(id: string, title: string, address: string, says: string, check: () => void): void {
  it(`${says} [${id}: ${title}, ${address}]`, check);
}

/** The design file of this name in this folder, which must be read without a notice. */
export function design(name: string): Design {
  const { design: read, notices } = readDesign(textOf(name));
  if (notices.length > 0) throw new Error(`${name}: ${JSON.stringify(notices)}`);
  return read;
}

export function textOf(name: string): string {
  return readFileSync(`${folder}${name}.edgewise.json`, 'utf8');
}

export function plan(name: string): DesignPlan {
  return planDesign(design(name));
}

/** A pick-up of a design file, the first if no id is given. */
export function pickup(name: string, id?: string): PickupPlan {
  const found = plan(name).pickups.find((one) => id === undefined || one.pickup.id === id);
  if (!found) throw new Error(`${name} has no pick-up ${id ?? ''}`);
  return found;
}

/** The first pick-up of a design file with some of its fields changed. */
export function changed(name: string, change: Partial<Design['pickups'][number]>): PickupPlan {
  const read = design(name);
  const [first, ...rest] = read.pickups;
  if (!first) throw new Error(`${name} has no pick-up`);
  const [planned] = planDesign({ ...read, pickups: [{ ...first, ...change }, ...rest] }).pickups;
  if (!planned) throw new Error(`${name} was not planned`);
  return planned;
}

/** The edge of this id in a plan. */
export function edge(planned: PickupPlan, id: string, piece?: string): PlannedEdge {
  const found = planned.edges.find((one) => one.measured.id === id && (piece === undefined || one.piece.id === piece));
  if (!found) throw new Error(`no edge ${id}`);
  return found;
}

/** The only edge of a plan. */
export function onlyEdge(planned: PickupPlan): PlannedEdge {
  const [first, ...more] = planned.edges;
  if (!first || more.length > 0) throw new Error('not one edge');
  return first;
}

/** How often each length of run occurs on an edge: `{ 4: 17, 3: 1 }`. */
export function runsOf({ rhythm }: PlannedEdge): Record<number, number> {
  const tally: Record<number, number> = {};
  for (const { pick, times } of rhythm) tally[pick] = (tally[pick] ?? 0) + times;
  return tally;
}

/** The gaps between the runs of an edge. */
export function skipsOf({ rhythm }: PlannedEdge): number[] {
  return rhythm.flatMap(({ skip, times }) => Array.from({ length: times }, () => skip)).filter((skip) => skip > 0);
}

/** The counts of a plan's sections. */
export function sectionsOf({ sections }: PickupPlan): number[] {
  return sections.map(({ count }) => count);
}

/** How often each count occurs among the sections: `{ 36: 4, 37: 2 }`. */
export function tally(counts: readonly number[]): Record<number, number> {
  return Object.fromEntries([...new Set(counts)].map((count) => [count, counts.filter((one) => one === count).length]));
}

/** The kinds of a plan's notes, in order. */
export function kindsOf({ notes }: PickupPlan): string[] {
  return notes.map(({ kind }) => kind);
}

export function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, number) => total + number, 0);
}
