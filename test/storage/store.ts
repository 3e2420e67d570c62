/** A browser's store in memory, which may be full or shut. */
export class MemoryStore implements Storage {
  readonly #entries = new Map<string, string>();
  /** Refuses to write, as a full store does. */
  full = false;
  /** Refuses everything, as a store that is switched off does. */
  shut = false;

  get length(): number {
    this.#look();
    return this.#entries.size;
  }

  key(index: number): string | null {
    this.#look();
    return [...this.#entries.keys()][index] ?? null;
  }

  getItem(key: string): string | null {
    this.#look();
    return this.#entries.get(key) ?? null;
  }

  setItem(key: string, value: string): void {
    this.#look();
    if (this.full) throw new DOMException('full', 'QuotaExceededError');
    this.#entries.set(key, value);
  }

  removeItem(key: string): void {
    this.#look();
    this.#entries.delete(key);
  }

  clear(): void {
    this.#look();
    this.#entries.clear();
  }

  #look(): void {
    if (this.shut) throw new DOMException('shut', 'SecurityError');
  }
}
