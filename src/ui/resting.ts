/** How long a hand stays where it is before it rests, ms. */
const STILL = 100;

/**
 * How many frames it has to be shown where it is after that, without having moved: a busy machine, whose movements wait
 * for the page, doesn't take its own slowness for rest.
 */
const FRAMES = 6;

/** Tells when a hand that holds something has come to rest. */
export class Resting {
  readonly #rested: () => void;
  #timer: ReturnType<typeof setTimeout> | null = null;
  #frame = 0;
  #moved = 0;

  /** @param rested is called once the hand has not moved for a while */
  constructor(rested: () => void) {
    this.#rested = rested;
  }

  /** The hand has moved, or moves no more. */
  moved(holds: boolean): void {
    cancelAnimationFrame(this.#frame);
    if (!holds) {
      if (this.#timer !== null) clearTimeout(this.#timer);
      this.#timer = null;
      return;
    }
    this.#moved = performance.now();
    // One timer serves many movements: it looks when the last one was.
    this.#timer ??= setTimeout(this.#look, STILL);
  }

  readonly #look = (): void => {
    const left = STILL - (performance.now() - this.#moved);
    this.#timer = left > 0 ? setTimeout(this.#look, left) : null;
    if (this.#timer === null) this.#wait(FRAMES);
  };

  #wait(frames: number): void {
    this.#frame = requestAnimationFrame(() => (frames > 1 ? this.#wait(frames - 1) : this.#rested()));
  }
}
