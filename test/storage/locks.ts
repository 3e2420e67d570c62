interface Waiter {
  readonly run: () => void;
  readonly signal?: AbortSignal;
}

/** Locks of a browser, shared by its tabs, as far as claims use them: exclusive, in order, with stealing. */
export class FakeLocks implements LockManager {
  readonly #held = new Map<string, { steal: () => void }>();
  readonly #queues = new Map<string, Waiter[]>();

  request<T>(name: string, callback: LockGrantedCallback<T>): Promise<Awaited<T>>;
  request<T>(name: string, options: LockOptions, callback: LockGrantedCallback<T>): Promise<Awaited<T>>;
  async request<T>(
    name: string,
    given: LockOptions | LockGrantedCallback<T>,
    then?: LockGrantedCallback<T>,
  ): Promise<Awaited<T>> {
    const options = typeof given === 'function' ? {} : given;
    const callback = typeof given === 'function' ? given : then!;
    await Promise.resolve();
    if (options.ifAvailable && this.#held.has(name)) return await callback(null);
    return await new Promise<Awaited<T>>((resolve, reject) => {
      const aborted = () => reject(new DOMException('aborted', 'AbortError'));
      const run = () => {
        options.signal?.removeEventListener('abort', aborted);
        const holder = { steal: () => reject(new DOMException('stolen', 'AbortError')) };
        this.#held.set(name, holder);
        void Promise.resolve(callback({ name, mode: 'exclusive' })).then((value) => {
          resolve(value);
          if (this.#held.get(name) === holder) this.#next(name);
        });
      };
      if (options.steal) this.#held.get(name)?.steal();
      if (options.steal || !this.#held.has(name)) run();
      else {
        this.#queues.set(name, [...(this.#queues.get(name) ?? []), { run, signal: options.signal }]);
        options.signal?.addEventListener('abort', aborted, { once: true });
      }
    });
  }

  query(): Promise<LockManagerSnapshot> {
    return Promise.resolve({ held: [...this.#held.keys()].map((name) => ({ name })), pending: [] });
  }

  #next(name: string): void {
    this.#held.delete(name);
    const queue = (this.#queues.get(name) ?? []).filter(({ signal }) => !signal?.aborted);
    const first = queue.shift();
    this.#queues.set(name, queue);
    first?.run();
  }
}
