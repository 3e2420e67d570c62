import { newId } from './newId';
import type { Waiting } from './waiting';
import type { Works } from './works';

/**
 * Moves what waits into the database. Each work leaves its waiting place only once it is written. One that was changed
 * elsewhere too is kept beside the other, under an id of its own, so that neither is lost.
 * @returns how many were kept beside another
 */
export async function moveIn(waiting: Waiting, works: Works): Promise<number> {
  let beside = 0;
  for (const work of waiting.list()) {
    const { ok } = await works.write(work);
    // An untouched sample is no work: the other one stands.
    if (!ok && work.own) {
      await works.write({ ...work, id: newId(), revision: 0 });
      beside += 1;
    }
    waiting.remove(work);
  }
  return beside;
}
