/** What tabs tell each other. */
export type NewsItem =
  /** A work was written; whoever shows it reads it again. */
  | { readonly kind: 'written'; readonly id: string }
  | { readonly kind: 'removed'; readonly id: string }
  /** A tab wants to take a work over: whoever has it writes down what is not written yet … */
  | { readonly kind: 'wanted'; readonly id: string }
  /** … and says so. */
  | { readonly kind: 'settled'; readonly id: string };

const CHANNEL = 'edgewise';

/** Word from tab to tab of this browser. A tab does not hear itself. */
export class News {
  readonly #channel = new BroadcastChannel(CHANNEL);
  readonly #listeners = new Set<(item: NewsItem) => void>();

  constructor() {
    this.#channel.onmessage = (event: MessageEvent<NewsItem>) => {
      for (const listener of [...this.#listeners]) listener(event.data);
    };
  }

  tell(item: NewsItem): void {
    this.#channel.postMessage(item);
  }

  /** @returns what ends the listening */
  listen(listener: (item: NewsItem) => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  /** Resolves when something is heard, or after so many ms. */
  heard(wanted: (item: NewsItem) => boolean, patience: number): Promise<void> {
    return new Promise((resolve) => {
      const end = () => {
        clearTimeout(timer);
        stop();
        resolve();
      };
      const timer = setTimeout(end, patience);
      const stop = this.listen((item) => {
        if (wanted(item)) end();
      });
    });
  }

  close(): void {
    this.#channel.close();
  }
}
