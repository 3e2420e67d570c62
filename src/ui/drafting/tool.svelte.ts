import { drafted, LEAST_CORNERS, pieceFrom, type Draft, type Spot } from '../../editor';
import type { GridPoint, Piece } from '../../piece';
import { gridToSheet, sheetToGrid, type Place } from '../../renderer';
import { DRAFTING } from '../../text';
import type { Sheet } from '../sheet.svelte';
import type { CanvasTool, PressHow } from '../tool';
import type { Outcome, Workbench } from '../workbench.svelte';

/** How near the first corner a press still means it, mm of the view. */
const REACH = { mouse: 2.2, touch: 4.6 };
/** How near to the row or column of another corner a press catches, mm of the view. */
const CATCH = 1.3;
/** Where the corner of the grid lies in the view at first, as a part of it. */
const START = { x: 0.2, y: 0.75 };
const GAUGE = { stitches: 22, rows: 30, over: 100 };

/** Draws a piece from nothing: its corners are pressed, or placed by the keys, one after the other. */
export class DraftingTool implements CanvasTool {
  readonly bench: Workbench;
  readonly sheet: Sheet;
  readonly #finish: (piece: Piece) => Outcome;
  readonly gauge: typeof GAUGE;
  /** Where the grid lies from the first piece's own grid, fabric mm. */
  readonly #origin: Spot;
  corners: Draft = $state.raw([]);
  /** The place that comes next: under the pointer, or where the keys have taken it. */
  next: GridPoint = $state.raw([0, 0]);
  refusal = $state('');
  readonly cursor = 'crosshair';

  /** @param finish puts the finished piece where it belongs */
  constructor(bench: Workbench, sheet: Sheet, finish: (piece: Piece) => Outcome) {
    this.bench = bench;
    this.sheet = sheet;
    this.#finish = finish;
    this.gauge = bench.design.pieces.find(({ gauge }) => gauge)?.gauge ?? GAUGE;
    const { view, size } = sheet;
    const first = sheet.places[0];
    const at: Spot = [view.left + START.x * size.width, view.top + START.y * size.height];
    this.#origin = first ? [(at[0] - first.x) / first.scale, (first.y - at[1]) / first.scale] : [0, 0];
  }

  /** Where the grid lies on the sheet. It goes with the drawing under it as that is moved and zoomed. */
  readonly place: Place = $derived.by(() => {
    const { view } = this.sheet;
    const first = this.sheet.places[0];
    const { stitches, rows, over } = this.gauge;
    return {
      piece: '',
      x: (first?.x ?? view.left) + this.#origin[0] * view.scale,
      y: (first?.y ?? view.top) - this.#origin[1] * view.scale,
      scale: view.scale,
      cell: { width: over / stitches, height: over / rows },
      box: { x: 0, y: 0, width: 0, height: 0 },
    };
  });

  readonly work: CanvasTool['work'] = {
    'nudge-left': () => this.go(-1, 0),
    'nudge-right': () => this.go(1, 0),
    'nudge-up': () => this.go(0, 1),
    'nudge-down': () => this.go(0, -1),
    'nudge-far-left': () => this.go(-10, 0),
    'nudge-far-right': () => this.go(10, 0),
    'nudge-far-up': () => this.go(0, 10),
    'nudge-far-down': () => this.go(0, -10),
    exact: () => this.put(this.next),
    'remove-corner': () => this.takeBack(),
    undo: () => this.takeBack(),
  };

  get canClose(): boolean {
    return this.corners.length >= LEAST_CORNERS;
  }

  spotOf([x, y]: readonly [number, number]): Spot {
    return gridToSheet(this.place, x, y);
  }

  press(): boolean {
    return false;
  }

  move(): void {
    // A drag moves the drawing.
  }

  lift(): void {
    // A drag moves the drawing.
  }

  breakOff(): void {
    // Nothing is ever held.
  }

  again(): void {
    // The second press on a place has closed the outline already.
  }

  hover(at: Spot | null): void {
    if (at) this.next = this.#placeAt(at, REACH.mouse);
  }

  tap(at: Spot, { touch }: PressHow): void {
    this.next = this.#placeAt(at, touch ? REACH.touch : REACH.mouse);
    this.put(this.next);
  }

  go(dx: number, dy: number): void {
    this.next = [this.next[0] + dx, this.next[1] + dy];
  }

  put(at: GridPoint): void {
    this.refusal = '';
    const step = drafted(this.corners, at);
    if (step.kind === 'close') this.close();
    else this.corners = step.corners;
  }

  takeBack(): void {
    this.refusal = '';
    this.corners = this.corners.slice(0, -1);
  }

  close(): void {
    if (!this.canClose) return;
    const outcome = this.#finish(pieceFrom(this.corners, { id: 'piece', name: DRAFTING.piece }, this.gauge));
    if (!outcome.ok) this.refusal = outcome.why;
  }

  #placeAt([x, y]: Spot, reach: number): GridPoint {
    const { left, top } = this.sheet.view;
    const spot: Spot = [x + left, y + top];
    const [first] = this.corners;
    const there = first && this.spotOf(first);
    if (there && Math.hypot(there[0] - spot[0], there[1] - spot[1]) <= reach) return first;
    const [column, row] = sheetToGrid(this.place, ...spot);
    const { scale, cell } = this.place;
    return [
      this.#caught(0, column, CATCH / (scale * cell.width)) ?? Math.round(column),
      this.#caught(1, row, CATCH / (scale * cell.height)) ?? Math.round(row),
    ];
  }

  #caught(axis: 0 | 1, value: number, reach: number): number | undefined {
    const near = this.corners.map((corner) => corner[axis]).filter((other) => Math.abs(other - value) <= reach);
    return near.sort((a, b) => Math.abs(a - value) - Math.abs(b - value))[0];
  }
}
