import { gaugeProblem } from './checkCorners';
import type { Handout } from './handout';
import { placeOf } from './place';
import type { Problem } from './problems';

/** What is wrong with a handout's blocks or gauges, once each field by itself is right, or null. */
export function handoutProblem(root: unknown, handout: Handout | undefined): Problem | null {
  if (!handout) return null;
  const { blocks, gauges } = handout;
  const twice = blocks.findIndex((block, i) => blocks.indexOf(block) < i);
  const block = blocks[twice];
  if (block !== undefined) return { kind: 'block-twice', at: placeOf(root, ['handout', 'blocks', twice]), block };
  for (const [i, gauge] of gauges.entries()) {
    const problem = gaugeProblem(gauge, placeOf(root, ['handout', 'gauges', i]));
    if (problem) return problem;
  }
  return null;
}
