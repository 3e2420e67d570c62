import type { Spot } from '../editor';
import type { EdgeRef } from '../piece';
import type { PickupPlan, PlanPoint } from '../pickup';
import { edgeNames, edgeReadout, pointAloud, pointReadout } from '../text';
import { pointFrom, type PointWay } from './pointFrom';
import { reason } from './reason.svelte';
import { wayIntoView } from './sheetView';
import type { Sheet } from './sheet.svelte';
import type { Workbench } from './workbench.svelte';

/** What of the pick-up lies under the pointer or is chosen, and what is said of it. */
export class Pointed {
  readonly #bench: Workbench;
  readonly #sheet: Sheet;
  /** Index of the opening under the pointer, and the plan that it belongs to. */
  #found: { readonly plan: PickupPlan; readonly point: number } | null = $state.raw(null);

  constructor(bench: Workbench, sheet: Sheet) {
    this.#bench = bench;
    this.#sheet = sheet;
  }

  readonly #opening: PlanPoint | undefined = $derived.by(() => {
    const at = this.#found;
    if (!at) return undefined;
    if (at.plan !== this.#bench.pickup) return undefined;
    const opening = at.plan.points[at.point]!;
    const { piece, measured } = at.plan.edges[opening.edge]!;
    const { lit } = this.#bench;
    return lit?.piece === piece.id && lit.edge === measured.id ? opening : undefined;
  });

  /** Where the opening is drawn on the sheet. */
  readonly spot: Spot | null = $derived.by(() =>
    this.#opening && this.#found ? this.#sheet.spotOf(this.#found.point) : null,
  );

  readonly readout: string | null = $derived.by(() => {
    const { pickup, lit, plan } = this.#bench;
    if (pickup && this.#opening) return pointReadout(pickup, this.#opening);
    return lit && ((pickup && edgeReadout(pickup, lit)) ?? edgeNames(plan.design)(lit));
  });

  /** The line of the lit edge as the points of a polyline; empty where none is drawn. */
  readonly litLine: string = $derived.by(() => {
    const line = this.#bench.lit && this.#sheet.lineOf(this.#bench.lit);
    const pairs: string[] = [];
    for (let i = 0; line && i + 1 < line.length; i += 2) pairs.push(`${line[i]},${line[i + 1]}`);
    return pairs.join(' ');
  });

  /** Takes what lies under a spot for what is meant: an opening and its edge, or an edge alone. */
  at(spot: Spot): EdgeRef | null {
    const plan = this.#bench.pickup;
    const index = this.#sheet.pointUnder(spot);
    this.#found = plan && index !== null ? { plan, point: index } : null;
    const edge = plan && index !== null ? plan.edges[plan.points[index]!.edge] : undefined;
    return edge ? { piece: edge.piece.id, edge: edge.measured.id } : this.#sheet.edgeUnder(spot);
  }

  leave(): void {
    this.#bench.hovered = null;
    this.#found = null;
  }

  /** Goes to a pick-up point by a key, and tells it: with its edge and the reason for its count where that is another. */
  walk(way: PointWay): void {
    const { pickup: plan, selected } = this.#bench;
    if (!plan) return;
    const from = this.#opening && this.#found ? this.#found.point : null;
    const point = pointFrom(plan, way, from, selected);
    if (point === null) return;
    const { edge } = plan.points[point]!;
    const { piece, measured } = plan.edges[edge]!;
    this.#found = { plan, point };
    this.#bench.hovered = null;
    this.#bench.select({ piece: piece.id, edge: measured.id });
    const why = from !== null && plan.points[from]!.edge === edge ? null : reason.words?.(this.#bench);
    this.#bench.announcement = `${pointAloud(plan, point, from)}${why ? `. ${why}` : ''}`;
  }

  /** Brings what is chosen into view: the opening, if it is one, else its edge. */
  show(): void {
    const { selected } = this.#bench;
    if (!selected) return;
    const opening = () => (this.#opening && this.#found ? this.#sheet.spotOf(this.#found.point) : null);
    if (!opening()) this.#sheet.show(selected);
    const spot = opening();
    const by = spot && wayIntoView(this.#sheet.view, this.#sheet.size, spot);
    if (by) this.#sheet.pan(...by);
  }
}
