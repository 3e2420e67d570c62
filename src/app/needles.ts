import type { NeedlePlace } from '../pickup';
import { Places } from '../storage';
import type { NeedlesDesk } from '../ui';
import type { Desk } from './desk';

/** Keeps the places in the pick-ups of whatever design is on the bench. */
export class NeedlesKeeper implements NeedlesDesk {
  readonly places = new Places(() => localStorage);
  readonly #desk: Desk;

  constructor(desk: Desk) {
    this.#desk = desk;
  }

  get opened(): string | null {
    return this.places.opened(this.#work);
  }

  get(pickup: string): unknown {
    return this.places.get(this.#work, pickup);
  }

  put(pickup: string, place: NeedlePlace): boolean {
    return this.places.put(this.#work, pickup, place);
  }

  leave(): void {
    this.places.leave(this.#work);
  }

  listen(onchange: () => void): () => void {
    return this.places.listen(this.#work, onchange);
  }

  get #work(): string {
    return this.#desk.bench?.origin ?? '';
  }
}
