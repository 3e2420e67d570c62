import { writeDesign, type ReadResult } from '../piece';
import {
  fileName,
  linkPart,
  makeLink,
  newId,
  openFile,
  pickToOpen,
  pickToSave,
  readLink,
  readText,
  saveFile,
  writeTo,
  type LinkMade,
} from '../storage';
import {
  fileNameOf,
  KEEPING,
  LINK,
  linkTooLongText,
  notOpenedText,
  notSavedText,
  openedText,
  savedText,
  type FileKind,
} from '../text';
import type { Desk } from './desk';

/** What a browser is told of a file by its form. */
const MEDIA_TYPES: Readonly<Record<FileKind['form'], string>> = {
  csv: 'text/csv',
  html: 'text/html',
  json: 'application/json',
  pdf: 'application/pdf',
  png: 'image/png',
  svg: 'image/svg+xml',
  txt: 'text/plain',
};

/** Ways in and out for designs: files, samples, links. */
export class Doors {
  readonly #desk: Desk;
  /** Where works were saved in this visit: they are saved there again. */
  readonly #saved = new Map<string, FileSystemFileHandle>();

  constructor(desk: Desk) {
    this.#desk = desk;
  }

  /** Lets the user choose a file, with the browser's own dialog where it has one, else with `otherwise`. */
  async chooseFile(otherwise: () => void): Promise<void> {
    try {
      const picked = await pickToOpen(KEEPING.designFile);
      if (picked.kind === 'none') otherwise();
      if (picked.kind === 'chosen') await this.openFile(picked.chosen);
    } catch (error) {
      if (!(error instanceof DOMException)) throw error;
      this.#desk.message = notOpenedText(KEEPING.theFile, KEEPING.unreadable);
    }
  }

  async openFile(file: File): Promise<void> {
    const opened = await openFile(file);
    if (opened.ok) this.#put(opened.result, file.name);
    else this.#desk.message = notOpenedText(file.name, opened.why);
  }

  /** The text of a sample, or null where it can't be fetched. */
  async sampleText(file: string): Promise<string | null> {
    try {
      const answer = await fetch(`./samples/${file}.edgewise.json`);
      return answer.ok ? await answer.text() : null;
    } catch (error) {
      // A fetch that meets no server throws a TypeError.
      if (error instanceof TypeError) return null;
      throw error;
    }
  }

  async openSample(file: string): Promise<void> {
    const text = await this.sampleText(file);
    const opened = text === null ? null : await readText(text);
    if (opened?.ok) {
      this.#desk.message = '';
      this.#desk.putSample(opened.result.design);
      this.#desk.say(openedText(opened.result.design.name));
    } else this.#desk.message = opened?.why ?? KEEPING.noSample;
  }

  /**
   * Opens the design that an address, or a text with a link in it, holds, as a work of its own; it is taken out of the
   * page's address. False where there is none.
   */
  async openLink(text: string): Promise<boolean> {
    const part = linkPart(text);
    if (part === null) return false;
    if (linkPart(location.href) === part) history.replaceState(history.state, '', location.href.replace(/#.*$/s, ''));
    if (!('DecompressionStream' in window)) {
      this.#desk.message = LINK.old;
      return false;
    }
    const read = await readLink(part);
    if (!read.ok) {
      this.#desk.message = LINK[read.fault];
      return false;
    }
    const opened = await readText(read.text);
    if (opened.ok) return this.#put(opened.result, LINK.linked);
    this.#desk.message = notOpenedText(LINK.linked, opened.why);
    return false;
  }

  /** A link that holds the design on the bench; null, with the reason told, where there can be none. */
  async link(): Promise<string | null> {
    const { bench } = this.#desk;
    if (!bench) return null;
    if (!('CompressionStream' in window)) {
      this.#desk.message = LINK.old;
      return null;
    }
    const made: LinkMade = await makeLink(writeDesign(bench.design), location.href);
    if (made.ok) return made.link;
    this.#desk.message = linkTooLongText(made.length, made.limit);
    return null;
  }

  /** Saves the design to a file: where it was saved before in this visit, else where the user says. */
  async save(): Promise<void> {
    const { bench } = this.#desk;
    if (!bench) return;
    const { design, origin } = bench;
    const name = fileName(design.name, '.edgewise.json');
    const before = this.#saved.get(origin);
    try {
      const picked = before ? null : await pickToSave(name, KEEPING.designFile);
      if (picked?.kind === 'left') return;
      const handle = before ?? (picked?.kind === 'chosen' ? picked.chosen : null);
      if (!handle) {
        saveFile(name, writeDesign(design), 'application/json');
        this.#desk.say(savedText(name));
        return;
      }
      await writeTo(handle, writeDesign(design));
      this.#saved.set(origin, handle);
      this.#desk.message = '';
      this.#desk.say(savedText(handle.name));
    } catch (error) {
      if (!(error instanceof DOMException)) throw error;
      // The next time the place is asked for again.
      this.#saved.delete(origin);
      this.#desk.message = notSavedText(before?.name ?? name);
    }
  }

  async saveDrawing(): Promise<void> {
    const { bench } = this.#desk;
    if (!bench) return;
    const { fileSvg } = await import('../renderer/file');
    this.give({ holds: 'drawing', form: 'svg' }, fileSvg(bench.plan, bench.pickupIndex));
  }

  /** Saves what was made of the pick-up that is shown, named after the design, the pick-up and what it is. */
  give(kind: FileKind, data: string | Blob): void {
    const { bench } = this.#desk;
    if (!bench) return;
    const name = fileNameOf(bench.design, bench.pickup?.pickup ?? null, kind);
    saveFile(name, data, MEDIA_TYPES[kind.form]);
    this.#desk.say(savedText(name));
  }

  #put({ design, notices }: ReadResult, from: string): boolean {
    const outcome = this.#desk.put(design, newId(), notices);
    this.#desk.message = outcome.ok ? '' : notOpenedText(from, outcome.why);
    if (outcome.ok) this.#desk.say(openedText(design.name));
    return outcome.ok;
  }
}
