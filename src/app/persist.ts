/** Says that the browser has been asked. */
const ASKED = 'edgewise.persist';

/** Asks the browser, once, not to throw away what is kept when its disk gets full. It may say no; all goes on then. */
export async function askToPersist(): Promise<void> {
  try {
    if (localStorage.getItem(ASKED) !== null) return;
    localStorage.setItem(ASKED, 'asked');
    const { storage } = navigator as { readonly storage?: StorageManager };
    if (storage && !(await storage.persisted())) await storage.persist();
  } catch (error) {
    // Refused: what is kept is kept as well as before. A TypeError comes from a page without an origin.
    if (!(error instanceof DOMException || error instanceof TypeError)) throw error;
  }
}
