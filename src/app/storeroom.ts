import { PAGE } from '../text';
import type { Desk } from './desk';
import { Doors } from './doors';
import { Keeper } from './keeper';
import { NeedlesKeeper } from './needles';
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
    await this.#beReady();
  }

  /** Opens the view beside the work, where something is picked up. */
  atNeedles(): void {
    if (this.#desk.bench?.pickup) this.#desk.needles = this.needles;
    else if (this.#desk.bench) this.#desk.bench.announcement = PAGE.nothingPlanned;
  }

  /** What stands in for lost work must be at hand when the connection is gone. */
  async #beReady(): Promise<void> {
    try {
      await import('../ui/LastingNotice.svelte');
    } catch (error) {
      // It can be fetched later as well.
      if (!(error instanceof TypeError)) throw error;
    }
  }
}
