import { isDeepStrictEqual } from 'node:util';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { changed, redo, startHistory, step, undo, type History } from '../../src/editor';
import { planDesign, PlanError, type DesignPlan } from '../../src/pickup';
import { checkDesign, DesignError, type Design, type Problem } from '../../src/piece';
import { readSample, SAMPLES } from '../samples/sample';
import { Chance, randomChange } from './randomChange';

const COMMANDS = 1000;

/** Seconds on a machine that has other things to do; it takes a few on one that has not. */
const PATIENCE = 120;

/** What an edit can make of an outline that can't be knitted. Nothing else may come of one. */
const REFUSED: ReadonlySet<Problem['kind']> = new Set([
  'crossing',
  'clockwise',
  'no-length',
  'schedule-off',
  'schedule-flat',
  'same-stretch',
  'piece-too-big',
  'too-few',
  'far-corner',
]);

function problemOf(design: Design): Problem['kind'] | null {
  try {
    checkDesign(design);
    return null;
  } catch (error) {
    if (error instanceof DesignError) return error.problem.kind;
    throw error;
  }
}

/** Edges that a pick-up points at and that are not there, or of which it says something without going along them. */
function strays({ pieces, pickups }: Design): string[] {
  const edges = new Set(pieces.flatMap(({ id, outline }) => outline.map((edge) => `${id} ${edge.id}`)));
  return pickups.flatMap(({ along, rates, measured, stated }) => {
    const run = new Set(along.map(({ piece, edge }) => `${piece} ${edge}`));
    const said = [...rates, ...measured, ...stated].map(({ piece, edge }) => `${piece} ${edge}`);
    return [...[...run].filter((ref) => !edges.has(ref)), ...said.filter((ref) => !run.has(ref))];
  });
}

function planOf(design: Design): DesignPlan | string {
  try {
    return planDesign(design);
  } catch (error) {
    if (error instanceof PlanError) return JSON.stringify(error.problem);
    throw error;
  }
}

/** All the way, one step after the other. */
function allTheWay<T>(history: History<T>, move: (history: History<T>) => History<T>, steps: number): History<T> {
  let at = history;
  for (let i = 0; i < steps; i++) at = move(at);
  return at;
}

/** Makes random commands as the workbench does: what makes no valid design is refused and is no step. */
function worked(first: Design, chance: Chance): History<Design> {
  let history = startHistory(first);
  for (let i = 1; i <= COMMANDS; i++) {
    const change = randomChange(chance, history.present);
    const next = changed(history.present, change);
    const problem = problemOf(next);
    if (problem === null) history = step(history, next);
    else expect(REFUSED, `${problem} after ${JSON.stringify(change)}`).toContain(problem);
    expect(strays(next), JSON.stringify(change)).toEqual([]);
    const plan = planOf(history.present);
    const afresh = planOf(structuredClone(history.present));
    expect(isDeepStrictEqual(plan, afresh), `the plan after command ${i} is the one made afresh`).toBe(true);
  }
  return history;
}

describe.each(SAMPLES)('%s, after a thousand random commands', (name) => {
  it(
    'is valid, goes back to the very design it was, and forward again',
    () => {
      const { design: first } = readSample(name);
      const before = structuredClone(first);
      fc.assert(
        fc.property(fc.integer(), (seed) => {
          const last = worked(first, new Chance(seed));
          const steps = last.past.length;
          expect(steps).toBeGreaterThan(COMMANDS / 4);
          const back = allTheWay(last, undo, steps);
          expect(back.present).toBe(first);
          expect(undo(back).present).toBe(first);
          const forth = allTheWay(back, redo, steps);
          expect(forth.present).toBe(last.present);
          expect(forth.past.every((one, i) => one === last.past[i])).toBe(true);
          expect(first).toEqual(before);
        }),
        // A smaller seed is no simpler case.
        { numRuns: 1, endOnFailure: true },
      );
    },
    PATIENCE * 1000,
  );
});
