import type { Design } from '../piece';
import {
  Claims,
  moveIn,
  newId,
  News,
  Places,
  readText,
  workedOn,
  workOn,
  type KeptWork,
  type NewsItem,
} from '../storage';
import { copyTitle, forkedText, KEEPING } from '../text';
import type { Desk } from './desk';
import { askToPersist } from './persist';
import { Writer, type Unwritten } from './writer';

/** How long after a change it is kept at the latest, ms: a burst of changes is written together. */
const PAUSE = 400;
/** How long another tab may take to settle what it has not written yet, ms. */
const PATIENCE = 1000;

/** A kept work with its design. */
export interface OpenWork {
  readonly work: KeptWork;
  readonly design: Design;
}

/**
 * Keeps what is on the bench in the browser's database. One tab works on a design; every other one that has it on its
 * bench follows, read-only. What is done to database and claims is done in turn, one thing after the other.
 */
export class Keeper {
  readonly #desk: Desk;
  readonly #writer = new Writer((id, design) => this.#desk.untouched.get(id) !== design);
  readonly #news = new News();
  readonly #claims: Claims;
  /** The work on the bench, once it is claimed or about to be. */
  #id: string | null = null;
  #follows = false;
  #timer: ReturnType<typeof setTimeout> | null = null;
  #turn: Promise<void> = Promise.resolve();

  constructor(desk: Desk) {
    this.#desk = desk;
    const { locks } = navigator as { readonly locks?: LockManager };
    this.#claims = new Claims(locks ?? null, {
      onmine: (id) => void this.#inTurn(() => this.#lead(id)),
      onlost: (id) => void this.#inTurn(() => this.#claim(id)),
    });
    this.#news.listen((item) => this.#hear(item));
  }

  get writer(): Writer {
    return this.#writer;
  }

  get news(): News {
    return this.#news;
  }

  /** Moves what waits into the database and finds the last work; null where there is none to go on with. */
  async start(): Promise<OpenWork | null> {
    const { waiting, works } = this.#writer;
    const kept = await this.#writer.try(async () => {
      if ((await moveIn(waiting, works)) > 0) this.#desk.message = KEEPING.beside;
      return await works.list();
    });
    // Without a database there is at least what was put aside when the page was left.
    const all = kept ?? waiting.list();
    const [work = all[0]] = workedOn().flatMap((id) => all.find((one) => one.id === id) ?? []);
    if (!work) return null;
    const design = await designOf(work);
    if (!design) this.#desk.message = KEEPING.unread;
    return design && { work, design };
  }

  /** Puts a kept work on the bench. */
  goOn({ work, design }: OpenWork): void {
    this.#know(work, design);
    const outcome = this.#desk.put(design, work.id);
    if (!outcome.ok) this.#desk.message = `${KEEPING.unread} ${outcome.why}`;
  }

  /** To be called whenever the design on the bench, or the work it belongs to, has changed. */
  changed(): void {
    const { bench } = this.#desk;
    if (!bench) return;
    const { design, origin } = bench;
    if (origin !== this.#id) {
      void this.flush();
      this.#arrive(origin);
    }
    // A design that can't be planned could not be shown on the next visit: the last good one stays.
    if (!this.#follows && bench.trouble === null) {
      this.#writer.set(origin, design);
      if (!this.#writer.isDone) this.#timer ??= setTimeout(() => void this.flush(), PAUSE);
    }
    this.#show();
  }

  /** Keeps all that is not kept yet; resolves when that is done, or was refused. */
  flush(): Promise<void> {
    if (this.#timer !== null) clearTimeout(this.#timer);
    this.#timer = null;
    return this.#inTurn(async () => {
      const { written, newer } = await this.#writer.writeAll();
      for (const id of written) this.#news.tell({ kind: 'written', id });
      for (const one of newer) this.#fork(one);
      // What was changed while it was being written is written next.
      if (written.length > 0) this.changed();
      this.#show();
      if (this.#desk.keeps === 'own') void askToPersist();
    });
  }

  /** To be called when the page may be about to go. */
  leave(): void {
    this.#writer.putAside();
    void this.flush();
  }

  /** Goes on here with the work that another tab has; the other then follows. */
  async takeOver(): Promise<void> {
    const id = this.#id;
    if (id === null || !this.#follows) return;
    const settled = this.#news.heard((item) => item.kind === 'settled' && item.id === id, PATIENCE);
    this.#news.tell({ kind: 'wanted', id });
    await settled;
    await this.#inTurn(async () => {
      if (this.#id !== id) return;
      await this.#claims.take(id);
      await this.#lead(id);
    });
  }

  /** Goes on with a copy of what is on the bench. */
  async copy(): Promise<void> {
    const { bench } = this.#desk;
    if (!bench) return;
    const { design } = bench;
    this.#desk.put({ ...design, name: copyTitle(design.name, await this.names()) }, newId());
  }

  /** The names of all designs that are kept. */
  async names(): Promise<string[]> {
    return ((await this.#writer.try(() => this.#writer.works.list())) ?? []).map(({ name }) => name);
  }

  /** The ids of works that other tabs have. */
  async elsewhere(): Promise<Set<string>> {
    const held = await this.#claims.held();
    if (this.#id !== null && !this.#follows) held.delete(this.#id);
    return held;
  }

  #hear(item: NewsItem): void {
    const { id, kind } = item;
    if (id !== this.#id) return;
    if (kind === 'written' && this.#follows) void this.#inTurn(() => this.#catchUp(id));
    if (kind === 'wanted' && !this.#follows) void this.flush().then(() => this.#news.tell({ kind: 'settled', id }));
  }

  /** Another work is on the bench: it is claimed, and the one before is let go of. */
  #arrive(id: string): void {
    this.#id = id;
    this.#follows = false;
    if (this.#desk.bench) this.#desk.bench.locked = null;
    workOn(id);
    void this.#inTurn(() => this.#claim(id));
  }

  async #claim(id: string): Promise<void> {
    if (this.#id !== id) return;
    if (await this.#claims.claim(id)) await this.#lead(id);
    else await this.#follow(id);
  }

  /** The work is this tab's. */
  async #lead(id: string): Promise<void> {
    const { bench } = this.#desk;
    if (this.#id !== id || !bench) return;
    this.#follows = false;
    bench.locked = null;
    await this.#catchUp(id);
    this.#show();
  }

  /** The work is another tab's: this one shows it. */
  async #follow(id: string): Promise<void> {
    const kept = await this.#writer.try(() => this.#writer.works.get(id));
    const { bench } = this.#desk;
    if (this.#id !== id || bench?.origin !== id) return;
    const design = this.#writer.get(id);
    if (this.#desk.untouched.get(id) === bench.design && !kept?.own) {
      // A sample that nobody has changed is no work to share: each tab has its own.
      this.#rebind(id, newId());
    } else if (design && this.#writer.work(id, design).text !== kept?.text) {
      // The work was taken away with changes still to write: they go on beside it.
      this.#fork({ id, design });
    } else {
      this.#writer.drop(id);
      this.#follows = true;
      bench.locked = KEEPING.locked;
      await this.#catchUp(id);
      this.#show();
    }
  }

  /** Brings to the bench what was written elsewhere since this tab last looked. */
  async #catchUp(id: string): Promise<void> {
    const kept = await this.#writer.try(() => this.#writer.works.get(id));
    if (!kept || kept.revision <= this.#writer.revision(id)) return;
    const design = await designOf(kept);
    const { bench } = this.#desk;
    if (!design || this.#id !== id || bench?.origin !== id) return;
    this.#know(kept, design);
    bench.follow(design);
  }

  #know(work: KeptWork, design: Design): void {
    this.#writer.know(work, design);
    if (!work.own) this.#desk.untouched.set(work.id, design);
  }

  /** Changes that can't be written over what is kept go on as a work of their own. */
  #fork({ id, design }: Unwritten): void {
    const { bench } = this.#desk;
    const to = newId();
    if (bench?.origin === id) {
      this.#rebind(id, to);
      const name = copyTitle(design.name, [design.name]);
      bench.change({ kind: 'rename', name });
      this.#desk.message = forkedText(name);
    } else {
      this.#writer.drop(id);
      this.#writer.set(to, design);
      void this.flush();
      this.#desk.message = forkedText(design.name);
    }
  }

  /** What is on the bench goes on as a work with another id. */
  #rebind(id: string, to: string): void {
    const { bench, untouched } = this.#desk;
    if (!bench) return;
    const sample = untouched.get(id);
    if (sample) untouched.set(to, sample);
    this.#writer.drop(id);
    new Places(() => localStorage).copy(id, to);
    bench.locked = null;
    bench.rebind(id, to);
  }

  #show(): void {
    const { bench, untouched } = this.#desk;
    if (!bench) return;
    const { design, origin } = bench;
    const kept = untouched.get(origin) === design ? 'sample' : bench.trouble === null ? 'own' : 'waits';
    const unkept = kept === 'own' ? 'saving' : kept;
    const quiet = this.#writer.get(origin) ? (this.#writer.refusal ?? unkept) : kept;
    this.#desk.keeps = this.#follows ? 'follows' : quiet;
  }

  /** One thing after the other. What fails in one turn is told to whoever waits for it, and does not stop the next. */
  async #inTurn(work: () => Promise<void>): Promise<void> {
    const before = this.#turn;
    let end: (() => void) | undefined;
    this.#turn = new Promise((resolve) => (end = resolve));
    await before;
    try {
      await work();
    } finally {
      end?.();
    }
  }
}

/** The design of a kept work; null where it can't be read any more. */
export async function designOf(work: KeptWork): Promise<Design | null> {
  const opened = await readText(work.text);
  return opened.ok ? opened.result.design : null;
}
