import type { Design } from '../../src/piece';
import { planDesign } from '../../src/pickup';
import { curved, garments, moved, sides, straight } from './designs';
import { timed, type Rounds } from './rounds';

/**
 * How long planning takes, by the number of openings, as it is shipped: bundled, so that calls between modules cost
 * what they cost in the page. The aim is 10 ms for 10,000 openings, and for one movement of a drag far less. What is
 * planned and measured is kept by the objects of the document, so every round plans a copy that nobody has seen.
 */
export function* planRounds(): Generator<{ readonly what: string } & Rounds> {
  for (const [name, make] of Object.entries({ straight, curved, garments })) {
    for (const openings of [1000, 3000, 10_000]) {
      const copies = unseen(make(openings));
      const what = `a plan of ${name}, ${pointsOf(copies())} openings`;
      yield { what: `${what}, counted`, ...timed(() => planDesign(copies())) };
      yield { what: `${what}, every point`, ...timed(() => pointsOf(copies())) };
    }
  }
  for (const edges of [2, 20, 67]) {
    const made = sides(edges);
    const openings = pointsOf(made);
    let move = 0;
    // The corner goes to and fro over forty stitches.
    const dragged = () => moved(made, Math.abs((++move % 40) - 20));
    yield { what: `a corner dragged, ${openings} openings, counted`, ...timed(() => planDesign(dragged())) };
    yield { what: `a corner dragged, ${openings} openings, every point`, ...timed(() => pointsOf(dragged())) };
  }
}

/** Plans a design, and asks for every point of its pick-up. */
function pointsOf(made: Design): number {
  return planDesign(made).pickups[0]!.points.length;
}

/** Copies of a design, one for each call; making one is part of a round and takes some tenths of a ms. */
function unseen(made: Design): () => Design {
  return () => structuredClone(made);
}
