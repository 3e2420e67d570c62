/**
 * How many frames a hand stays where it is before it rests. Frames and not a time, so that a busy machine doesn't take
 * its own slowness for rest.
 */
const FRAMES = 10;

/** Tells when a hand that holds something has come to rest. */
export class Resting {
  readonly #rested: () => void;
  #frame = 0;

  /** @param rested is called once the hand has not moved for some frames */
  constructor(rested: () => void) {
    this.#rested = rested;
  }

  /** The hand has moved, or moves no more. */
  moved(holds: boolean): void {
    cancelAnimationFrame(this.#frame);
    if (holds) this.#wait(FRAMES);
  }

  #wait(frames: number): void {
    this.#frame = requestAnimationFrame(() => (frames > 1 ? this.#wait(frames - 1) : this.#rested()));
  }
}
