import { newPickup, runBetween, type Change, type Spot } from '../../editor';
import type { EdgeRef, Stretch } from '../../piece';
import { newPickupName, RUN_REFUSED, RUN_SAID } from '../../text';
import { withRunAdded, withStretch } from '../runs/choosing';
import type { Sheet } from '../sheet.svelte';
import type { CanvasTool, PressHow } from '../tool';
import type { Workbench } from '../workbench.svelte';

/** Chooses the run of a pick-up by pressing its edges in the order in which they are worked. */
export class ChoosingTool implements CanvasTool {
  readonly bench: Workbench;
  readonly sheet: Sheet;
  /** The edge that was pressed last: from it a run goes on. */
  #last: EdgeRef | null = $state.raw(null);
  #hovered: EdgeRef | null = $state.raw(null);
  refusal = $state('');

  constructor(bench: Workbench, sheet: Sheet) {
    this.bench = bench;
    this.sheet = sheet;
  }

  readonly work: CanvasTool['work'] = {};

  get along(): readonly Stretch[] {
    return this.bench.pickup?.pickup.along ?? [];
  }

  get cursor(): string {
    return this.#hovered ? 'pointer' : 'grab';
  }

  press(): boolean {
    return false;
  }

  move(): void {
    // Nothing is ever held.
  }

  lift(): void {
    // Nothing is ever held.
  }

  breakOff(): void {
    // Nothing is ever held.
  }

  again(): void {
    // A second press is a press.
  }

  tap(at: Spot, how: PressHow): void {
    const edge = this.sheet.edgeUnder(at);
    if (edge) this.point(edge, how.shift);
  }

  hover(at: Spot | null): void {
    this.#hovered = at && this.sheet.edgeUnder(at);
    this.bench.hovered = this.#hovered;
  }

  /**
   * Takes an edge into the run, or out of it where it is in it. With `through`, every edge from the one pressed before
   * up to this one, along the outline.
   */
  point(edge: EdgeRef, through: boolean): void {
    const last = this.#last;
    const { design } = this.bench;
    const piece = design.pieces.find(({ id }) => id === edge.piece);
    const between =
      through && last && piece && last.piece === edge.piece ? runBetween(piece, last.edge, edge.edge) : [];
    const along =
      between.length > 0 ? withRunAdded(design, this.along, between) : withStretch(design, this.along, edge);
    this.#put(along);
    this.#last = edge;
  }

  /** The whole run at once. */
  take(along: readonly Stretch[]): void {
    this.#put(along);
  }

  #put(along: readonly Stretch[]): void {
    const pickup = this.bench.pickup?.pickup;
    if (along.length === 0) {
      this.refusal = pickup ? RUN_REFUSED.last : '';
      return;
    }
    const { design } = this.bench;
    const name = newPickupName(design.pickups.length);
    const change: Change = pickup
      ? { kind: 'along', pickup: pickup.id, along }
      : { kind: 'add-pickup', pickup: newPickup(design, along, name) };
    const outcome = this.bench.change(change);
    this.refusal = outcome.ok ? '' : outcome.why;
    const now = this.bench.pickup?.pickup;
    if (outcome.ok && now) this.bench.announcement = RUN_SAID.along(now);
  }
}
