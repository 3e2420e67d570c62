/** Work that takes less than this is done before a line about it could be read, ms. */
const SLOW = 500;

export interface Progress {
  /** Says what is being done, once the work has proved slow. */
  step(text: string): void;
  /** Wipes the line. */
  end(): void;
}

/** A progress line on a terminal, and only for slow work; nothing anywhere else. */
export function progressOn(stream: NodeJS.WriteStream, now: () => number = Date.now): Progress {
  const start = now();
  let shown = false;
  return {
    step(text) {
      if (!stream.isTTY || now() - start < SLOW) return;
      stream.write(`\r\u001b[2K${text}`);
      shown = true;
    },
    end() {
      if (shown) stream.write('\r\u001b[2K');
      shown = false;
    },
  };
}
