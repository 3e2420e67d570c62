const lockOf = (id: string) => `edgewise.work.${id}`;
const ID = /^edgewise\.work\.(.*)$/s;

/** What a tab hears of the work it has claimed. */
export interface Claimant {
  /** The work is this tab's now, after it had waited for it. */
  readonly onmine: (id: string) => void;
  /** Another tab took the work over. */
  readonly onlost: (id: string) => void;
}

/**
 * Which tab works on what. A work is one tab's at a time, held by a lock of the browser that goes when the tab does. A
 * browser without locks (a page that came over a plain connection has none) lets everybody work; what is written is
 * then still never written over, for the database counts revisions.
 */
export class Claims {
  readonly #locks: LockManager | null;
  readonly #claimant: Claimant;
  #claim: AbortController | null = null;
  /** By id, when the browser has taken back what this tab let go of: it does so a moment later. */
  readonly #ends = new Map<string, Promise<void>>();

  constructor(locks: LockManager | null, claimant: Claimant) {
    this.#locks = locks;
    this.#claimant = claimant;
  }

  /** Claims a work and lets go of the one before. False when another tab has it; this one then waits for it. */
  async claim(id: string): Promise<boolean> {
    this.release();
    if (!this.#locks) return true;
    const claim = new AbortController();
    this.#claim = claim;
    // Left and come back to at once, a work is this tab's still, and no other's.
    await this.#ends.get(id);
    if (this.#claim !== claim) return false;
    if (await this.#ask(id, claim, { ifAvailable: true })) return true;
    if (!claim.signal.aborted) this.#wait(id, claim);
    return false;
  }

  /** Takes a work over, whoever has it. */
  async take(id: string): Promise<void> {
    this.release();
    if (!this.#locks) return;
    const claim = new AbortController();
    this.#claim = claim;
    await this.#ask(id, claim, { steal: true });
  }

  /** Lets go of what is claimed or waited for. */
  release(): void {
    this.#claim?.abort();
    this.#claim = null;
  }

  /** The ids of all works that some tab has. */
  async held(): Promise<Set<string>> {
    const { held = [] } = (await this.#locks?.query()) ?? {};
    return new Set(held.flatMap(({ name }) => ID.exec(name ?? '')?.[1] ?? []));
  }

  /** Resolves once it is known whether the lock was got; it is then held until the claim is released or taken. */
  #ask(id: string, claim: AbortController, how: LockOptions): Promise<boolean> {
    const locks = this.#locks!;
    return new Promise((resolve, reject) => {
      let got = false;
      const hold = (lock: Lock | null): Promise<void> | undefined => {
        got = lock !== null;
        resolve(got);
        return got ? aborted(claim.signal) : undefined;
      };
      const ended = locks
        .request(lockOf(id), how, hold)
        .catch((error: unknown) => {
          if (!isAbort(error)) reject(error instanceof Error ? error : new Error(String(error)));
          else if (got && !claim.signal.aborted) this.#claimant.onlost(id);
          else resolve(false);
        })
        .then(() => {
          if (this.#ends.get(id) === ended) this.#ends.delete(id);
        });
      this.#ends.set(id, ended);
    });
  }

  #wait(id: string, claim: AbortController): void {
    void this.#ask(id, claim, { signal: claim.signal }).then((got) => {
      if (got && !claim.signal.aborted) this.#claimant.onmine(id);
    });
  }
}

function aborted(signal: AbortSignal): Promise<void> {
  if (signal.aborted) return Promise.resolve();
  return new Promise((resolve) => signal.addEventListener('abort', () => resolve(), { once: true }));
}

function isAbort(error: unknown): boolean {
  return error instanceof DOMException && error.name === 'AbortError';
}
