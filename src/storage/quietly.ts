/** Does something with the browser's small store; where that is refused, gives what to do without it. */
export function quietly<T>(work: () => T, otherwise: T): T {
  try {
    return work();
  } catch (error) {
    if (error instanceof DOMException) return otherwise;
    throw error;
  }
}
