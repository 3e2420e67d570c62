import { untrack } from 'svelte';
import firstSample from 'virtual:first-sample';
import type { Design, Notice } from '../piece';
import { isKnown, newId } from '../storage';
import { SAID, type Keeps } from '../text';
import { refused, Workbench, type NeedlesDesk, type Outcome, type ShelfDesk } from '../ui';
import { untouchedSamples, type Desk } from './desk';
import type { Storeroom } from './storeroom';

/** How long something good that happened stays in sight, ms. */
const SAID_FOR = 5000;

/**
 * What the page works on and how that is kept. All that files, links and the browser's database need is in the
 * storeroom, which is fetched while the first drawing is made.
 */
export class Session implements Desk {
  readonly untouched = untouchedSamples();
  readonly #room: Promise<Storeroom>;
  #here: Storeroom | null = null;
  #timer: ReturnType<typeof setTimeout> | undefined;
  bench: Workbench | null = $state.raw(null);
  needles: NeedlesDesk | null = $state.raw(null);
  update: (() => void) | null = $state.raw(null);
  keeps: Keeps = $state('sample');
  message = $state('');
  /** Something good that happened, for a moment. */
  said = $state('');

  constructor() {
    this.#room = import('./storeroom').then(({ Storeroom }) => (this.#here = new Storeroom(this)));
  }

  /** Puts a link's design on the bench, or the last work, or the first sample. */
  async start(): Promise<void> {
    // A newcomer need not wait for the storeroom.
    if (!isKnown() && location.hash === '') this.putFirst();
    try {
      await this.use((room) => room.start());
    } finally {
      if (!this.bench) this.putFirst();
    }
  }

  /** Does something with files, links or what is kept. */
  async use(work: (room: Storeroom) => unknown): Promise<void> {
    let room: Storeroom;
    try {
      room = await this.#room;
    } catch (error) {
      // A part that could not be fetched.
      if (!(error instanceof TypeError)) throw error;
      this.keeps = 'refused';
      this.message = SAID.partMissing;
      return;
    }
    await work(room);
  }

  /** To be called with the design on the bench and its origin whenever they have changed. */
  changed(_design: Design, _origin: string): void {
    untrack(() => this.#here?.keeper.changed());
  }

  /** The shelf's dealings with what is kept. @throws TypeError where that part could not be fetched */
  async shelf(): Promise<ShelfDesk> {
    return (await this.#room).shelf;
  }

  /** To be called when the page may be about to go. */
  leave(): void {
    this.#here?.keeper.leave();
  }

  putSample(design: Design): void {
    const origin = newId();
    this.untouched.set(origin, design);
    this.put(design, origin);
  }

  putFirst(): void {
    this.putSample(firstSample as Design);
  }

  put(design: Design, origin: string, notices: readonly Notice[] = []): Outcome {
    if (this.bench) return this.bench.open(design, origin, notices);
    try {
      this.bench = new Workbench(design, origin);
    } catch (error) {
      return refused(error);
    }
    this.bench.notices = notices;
    return { ok: true };
  }

  say(sentence: string): void {
    if (this.bench) this.bench.announcement = sentence;
    this.said = sentence;
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => (this.said = ''), SAID_FOR);
  }
}
