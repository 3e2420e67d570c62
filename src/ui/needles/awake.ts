/** What of a browser keeps the screen on; older browsers, and pages that came over a plain connection, have none. */
export interface Waker {
  readonly wakeLock?: { request(type: 'screen'): Promise<{ release(): Promise<void> }> };
}

/**
 * Keeps the screen on until it is told to stop. A browser lets go of the screen whenever the page is out of sight, so
 * it is asked again each time the page comes back.
 *
 * @param tell is told, after each time of asking, whether the screen stays on
 * @returns what ends it
 */
export function stayAwake(waker: Waker, page: Document, tell: (awake: boolean) => void): () => void {
  let over = false;
  let held: { release(): Promise<void> } | null = null;
  const ask = async (): Promise<void> => {
    if (page.visibilityState !== 'visible') return;
    if (!waker.wakeLock) {
      tell(false);
      return;
    }
    try {
      const lock = await waker.wakeLock.request('screen');
      if (over) await lock.release();
      else held = lock;
      tell(true);
    } catch (error) {
      // A low battery, or a setting of the browser.
      if (!(error instanceof DOMException)) throw error;
      tell(false);
    }
  };
  const again = () => void ask();
  page.addEventListener('visibilitychange', again);
  again();
  return () => {
    over = true;
    page.removeEventListener('visibilitychange', again);
    void held?.release();
  };
}
