import { untrack } from 'svelte';
import { centred, keptUnder, panned, SCALE, zoomed, type Size, type Spot, type Viewport } from '../editor';
import { boundsOfAll } from '../geometry';
import type { EdgeRef } from '../piece';
import {
  chosenPieces,
  drawDiagram,
  edgeAt,
  layOut,
  placeOf,
  pointAt,
  scaleToFit,
  stitchesLegible,
  toFabric,
  toSheet,
  type Drawing,
  type DrawOptions,
  type Layout,
  type Place,
} from '../renderer';
import type { DesignPlan, MeasuredPiece } from '../pickup';
import { shelf } from '../units';
import { nearestPlace } from './nearestPlace';
import { blockOf, closeView, keptInSight, nearestPoint, onScreen, windowsIn } from './sheetView';
import type { Workbench } from './workbench.svelte';

/** Pixels to one mm of the sheet: a little more than true size, since a screen stands farther away than paper. */
export const SHEET_PX = 4.6;

/** Below this width, mm, rulers would take more room than they are worth. */
const ROOM_FOR_RULERS = 130;
/** How much nearer to the middle one press brings what is zoomed about. */
const PULL = 0.5;
/** Room at the foot of the view for its buttons, mm. */
const FOOT = 9;
/** How far from an edge a pointer still means it, mm. */
const REACH = 3.4;
/** How far from an opening a pointer still means it, mm. */
const REACH_POINT = 2;

/** What the drawing shows of itself: fitted to a piece or to all, or left where the hand put it. */
type Fitted = 'whole' | 'edges' | null;

/** The drawing at rest, and the one that is there again when what is held is put back. */
const kept = shelf<Sheet, Drawing>(2);

/** The drawing on the page with the part of it that is in view. All lengths are sheet mm. */
export class Sheet {
  readonly #bench: Workbench;
  #size: Size = $state.raw({ width: 0, height: 0 });
  /** The view as the hand left it, and where the first piece stood on the sheet then. */
  #left: { readonly view: Viewport; readonly pin: Place | undefined } = $state.raw({
    view: { scale: 0.3, left: 0, top: 0 },
    pin: undefined,
  });
  #wholeDesign = $state(false);
  /** The one piece that is drawn; null for all. */
  #alone: string | null = $state(null);
  #fitted: Fitted = 'whole';
  #wantsRulers = $state(true);

  constructor(bench: Workbench) {
    this.#bench = bench;
  }

  readonly #pieces: readonly MeasuredPiece[] = $derived.by(() => {
    const { made, pickup } = this.#bench;
    return chosenPieces(made, this.#wholeDesign ? null : pickup, undefined);
  });

  readonly #drawn: readonly MeasuredPiece[] = $derived.by(() => {
    const alone = this.#pieces.filter(({ piece }) => piece.id === this.#alone);
    return alone.length > 0 ? alone : this.#pieces;
  });

  readonly #rulers: boolean = $derived(this.#wantsRulers && this.#size.width >= ROOM_FOR_RULERS);

  readonly #layout: Layout = $derived.by(() => this.#layoutAt(this.#left.view.scale));

  /** What is in view. Where a piece grows or shrinks, the first one's stitch 0 of row 0 stays where it is on screen. */
  readonly #view: Viewport = $derived.by(() => {
    const { view, pin } = this.#left;
    const now = pin && this.#layout.places.find(({ piece }) => piece === pin.piece);
    return now ? panned(view, pin.x - now.x, pin.y - now.y) : view;
  });

  readonly #detail: 'shape' | 'stitches' = $derived.by(() => {
    const gauges = this.#drawn.map(({ piece }) => piece.gauge ?? { stitches: 25, rows: 33, over: 100 });
    return gauges.every((gauge) => stitchesLegible(this.#view.scale, gauge)) ? 'stitches' : 'shape';
  });

  /** The part of the sheet for which stitches are built, as text, so that it compares. */
  readonly #block: string = $derived.by(() => {
    if (this.#detail === 'shape') return '';
    return JSON.stringify(blockOf(this.#view, this.#size));
  });

  /** The drawing as it was when the hand last came to rest. It is the same object until something of it changes. */
  readonly #rested: Drawing = $derived.by(() => {
    const { plan, pickup, design } = this.#bench;
    const drawn = chosenPieces(plan, null, this.#options(null).pieces);
    const settings = [
      pickup,
      plan.design.hand,
      design.units,
      this.#view.scale,
      this.#detail,
      this.#block,
      this.#rulers,
    ];
    const from = [...settings, ...drawn.flatMap(({ piece, edges }) => [piece, edges])];
    return kept(this, from, () => this.#draw(plan, null));
  });

  /**
   * The drawing at the scale of the view. While the hand moves, the edges that it moves follow at once; labels, rulers
   * and the places of the pieces wait until it rests.
   */
  readonly drawing: Drawing = $derived.by(() =>
    this.#bench.moving ? this.#draw(this.#bench.now, this.#rested) : this.#rested,
  );

  get view(): Viewport {
    return this.#view;
  }

  get size(): Size {
    return this.#size;
  }

  get detail(): 'shape' | 'stitches' {
    return this.#detail;
  }

  /** The pieces of the pick-up, drawn or not. */
  get pieces(): readonly MeasuredPiece[] {
    return this.#pieces;
  }

  /** The one piece that is drawn; null where all are. */
  get alone(): string | null {
    return this.#drawn.length < this.#pieces.length ? this.#alone : null;
  }

  /** Draws every piece of the design, or those of the pick-up alone. */
  set wholeDesign(on: boolean) {
    if (on === this.#wholeDesign) return;
    this.#wholeDesign = on;
    this.fit();
  }

  /** Where the pieces stand on the sheet. */
  get places(): readonly Place[] {
    return this.#layout.places;
  }

  get rulers(): boolean {
    return this.#wantsRulers;
  }

  set rulers(on: boolean) {
    this.#wantsRulers = on;
    this.#refit();
  }

  resize(size: Size): void {
    const before = this.#size;
    this.#size = size;
    if (before.width === 0 || this.#fitted) this.#refit();
    else this.#leave(panned(this.#view, (size.width - before.width) / 2, (size.height - before.height) / 2));
  }

  /** The first sight of a design: the piece where the pick-up begins. */
  openView(): void {
    untrack(() => {
      this.showPiece(this.#bench.pickup?.edges[0]?.stretch.piece ?? null);
    });
  }

  /** All that is drawn. */
  fit(): void {
    this.#fitted = 'whole';
    this.#refit();
  }

  /** Draws one piece alone, or all of them, as large as they fit. */
  showPiece(piece: string | null): void {
    this.#alone = piece;
    this.fit();
  }

  /** The picked edges of the piece where the pick-up begins, as large as they will go. */
  fitEdges(): void {
    const drawn = this.#alone ?? this.#bench.pickup?.edges[0]?.stretch.piece ?? null;
    this.#alone = drawn;
    this.#fitted = 'edges';
    this.#refit();
  }

  pan(dx: number, dy: number): void {
    this.#fitted = null;
    this.#leave(this.#within(panned(this.#view, dx, dy)));
  }

  /** Zooms about a spot of the view, which stays where it is; the middle if none is given. */
  zoom(factor: number, at: Spot = [this.#size.width / 2, this.#size.height / 2]): void {
    const { scale, left, top } = this.#view;
    const next = zoomed(scale, factor);
    const spot: Spot = [left + at[0], top + at[1]];
    const from = nearestPlace(this.#layout.places, spot);
    if (next === scale || !from) return;
    const to = this.#layoutAt(next).places.find(({ piece }) => piece === from.piece)!;
    this.#fitted = null;
    this.#leave(this.#within(keptUnder(this.#view, next, spot, toSheet(to, ...toFabric(from, ...spot)))));
  }

  /** Zooms by a key or a button: about the picked edge nearest to the middle, which comes nearer to it. */
  zoomTowards(factor: number): void {
    const middle: Spot = [this.#size.width / 2, this.#size.height / 2];
    const near = factor < 1 ? null : nearestPoint(this.drawing.points, this.#view, middle);
    if (!near) {
      this.zoom(factor);
      return;
    }
    this.zoom(factor, near);
    this.pan(PULL * (middle[0] - near[0]), PULL * (middle[1] - near[1]));
  }

  /** The edge under a spot of the view. */
  edgeUnder([x, y]: Spot): EdgeRef | null {
    const found = edgeAt(this.drawing, [x + this.#view.left, y + this.#view.top], REACH);
    return found && { piece: found.piece, edge: found.edge };
  }

  /** Index of the opening of the pick-up under a spot of the view. */
  pointUnder([x, y]: Spot): number | null {
    return pointAt(this.drawing, [x + this.#view.left, y + this.#view.top], REACH_POINT)?.point ?? null;
  }

  /** Where an opening of the pick-up is drawn on the sheet; null where it is not. */
  spotOf(point: number): Spot | null {
    const trace = this.drawing.points.find((one) => one.point === point);
    return trace ? [trace.x, trace.y] : null;
  }

  /** The line of an edge on the sheet, x0, y0, x1, y1 …; null where it is not drawn. */
  lineOf({ piece, edge }: EdgeRef): readonly number[] | null {
    return this.drawing.edges.find((trace) => trace.piece === piece && trace.edge === edge)?.line ?? null;
  }

  /** Moves the view, if need be, so that an edge lies in it. */
  show({ piece, edge }: EdgeRef): void {
    const box = placeOf(this.drawing, piece, edge);
    if (!box) {
      // It lies on a piece that is not drawn just now.
      if (this.#pieces.some((one) => one.piece.id === piece)) this.showPiece(piece);
      return;
    }
    const { left, top } = this.#view;
    const { width, height } = this.#size;
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    const inside = x >= left && x <= left + width && y >= top && y <= top + height;
    if (!inside) this.pan(left + width / 2 - x, top + height / 2 - y);
  }

  #refit(): void {
    if (this.#size.width === 0 || this.#fitted === null) return;
    if (this.#fitted === 'edges') {
      this.#refitEdges();
      return;
    }
    const { made, pickupIndex } = this.#bench;
    const room = { width: this.#size.width, height: this.#size.height - FOOT };
    const fitting = scaleToFit(made, this.#options(pickupIndex), room);
    const scale = Math.min(SCALE.most, Math.max(SCALE.least, fitting));
    this.#leave(centred(scale, this.#layoutAt(scale), room));
  }

  #refitEdges(): void {
    const first = this.#drawn[0]?.piece.id;
    const edges = this.#bench.pickup?.edges.filter((edge) => edge.stretch.piece === first) ?? [];
    if (first === undefined || edges.length === 0) return;
    const bounds = boundsOfAll(edges.flatMap(({ measured }) => measured.line));
    this.#leave(closeView(first, bounds, this.#size, (scale) => this.#layoutAt(scale)));
  }

  #leave(view: Viewport): void {
    const first = this.#drawn[0]?.piece.id;
    this.#left = { view, pin: this.#layoutAt(view.scale).places.find(({ piece }) => piece === first) };
  }

  #layoutAt(scale: number): Layout {
    return layOut(this.#drawn, { scale, rulers: this.#rulers, dimensions: this.#rulers });
  }

  #options(pickup: number | null): Omit<DrawOptions, 'scale'> {
    const pieces = this.#drawn.map(({ piece }) => piece.id);
    return onScreen(pickup, pieces, this.#detail, this.#bench.design.units, this.#rulers);
  }

  /** @param before the drawing whose labels are taken as they are; null where they are to be placed */
  #draw(plan: DesignPlan, before: Drawing | null): Drawing {
    return drawDiagram(plan, {
      ...this.#options(this.#bench.pickupIndex),
      scale: this.#view.scale,
      ...windowsIn(this.#block, this.#layout.places),
      // Nothing shifts its place while something is held.
      ...(plan === this.#bench.made ? {} : { layout: this.#layout }),
      ...(before ? { lettering: before.lettering } : {}),
    });
  }

  #within(view: Viewport): Viewport {
    return keptInSight(view, this.#layoutAt(view.scale), this.#size);
  }
}
