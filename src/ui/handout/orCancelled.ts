/**
 * What some work comes to, unless it is cancelled before: then at once, without waiting for the work.
 *
 * @throws DOMException (AbortError) when it is cancelled, and whatever the work throws
 */
export async function orCancelled<T>(work: Promise<T>, signal: AbortSignal): Promise<T> {
  const heard = new AbortController();
  const cancelled = new Promise<never>((_, reject) => {
    const stop = () => reject(new DOMException('It was cancelled.', 'AbortError'));
    if (signal.aborted) stop();
    else signal.addEventListener('abort', stop, { once: true, signal: heard.signal });
  });
  try {
    return await Promise.race([cancelled, work]);
  } finally {
    heard.abort();
  }
}
