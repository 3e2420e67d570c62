import { PAGE, UPDATE } from '../text';
import type { Desk } from './desk';
import { Doors } from './doors';
import { Keeper } from './keeper';
import { NeedlesKeeper } from './needles';
import { keepOffline, type Update } from './offline/updates';
import { Shelf } from './shelf';

/** Everything about files, links and the browser's database, fetched as one part. */
export class Storeroom {
  readonly keeper: Keeper;
  readonly doors: Doors;
  readonly shelf: Shelf;
  readonly needles: NeedlesKeeper;
  readonly #desk: Desk;

  constructor(desk: Desk) {
    this.#desk = desk;
    this.keeper = new Keeper(desk);
    this.doors = new Doors(desk);
    this.shelf = new Shelf(desk, this.keeper, this.doors);
    this.needles = new NeedlesKeeper(desk);
  }

  /** Begins to keep, and brings a link's design, the last work or the first sample to the bench. */
  async start(): Promise<void> {
    const last = await this.keeper.start();
    if (!(await this.doors.openLink(location.href)) && !this.#desk.bench && last) this.keeper.goOn(last);
    if (!this.#desk.bench) this.#desk.putFirst();
    this.keeper.changed();
    // Whoever was at the needles when the page went is there again.
    if (this.needles.opened !== null) this.atNeedles();
    await this.#forgetPlaces();
    await this.#beReady();
    await this.#keepOffline();
  }

  /** Opens the view beside the work, where something is picked up. */
  atNeedles(): void {
    if (this.#desk.bench?.pickup) this.#desk.needles = this.needles;
    else if (this.#desk.bench) this.#desk.bench.announcement = PAGE.nothingPlanned;
  }

  /** What stands in for lost work must be at hand when the connection is gone. */
  async #beReady(): Promise<void> {
    try {
      await Promise.all([
        import('../ui/LastingNotice.svelte'),
        import('./Over.svelte'),
        import('../ui/UpdateLine.svelte'),
      ]);
    } catch (error) {
      // It can be fetched later as well.
      if (!(error instanceof TypeError)) throw error;
    }
  }

  /** Places in designs that are gone for good are forgotten. */
  async #forgetPlaces(): Promise<void> {
    const { writer } = this.keeper;
    const works = await writer.try(() => writer.works.list());
    if (works) this.needles.places.keepOnly(new Set(works.map(({ id }) => id)));
  }

  /** Once the page is loaded and at rest it is kept as a whole, for times without a connection. */
  async #keepOffline(): Promise<void> {
    const { serviceWorker: container } = navigator as { readonly serviceWorker?: ServiceWorkerContainer };
    if (!container || import.meta.env.DEV) return;
    await atRest();
    const around = { container, page: document, reload: () => location.reload(), now: () => Date.now() };
    await keepOffline(around, (update) => (this.#desk.update = () => void this.#take(update)));
  }

  /** Nothing may be lost: the newer version comes only once all is kept. */
  async #take(update: Update): Promise<void> {
    this.#desk.update = null;
    this.keeper.leave();
    await this.keeper.flush();
    if (this.keeper.writer.isDone) update.take();
    else this.#desk.message = UPDATE.notYet;
  }
}

/** Resolves when the page is loaded and has nothing urgent to do. */
async function atRest(): Promise<void> {
  if (document.readyState !== 'complete') {
    await new Promise((resolve) => addEventListener('load', resolve, { once: true }));
  }
  const { requestIdleCallback: idle } = window as { readonly requestIdleCallback?: Window['requestIdleCallback'] };
  await new Promise<void>((resolve) => (idle ? idle(() => resolve(), { timeout: 2000 }) : setTimeout(resolve, 500)));
}
