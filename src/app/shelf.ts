import { writeDesign, type Design } from '../piece';
import { newId, type KeptWork } from '../storage';
import { copyTitle, KEEPING, LASTING, openedText, SHELF } from '../text';
import type { Outcome, ShelfDesk, ShelfWork } from '../ui';
import type { Desk } from './desk';
import type { Doors } from './doors';
import { designOf, type Keeper } from './keeper';

const DONE: Outcome = { ok: true };

/** The shelf's dealings with the database: what is on a bench is left to whoever has it there. */
export class Shelf implements ShelfDesk {
  readonly #desk: Desk;
  readonly #keeper: Keeper;
  readonly #doors: Doors;
  /** What was taken away since the page was opened, and can be brought back. */
  readonly #removed = new Map<string, KeptWork>();

  constructor(desk: Desk, keeper: Keeper, doors: Doors) {
    this.#desk = desk;
    this.#keeper = keeper;
    this.#doors = doors;
  }

  async list(): Promise<readonly ShelfWork[] | null> {
    await this.#keeper.flush();
    const { writer } = this.#keeper;
    const works = await writer.try(() => writer.works.list());
    if (!works) return null;
    const elsewhere = await this.#keeper.elsewhere();
    return works
      .filter(({ own }) => own)
      .map(({ id, name, at, revision, text }) => ({ id, name, at, revision, text, place: this.#place(id, elsewhere) }));
  }

  listen(onchange: () => void): () => void {
    return this.#keeper.news.listen(({ kind }) => {
      if (kind === 'written' || kind === 'removed') onchange();
    });
  }

  async open(id: string): Promise<Outcome> {
    if (id === this.#here) return DONE;
    return await this.#with(id, (work, design) => {
      this.#keeper.writer.know(work, design);
      const outcome = this.#desk.put(design, id);
      if (outcome.ok) {
        this.#desk.message = '';
        this.#desk.say(openedText(design.name));
      }
      return Promise.resolve(outcome);
    });
  }

  openSample(file: string): Promise<void> {
    return this.#doors.openSample(file);
  }

  sampleText(file: string): Promise<string | null> {
    return this.#doors.sampleText(file);
  }

  async rename(id: string, name: string): Promise<Outcome> {
    if (id === this.#here) {
      const outcome = this.#desk.bench!.change({ kind: 'rename', name });
      this.#keeper.changed();
      return outcome;
    }
    return await this.#unlessBusy(id, () =>
      this.#with(id, (work, design) => this.#write({ ...work, name, at: Date.now() }, { ...design, name })),
    );
  }

  async duplicate(id: string): Promise<Outcome & { readonly name?: string }> {
    const names = await this.#keeper.names();
    return await this.#with(id, async (work, design) => {
      const name = copyTitle(work.name, names);
      const copy = { ...work, id: newId(), name, at: Date.now(), revision: 0 };
      return { ...(await this.#write(copy, { ...design, name })), name };
    });
  }

  async remove(id: string): Promise<Outcome> {
    return await this.#unlessBusy(id, async () => {
      const { writer, news } = this.#keeper;
      if (id === this.#here) await this.#clearBench();
      const removed = await writer.try(() => writer.works.remove(id));
      if (removed === undefined) return { ok: false, why: LASTING.refused };
      writer.forget(id);
      if (removed) this.#removed.set(id, removed);
      news.tell({ kind: 'removed', id });
      return DONE;
    });
  }

  async restore(id: string): Promise<Outcome> {
    const work = this.#removed.get(id);
    if (!work) return { ok: false, why: KEEPING.noWork };
    const { writer, news } = this.#keeper;
    const written = await writer.try(() => writer.works.write(work));
    if (!written) return { ok: false, why: LASTING.full };
    this.#removed.delete(id);
    news.tell({ kind: 'written', id });
    return DONE;
  }

  get #here(): string | undefined {
    return this.#desk.bench?.origin;
  }

  #place(id: string, elsewhere: ReadonlySet<string>): ShelfWork['place'] {
    return id === this.#here ? 'here' : elsewhere.has(id) ? 'elsewhere' : 'away';
  }

  /** What is to be taken away leaves the bench to the latest other design, or to the first sample. */
  async #clearBench(): Promise<void> {
    const here = this.#here;
    const next = (await this.list())?.find(({ id, place }) => id !== here && place === 'away');
    if (!next || !(await this.open(next.id)).ok) this.#desk.putFirst();
  }

  async #unlessBusy(id: string, work: () => Promise<Outcome>): Promise<Outcome> {
    return (await this.#keeper.elsewhere()).has(id) ? { ok: false, why: SHELF.busy } : await work();
  }

  async #with<T extends Outcome>(
    id: string,
    work: (work: KeptWork, design: Design) => Promise<T>,
  ): Promise<T | Extract<Outcome, { ok: false }>> {
    await this.#keeper.flush();
    const { writer } = this.#keeper;
    const kept = await writer.try(() => writer.works.get(id));
    if (!kept) return { ok: false, why: kept === null ? KEEPING.noWork : LASTING.refused };
    const design = await designOf(kept);
    return design ? await work(kept, design) : { ok: false, why: KEEPING.unreadWork };
  }

  async #write(work: KeptWork, design: Design): Promise<Outcome> {
    const { writer, news } = this.#keeper;
    const written = await writer.try(() => writer.works.write({ ...work, text: writeDesign(design) }));
    if (!written) return { ok: false, why: LASTING.full };
    if (!written.ok) return { ok: false, why: SHELF.busy };
    news.tell({ kind: 'written', id: work.id });
    return DONE;
  }
}
