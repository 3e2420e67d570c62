import firstSample from 'virtual:first-sample';
import { writeDesign, type Design, type Notice } from '../piece';
import { fileName, Kept, openFile, readText, saveFile, type KeptWork, type Opened } from '../storage';
import { notOpenedText, openedText, SAID, savedText, type Keeps } from '../text';
import { refused, Workbench } from '../ui';

/** How long after a change it is kept, ms: a burst of changes is written once. */
const PAUSE = 400;

/** What comes from and goes to the world outside: files, samples, and what the browser keeps. */
export class Session {
  readonly #kept: Kept | null;
  /** Samples as they were opened, by the works they began. */
  #untouched: Readonly<Record<string, Design>> = {};
  #timer: ReturnType<typeof setTimeout> | null = null;
  bench: Workbench | null = $state.raw(null);
  earlier: readonly KeptWork[] = $state.raw([]);
  /** What becomes of the work on the bench in this browser. */
  keeps: Keeps = $state('sample');
  /** One sentence for the user about a file or the store; empty when there is none. */
  message = $state('');

  constructor() {
    this.#kept = storeOf();
    if (this.#kept) return;
    this.keeps = 'refused';
    this.message = SAID.notKept;
  }

  /** Puts the last work on the bench, or the first sample on a first visit. */
  async start(): Promise<void> {
    const last = this.#guard((kept) => kept.last()) ?? null;
    const design = last === null ? null : ((await this.#guard((kept) => kept.read(last))) ?? null);
    if (last !== null && design) {
      try {
        this.bench = new Workbench(design, last);
        this.#list();
        return;
      } catch (error) {
        this.message = `${SAID.unread} ${refused(error).why}`;
      }
    } else if (last !== null) this.message = SAID.unread;
    this.#putSample(firstSample as Design);
  }

  async openSample(file: string): Promise<void> {
    const opened = await fetchSample(file);
    if (!opened.ok) {
      this.message = opened.why;
      return;
    }
    this.#putSample(opened.result.design);
  }

  #putSample(design: Design): void {
    const origin = newId();
    this.#untouched = { ...this.#untouched, [origin]: design };
    this.#put(design, origin);
  }

  async openEarlier(id: string): Promise<void> {
    const design = (await this.#guard((kept) => kept.read(id))) ?? null;
    if (design) this.#put(design, id);
    else this.message = SAID.unread;
  }

  async openFile(file: File): Promise<void> {
    const opened = await openFile(file);
    if (!opened.ok) {
      this.message = notOpenedText(file.name, opened.why);
      return;
    }
    this.#put(opened.result.design, newId(), file.name, opened.result.notices);
  }

  save(): void {
    if (!this.bench) return;
    const { design } = this.bench;
    const name = fileName(design.name, '.edgewise.json');
    saveFile(name, writeDesign(design), 'application/json');
    this.bench.announcement = savedText(name);
  }

  async saveDrawing(): Promise<void> {
    if (!this.bench) return;
    const { plan, pickup, pickupIndex } = this.bench;
    const { fileSvg } = await import('../renderer/file');
    const name = fileName(plan.design.name, ...(pickup ? ['-', fileName(pickup.pickup.name)] : []), '.svg');
    saveFile(name, fileSvg(plan, pickupIndex), 'image/svg+xml');
    this.bench.announcement = savedText(name);
  }

  /** Keeps the work soon; to be called whenever the design changes. */
  keepSoon(): void {
    if (this.#timer !== null) clearTimeout(this.#timer);
    this.#timer = setTimeout(() => this.keepNow(), PAUSE);
  }

  keepNow(): void {
    if (this.#timer !== null) clearTimeout(this.#timer);
    this.#timer = null;
    // A design that can't be planned could not be shown on the next visit: the last good one stays.
    if (this.bench?.trouble !== null) return;
    const { design, origin } = this.bench;
    const own = this.#untouched[origin] !== design;
    const written = this.#guard((kept) => {
      kept.keep(origin, design, own, Date.now());
      return true;
    });
    if (written) this.keeps = own ? 'own' : 'sample';
    this.#list();
  }

  #put(design: Design, origin: string, name = design.name, notices: readonly Notice[] = []): void {
    if (!this.bench) {
      this.bench = new Workbench(design, origin);
      this.bench.notices = notices;
      return;
    }
    // What is on the bench is kept before it gives way.
    this.keepNow();
    const outcome = this.bench.open(design, origin, notices);
    this.message = outcome.ok ? '' : notOpenedText(name, outcome.why);
    if (outcome.ok) this.bench.announcement = openedText(design.name);
  }

  #list(): void {
    const here = this.bench?.origin;
    this.earlier = (this.#guard((kept) => kept.list()) ?? []).filter(({ own, id }) => own && id !== here);
  }

  /** Does something with the store; where the browser refuses it, the user is told once. */
  #guard<T>(work: (kept: Kept) => T): T | undefined {
    if (!this.#kept) return undefined;
    try {
      return work(this.#kept);
    } catch (error) {
      if (!(error instanceof DOMException)) throw error;
      if (this.keeps !== 'refused') this.message = SAID.notKept;
      this.keeps = 'refused';
      return undefined;
    }
  }
}

async function fetchSample(file: string): Promise<Opened> {
  try {
    const answer = await fetch(`./samples/${file}.edgewise.json`);
    if (answer.ok) return await readText(await answer.text());
  } catch (error) {
    // A fetch that meets no server throws a TypeError.
    if (!(error instanceof TypeError)) throw error;
  }
  return { ok: false, why: SAID.noDesign };
}

/** The browser's store, or null where it is shut off altogether. */
function storeOf(): Kept | null {
  try {
    return new Kept(localStorage, sessionStorage);
  } catch (error) {
    if (error instanceof DOMException) return null;
    throw error;
  }
}

function newId(): string {
  return `${Date.now().toString(36)}-${Math.random().toString(36).slice(2, 8)}`;
}
