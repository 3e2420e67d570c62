import { fieldChanged, isFieldChange, redo, startHistory, step, undo, type Change, type History } from '../editor';
import { DesignError, type Design, type EdgeRef, type Notice } from '../piece';
import { planDesign, PlanError, type DesignPlan, type PickupPlan } from '../pickup';
import { planned, planProblemText, SAID, voiceOf, type Voice } from '../text';
import { Resting } from './resting';

/** The plan on screen: made of the present design, or the last good one with the reason why there is no newer. */
export interface Shown {
  readonly plan: DesignPlan;
  readonly trouble: string | null;
}

/** A design that is only tried, with its plan, or the reason why there is none. */
interface Preview {
  readonly design: Design;
  readonly plan: DesignPlan | null;
  readonly why: string | null;
}

/** What one press did: something, or nothing for a reason told in a sentence. */
export type Outcome = { readonly ok: true } | { readonly ok: false; readonly why: string };

/** A design, and which opening of a file or sample it comes from. */
export interface Work {
  readonly design: Design;
  readonly origin: string;
}

const DONE: Outcome = { ok: true };

/** What is wrong with a design, in a sentence; null where nothing is. */
type Judge = (design: Design) => string | null;

/** Judges a changed design as strictly as a file. */
let judge: Judge = () => null;

/** The design after a change. Until all kinds of change are fetched, those of single fields, which are all in reach. */
let made = (design: Design, change: Change): Design => {
  if (isFieldChange(change)) return fieldChanged(design, change);
  throw new Error(`A change of kind ${change.kind} was asked for before loadEditing had ended.`);
};

let loading: Promise<void> | null = null;

/**
 * Fetches the judge with its words, and the changes of outlines and runs, which no first drawing needs. Until they are
 * there, moments after the start, fields keep to their own bounds, and nothing that can break an outline is in reach.
 * What failed is tried again at the next call.
 */
export function loadEditing(): Promise<void> {
  loading ??= fetchEditing().catch((error: unknown) => {
    loading = null;
    throw error;
  });
  return loading;
}

async function fetchEditing(): Promise<void> {
  const [{ checkDesign }, { refusedChange }, { changed }] = await Promise.all([
    import('../piece/checkDesign'),
    import('../text/refusedChange'),
    import('../editor/changes'),
  ]);
  made = changed;
  judge = (design) => {
    try {
      checkDesign(design);
      return null;
    } catch (error) {
      if (error instanceof DesignError) return refusedChange(error.problem, design);
      throw error;
    }
  };
}

/**
 * The one place that holds a design, its history and its plan. Panels read from it and send it changes; only `change`
 * alters the design, each time as one step of history.
 */
export class Workbench {
  #history: History<Work>;
  #shown: Shown;
  #pickup = $state(0);
  /** What a movement of the hand would make of the design, not yet made. */
  #preview: Preview | null = $state.raw(null);
  /** The same as it was when the hand last came to rest. */
  #rested: Preview | null = $state.raw(null);
  readonly #resting = new Resting(() => this.rest());
  /** Why nothing can be changed here, in a sentence; null where it can. */
  locked: string | null = $state(null);
  /** Puts back what is held in the hand just now; it is called before anything else is done. */
  breakOff: (() => void) | null = null;
  /** The edge under the pointer or the focus. */
  hovered: EdgeRef | null = $state.raw(null);
  /** The edge that was chosen by a tap or a key, and stays so. */
  selected: EdgeRef | null = $state.raw(null);
  /** What a screen reader is told. */
  announcement = $state('');
  /** What there is to know of the file that was opened. */
  notices: readonly Notice[] = $state.raw([]);

  readonly voice: Voice = $derived.by(() => voiceOf(this.design));

  constructor(design: Design, origin: string) {
    this.#history = $state.raw(startHistory({ design, origin }));
    this.#shown = $state.raw({ plan: planDesign(design), trouble: null });
  }

  get design(): Design {
    return this.#history.present.design;
  }

  /** Changes when another design is put on the bench, and back when that is undone. */
  get origin(): string {
    return this.#history.present.origin;
  }

  /** The plan of what the hand holds, from the moment when it comes to rest; else that of the present design. */
  get plan(): DesignPlan {
    return this.#rested?.plan ?? this.#shown.plan;
  }

  /** The plan of what the hand holds at this very moment. Only what must follow every movement looks at it. */
  get now(): DesignPlan {
    return this.#preview?.plan ?? this.#shown.plan;
  }

  /** The hand moves what it holds, and what is written has not followed yet. */
  get moving(): boolean {
    return this.now !== this.plan;
  }

  /** The plan of the present design, whatever is held in the hand. */
  get made(): DesignPlan {
    return this.#shown.plan;
  }

  /** Why the plan on screen is not that of the present design, or null. */
  get trouble(): string | null {
    return this.#preview ? this.#preview.why : this.#shown.trouble;
  }

  /** The design as the hand would have it: the present one unless something is held. */
  get tried(): Design {
    return this.#preview?.design ?? this.design;
  }

  /** The design as it was when the hand last came to rest, where it can be planned; else the present one. */
  get rested(): Design {
    return this.#rested?.why === null ? this.#rested.design : this.design;
  }

  /** Index of the pick-up that is shown; null in a design without any. */
  get pickupIndex(): number | null {
    const count = this.plan.pickups.length;
    return count === 0 ? null : Math.min(this.#pickup, count - 1);
  }

  get pickup(): PickupPlan | null {
    return this.pickupIndex === null ? null : this.plan.pickups[this.pickupIndex]!;
  }

  /** The pick-up that is shown, as the hand has it at this very moment. */
  get pickupNow(): PickupPlan | null {
    return this.pickupIndex === null ? null : (this.now.pickups[this.pickupIndex] ?? null);
  }

  get lit(): EdgeRef | null {
    return this.hovered ?? this.selected;
  }

  get canUndo(): boolean {
    return this.#history.past.length > 0;
  }

  get canRedo(): boolean {
    return this.#history.future.length > 0;
  }

  /** Number of steps that can be undone. */
  get steps(): number {
    return this.#history.past.length;
  }

  showPickup(index: number): void {
    this.#pickup = index;
    this.hovered = null;
    this.selected = null;
    this.#tell();
  }

  select(edge: EdgeRef | null): void {
    this.selected = edge;
  }

  /** Makes one change, one step of history. A change that makes no valid design is refused and leaves all as it was. */
  change(change: Change): Outcome {
    this.breakOff?.();
    if (this.locked !== null) return { ok: false, why: this.locked };
    const next = made(this.design, change);
    if (next === this.design) return DONE;
    const why = judge(next);
    if (why !== null) return { ok: false, why };
    this.#settle(step(this.#history, { design: next, origin: this.origin }));
    this.#tell();
    return DONE;
  }

  /** Shows what a change would make without making it; null shows the present design again. */
  preview(change: Change | null): void {
    const next = change && made(this.design, change);
    this.#resting.moved(change !== null);
    this.#preview = next === null || next === this.design ? null : tried(next);
    if (change === null) this.#rested = null;
  }

  /** The hand has come to rest: all that is written follows what it holds. */
  rest(): void {
    this.#resting.moved(false);
    this.#rested = this.#preview;
  }

  /** One step back. While something is held in the hand, that alone is put back. */
  undo(): void {
    if (this.#isHeld()) return;
    const could = this.canUndo;
    this.#settle(undo(this.#history));
    this.#tell(could ? SAID.undone : SAID.nothingToUndo);
  }

  redo(): void {
    if (this.#isHeld()) return;
    const could = this.canRedo;
    this.#settle(redo(this.#history));
    this.#tell(could ? SAID.redone : SAID.nothingToRedo);
  }

  /** Puts another design on the bench, as one step: what was there comes back with undo. */
  open(design: Design, origin: string, notices: readonly Notice[] = []): Outcome {
    this.breakOff?.();
    const why = judge(design);
    if (why !== null) return { ok: false, why };
    try {
      const plan = planDesign(design);
      this.#history = step(this.#history, { design, origin });
      this.#shown = { plan, trouble: null };
    } catch (error) {
      return refused(error);
    }
    this.#pickup = 0;
    this.hovered = null;
    this.selected = null;
    this.notices = notices;
    return DONE;
  }

  /** Shows the present work as it was changed elsewhere; that is no step of this bench's own. */
  follow(design: Design): void {
    this.breakOff?.();
    this.#settle({ ...this.#history, present: { design, origin: this.origin }, future: [] });
  }

  /** The work of one origin goes on as a work of another, with all that can be undone in it. */
  rebind(origin: string, to: string): void {
    const bound = (work: Work): Work => (work.origin === origin ? { ...work, origin: to } : work);
    const { past, present, future } = this.#history;
    this.#history = { past: past.map(bound), present: bound(present), future: future.map(bound) };
  }

  #isHeld(): boolean {
    if (this.breakOff) {
      this.breakOff();
      return true;
    }
    if (this.locked !== null) this.announcement = this.locked;
    return this.locked !== null;
  }

  /** Shows the plan of the present design; where none can be made the last good one stays, with the reason. */
  #settle(history: History<Work>): void {
    if (history.present.origin !== this.origin) this.notices = [];
    this.#history = history;
    try {
      this.#shown = { plan: planDesign(history.present.design), trouble: null };
    } catch (error) {
      this.#shown = { plan: this.#shown.plan, trouble: refused(error).why };
    }
  }

  #tell(first = ''): void {
    const now = this.trouble ?? (this.pickup ? planned(this.pickup) : '');
    this.announcement = [first, now].filter((part) => part !== '').join(' ');
  }
}

/** A design that is only tried, planned where it can be. */
function tried(design: Design): Preview {
  const why = judge(design);
  if (why !== null) return { design, plan: null, why };
  try {
    return { design, plan: planDesign(design), why: null };
  } catch (error) {
    return { design, plan: null, why: refused(error).why };
  }
}

/** Why no plan can be made, in a sentence. Anything else that was thrown is a fault and goes on. */
export function refused(error: unknown): { readonly ok: false; readonly why: string } {
  if (error instanceof PlanError) return { ok: false, why: planProblemText(error.problem) };
  throw error;
}
