import { BOUNDS, DesignError, type ReadResult } from '../piece';
import { KEEPING } from '../text';

export type Opened = { readonly ok: true; readonly result: ReadResult } | { readonly ok: false; readonly why: string };

/** Reads a design out of a file of the knitter's; what is wrong with it comes back in one sentence. */
export async function openFile(file: Blob): Promise<Opened> {
  const limit = BOUNDS.fileBytes;
  // A film dropped by mistake is refused before it is read.
  if (file.size > limit) return await refused(new DesignError({ kind: 'too-large', at: '', bytes: file.size, limit }));
  let text: string;
  try {
    text = await file.text();
  } catch {
    // The browser says no more than that it failed.
    return { ok: false, why: KEEPING.unreadable };
  }
  return await readText(text);
}

/** The reader and its checks are fetched when they are first needed. */
export async function readText(text: string): Promise<Opened> {
  const { readDesign } = await import('../piece/read');
  try {
    return { ok: true, result: readDesign(text) };
  } catch (error) {
    if (error instanceof DesignError) return await refused(error);
    throw error;
  }
}

async function refused(error: DesignError): Promise<Opened> {
  const { problemSentence } = await import('../text/problems');
  return { ok: false, why: problemSentence(error.problem) };
}
