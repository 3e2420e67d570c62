/** What of the browser's own file dialogs is used here; few browsers have them. */
interface Dialogs {
  readonly showOpenFilePicker?: (options: {
    readonly types: readonly FileType[];
  }) => Promise<Pick<FileSystemFileHandle, 'getFile'>[]>;
  readonly showSaveFilePicker?: (options: {
    readonly suggestedName: string;
    readonly types: readonly FileType[];
  }) => Promise<FileSystemFileHandle>;
}

interface FileType {
  readonly description: string;
  readonly accept: Readonly<Record<string, readonly string[]>>;
}

/** What became of a dialog: closed without a choice is no fault. */
export type Picked<T> = { readonly kind: 'chosen'; readonly chosen: T } | { readonly kind: 'left' | 'none' };

const dialogs = (): Dialogs => window as Window & Dialogs;

/** Lets the user choose a file to open; `none` where the browser has no dialog of its own for it. */
export async function pickToOpen(description: string): Promise<Picked<File>> {
  const { showOpenFilePicker } = dialogs();
  if (!showOpenFilePicker) return { kind: 'none' };
  return await unlessLeft(async () => {
    const types = [{ description, accept: { 'application/json': ['.json'] } }];
    const [handle] = await showOpenFilePicker.call(window, { types });
    return await handle!.getFile();
  });
}

/** Lets the user choose where to save a file; `none` where the browser has no dialog of its own for it. */
export async function pickToSave(name: string, description: string): Promise<Picked<FileSystemFileHandle>> {
  const { showSaveFilePicker } = dialogs();
  if (!showSaveFilePicker) return { kind: 'none' };
  return await unlessLeft(() => {
    const types = [{ description, accept: { 'application/json': ['.json'] } }];
    return showSaveFilePicker.call(window, { suggestedName: name, types });
  });
}

/**
 * Writes a text to a file that was chosen: whole or not at all.
 * @throws DOMException where the browser or the disk refuses
 */
export async function writeTo(handle: FileSystemFileHandle, text: string): Promise<void> {
  const file = await handle.createWritable();
  try {
    await file.write(text);
  } catch (error) {
    await file.abort();
    throw error;
  }
  await file.close();
}

async function unlessLeft<T>(pick: () => Promise<T>): Promise<Picked<T>> {
  try {
    return { kind: 'chosen', chosen: await pick() };
  } catch (error) {
    if (!(error instanceof DOMException)) throw error;
    if (error.name === 'AbortError') return { kind: 'left' };
    // A page in a frame of another's may not use the dialog.
    if (error.name === 'SecurityError' || error.name === 'NotAllowedError') return { kind: 'none' };
    throw error;
  }
}
