import {
  needlesBack,
  needlesCorrected,
  needlesOn,
  needlesReplan,
  needlesResumed,
  needlesStart,
  needleWork,
  PlanError,
  readNeedlePlace,
  type NeedlePlace,
  type NeedleWork,
  type PickupPlan,
  type Replan,
} from '../../pickup';
import { planProblemText, resumedText } from '../../text';
import type { Workbench } from '../workbench.svelte';
import type { NeedlesDesk } from './desk';

/** One way to put a miscount right, or the reason why there is none. */
export type Way = { readonly ok: true; readonly again: Replan } | { readonly ok: false; readonly why: string };

/** A knitter's way through a pick-up. Every step is kept before anything else is done. */
export class Needles {
  readonly #bench: Workbench;
  readonly #desk: NeedlesDesk;
  /** The place as it was last kept; the plan may have changed since. */
  #kept: NeedlePlace | null = $state.raw(null);
  /** Whether the browser keeps it. */
  isKept = $state(true);

  constructor(bench: Workbench, desk: NeedlesDesk) {
    this.#bench = bench;
    this.#desk = desk;
    const left = bench.plan.pickups.findIndex(({ pickup }) => pickup.id === desk.opened);
    if (left >= 0) bench.showPickup(left);
    this.look();
    this.#keep(this.place);
  }

  readonly plan: PickupPlan = $derived.by(() => this.#bench.pickup!);

  readonly #found = $derived.by(() => {
    const kept = this.#kept;
    if (kept?.pickup === this.plan.pickup.id) return needlesResumed(this.plan, kept);
    return { place: needlesStart(this.plan), resumed: { kind: 'as-left' } as const };
  });

  readonly work: NeedleWork = $derived.by(() => needleWork(this.plan, this.place));

  get place(): NeedlePlace {
    return this.#found.place;
  }

  /** Why this is not the place where the knitter left; empty where it is. */
  readonly told: string = $derived.by(() => resumedText(this.#found.resumed));

  get isDone(): boolean {
    return this.work.at > this.work.steps.length;
  }

  get isStart(): boolean {
    return this.place.opening === 0;
  }

  /** Goes to the place that is kept, which another tab may have moved. */
  look(): void {
    this.#kept = readNeedlePlace(this.#desk.get(this.plan.pickup.id));
  }

  on(): void {
    this.#keep(needlesOn(this.plan, this.place));
  }

  back(): void {
    this.#keep(needlesBack(this.plan, this.place));
  }

  again(): void {
    this.#keep(needlesStart(this.plan));
  }

  /**
   * The ways to put right that there are so many on the needle here: two, or one where both come to the same or only
   * one can be had; where there is none, why.
   */
  ways(onNeedle: number): Way[] {
    const rest = this.#way(onNeedle, 'rest');
    const next = this.#way(onNeedle, 'next');
    if (!next.ok) return [rest];
    if (!rest.ok) return [next];
    const used = ({ points }: Replan) => points.map(({ n }) => n).join();
    return used(next.again) === used(rest.again) ? [rest] : [next, rest];
  }

  /** What was planned here before anything was said of it. */
  get planned(): number {
    const { opening, miscounts } = this.place;
    return needleWork(this.plan, { opening, miscounts: miscounts.filter((one) => one.opening < opening) }).onNeedle;
  }

  correct(onNeedle: number, way: 'next' | 'rest'): void {
    this.#keep(needlesCorrected(this.plan, this.place, onNeedle, way));
  }

  #way(onNeedle: number, way: 'next' | 'rest'): Way {
    try {
      return { ok: true, again: needlesReplan(this.plan, this.place, onNeedle, way) };
    } catch (error) {
      if (error instanceof PlanError) return { ok: false, why: planProblemText(error.problem) };
      throw error;
    }
  }

  #keep(place: NeedlePlace): void {
    this.isKept = this.#desk.put(place.pickup, place);
    this.#kept = place;
  }
}
