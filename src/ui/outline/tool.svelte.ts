import {
  copiedPieces,
  heldBy,
  pasted,
  pulled,
  sameGrip,
  type Change,
  type Grip,
  type Held,
  type Hint,
  type Spot,
} from '../../editor';
import type { Piece } from '../../piece';
import type { MeasuredEdge } from '../../shaping';
import { gridToSheet, sheetToGrid, type Place } from '../../renderer';
import type { Sheet } from '../sheet.svelte';
import { SLACK } from '../hand.svelte';
import type { CanvasTool, PressHow } from '../tool';
import type { Outcome, Workbench } from '../workbench.svelte';
import { chosenBy, isIn, stillThere, type Chosen } from './chosen';
import { touchedBy, type InHand } from './inHand';
import { cornersIn, gripNear, type Pane, type SeenGrip } from './near';
import { namedGrips, type NamedGrip } from './named';
import { nudged } from './nudged';
import { whereNow } from './whereNow';
import { workOf } from './work';

/** How near a press must come to a grip, mm of the view. */
const REACH = { mouse: 2.2, touch: 4.6 };
/** How near a held place comes to another one's row or column before it catches, mm of the view. */
const CATCH = 1.3;

/** Shapes the outlines of a design by hand: one movement is one step of its history. */
export class OutlineTool implements CanvasTool {
  readonly bench: Workbench;
  readonly sheet: Sheet;
  #inHand: InHand | null = $state.raw(null);
  /** What would be done if the hand let go now. */
  #change: Change | null = $state.raw(null);
  #hovered: Grip | null = $state.raw(null);
  chosen: Chosen | null = $state.raw(null);
  /** What the hand let go of last: the keys go to it. */
  taken: { readonly grip: Grip } | null = $state.raw(null);
  hints: readonly Hint[] = $state.raw([]);
  /** Where the pointer is while it holds something, on the sheet. */
  pointer: Spot | null = $state.raw(null);
  pane: Pane | null = $state.raw(null);
  /** Exact numbers are being typed for what is chosen. */
  typing: { readonly first: string } | null = $state.raw(null);
  /** Why the last thing that was tried could not be done; empty when it could. */
  refusal = $state('');

  constructor(bench: Workbench, sheet: Sheet) {
    this.bench = bench;
    this.sheet = sheet;
  }

  /** The pieces that are drawn, as the hand has them. */
  readonly pieces: readonly Piece[] = $derived.by(() => {
    const drawn = this.sheet.places.map(({ piece }) => piece);
    return this.bench.tried.pieces.filter(({ id }) => drawn.includes(id));
  });

  readonly grips: readonly NamedGrip[] = $derived.by(() =>
    this.pieces.flatMap((piece) => namedGrips(piece, this.chosen?.piece === piece.id ? this.chosen.edge : null)),
  );

  get holds(): boolean {
    return this.#inHand?.moved === true;
  }

  /** The id of the piece that the hand moves something of. */
  get heldPiece(): string | null {
    return this.#inHand?.moved ? this.#inHand.piece.id : null;
  }

  /** The grip under the pointer or in the hand. */
  get lit(): Grip | null {
    return this.#inHand?.grip ?? this.#hovered;
  }

  get cursor(): string {
    if (this.holds) return 'grabbing';
    return this.#hovered ? 'pointer' : 'default';
  }

  /** The piece that is worked on: the one with something chosen, or the first that is drawn. */
  get piece(): Piece | undefined {
    return this.pieces.find(({ id }) => id === this.chosen?.piece) ?? this.pieces[0];
  }

  /** The measured edges that change under the hand, as they are now. */
  readonly touched: readonly MeasuredEdge[] = $derived.by(() => {
    const inHand = this.#inHand;
    const piece = this.bench.now.measured.find((one) => one.piece.id === inHand?.piece.id);
    return piece && inHand ? touchedBy(inHand, piece.edges) : [];
  });

  /** How far what is held has moved, in stitches and rows; null where it does not go by them. */
  get moved(): readonly [number, number] | null {
    const change = this.#change;
    return change?.kind === 'move-corners' ? [change.dx, change.dy] : null;
  }

  placeOf(piece: string): Place | undefined {
    return this.sheet.places.find((place) => place.piece === piece);
  }

  /** Where a place on a piece's grid lies on the sheet. */
  spotOf(piece: string, [x, y]: readonly [number, number]): Spot | null {
    const place = this.placeOf(piece);
    return place ? gridToSheet(place, x, y) : null;
  }

  isChosen(grip: Grip): boolean {
    return isIn(this.chosen, grip);
  }

  choose(grip: Grip | null, more = false): void {
    this.refusal = '';
    if (grip === null) {
      this.chosen = null;
      this.bench.select(null);
      return;
    }
    this.chosen = chosenBy(this.chosen, grip, more);
    this.bench.select(grip.kind === 'corner' ? null : { piece: grip.piece, edge: grip.edge });
  }

  chooseAll(): void {
    const { piece } = this;
    if (piece) this.chosen = { piece: piece.id, corners: piece.outline.map(({ id }) => id), edge: null };
  }

  press(at: Spot, how: PressHow): boolean {
    const spot = this.#onSheet(at);
    const grip = this.#gripAt(spot, how.touch ? REACH.touch : REACH.mouse);
    const edge = grip ? null : this.sheet.edgeUnder(at);
    const id = grip?.piece ?? edge?.piece;
    const piece = this.bench.design.pieces.find((one) => one.id === id);
    const slack = how.touch ? SLACK.touch : SLACK.mouse;
    if (!piece) {
      if (!how.shift) return false;
      this.pane = { from: spot, to: spot };
      return true;
    }
    const place = this.placeOf(piece.id)!;
    const corners = this.chosen?.piece === piece.id ? this.chosen.corners : [];
    const placed = grip && this.grips.find((one) => sameGrip(one.grip, grip));
    const held: Held | null = placed
      ? heldBy(piece, placed.grip, placed.at, corners)
      : { kind: 'edge', piece: piece.id, edge: edge!.edge };
    const taken: Grip = grip ?? { kind: 'middle', piece: piece.id, edge: edge!.edge };
    this.#inHand = { held, grip: taken, piece, place, from: at, slack, shift: how.shift, moved: false };
    this.bench.breakOff = () => this.breakOff();
    return true;
  }

  move(at: Spot): void {
    const spot = this.#onSheet(at);
    if (this.pane) {
      this.pane = { ...this.pane, to: spot };
      return;
    }
    const inHand = this.#inHand;
    if (!inHand) return;
    const { from, slack, held, piece, place } = inHand;
    if (!inHand.moved) {
      if (Math.hypot(at[0] - from[0], at[1] - from[1]) <= slack) return;
      if (inHand.grip && !this.isChosen(inHand.grip)) this.choose(inHand.grip, inHand.shift);
      this.#inHand = { ...inHand, moved: true };
    }
    this.pointer = spot;
    if (!held) return;
    const one = { x: place.scale * place.cell.width, y: place.scale * place.cell.height };
    const offset = [(at[0] - from[0]) / one.x, (from[1] - at[1]) / one.y] as const;
    const { change, hints } = pulled(piece, held, offset, { x: CATCH / one.x, y: CATCH / one.y });
    this.hints = hints;
    // A hand that stays on the same stitch makes nothing new.
    if (JSON.stringify(change) === JSON.stringify(this.#change)) return;
    this.bench.preview(change);
    this.#change = change;
  }

  lift(at: Spot): void {
    if (this.pane) {
      const caught = cornersIn({ ...this.pane, to: this.#onSheet(at) }, this.#seen);
      this.pane = null;
      if (caught) this.chosen = caught;
      return;
    }
    const inHand = this.#inHand;
    const change = this.#change;
    const moved = inHand?.moved === true;
    this.#putDown();
    if (!inHand) return;
    if (!moved) this.choose(inHand.grip, inHand.shift);
    else if (change) this.make(change);
    if (inHand.grip && this.isChosen(inHand.grip)) this.taken = { grip: inHand.grip };
  }

  /** A press beside everything lets go of what is chosen. */
  tap(): void {
    this.choose(null);
  }

  /** A second press on an edge puts a corner there; on a grip it opens the exact numbers. */
  again(at: Spot): void {
    const spot = this.#onSheet(at);
    const grip = this.#gripAt(spot, REACH.mouse);
    if (grip) {
      this.choose(grip);
      this.type('');
      return;
    }
    const edge = this.sheet.edgeUnder(at);
    const place = edge && this.placeOf(edge.piece);
    if (!edge || !place) return;
    const [x, y] = sheetToGrid(place, ...spot);
    this.make({ kind: 'insert-corner', piece: edge.piece, edge: edge.edge, at: [Math.round(x), Math.round(y)] });
  }

  breakOff(): void {
    this.#putDown();
    this.pane = null;
  }

  hover(at: Spot | null): void {
    this.#hovered = at && this.#gripAt(this.#onSheet(at), REACH.mouse);
    this.bench.hovered = at && !this.#hovered ? this.sheet.edgeUnder(at) : null;
  }

  /** Does one thing to the design. Where it can't be done, the reason is shown and all stays as it was. */
  make(change: Change): Outcome {
    const before = this.bench.design;
    const outcome = this.bench.change(change);
    this.refusal = outcome.ok ? '' : outcome.why;
    if (outcome.ok && this.bench.design !== before && this.chosen) {
      this.chosen = stillThere(this.chosen, this.bench.design);
      if (this.chosen)
        this.bench.announcement = `${whereNow(this.bench, this.chosen)} ${this.bench.announcement}`.trim();
    }
    return outcome;
  }

  /** Moves what is chosen by whole stitches and rows. */
  nudge(dx: number, dy: number): void {
    const { chosen } = this;
    const piece = this.bench.design.pieces.find(({ id }) => id === chosen?.piece);
    const change = chosen && piece ? nudged(piece, chosen, dx, dy) : null;
    if (change) this.make(change);
  }

  readonly work: CanvasTool['work'] = workOf(this);

  /** Puts a corner into the middle of the chosen edge. */
  addCorner(): void {
    const { chosen } = this;
    const middle = this.grips.find(({ grip }) => grip.kind === 'middle' && this.isChosen(grip));
    if (!chosen || !middle) return;
    const [x, y] = middle.at;
    const at = [Math.round(x), Math.round(y)] as const;
    this.make({ kind: 'insert-corner', piece: chosen.piece, edge: middle.grip.edge, at });
  }

  removeCorners(): void {
    const { chosen } = this;
    if (!chosen || chosen.corners.length === 0) return;
    this.make({ kind: 'remove-corners', piece: chosen.piece, corners: chosen.corners });
  }

  /** Opens the exact numbers of what is chosen, the first key already in them. */
  type(first: string): void {
    if (this.chosen) this.typing = { first };
  }

  copied(): string | null {
    return this.piece ? copiedPieces(this.bench.design, [this.piece.id]) : null;
  }

  /** Puts pieces that were copied beside those that are here, one step each. */
  paste(text: string): boolean {
    const found = pasted(text);
    if (!found) return false;
    for (const piece of found.pieces) this.make({ kind: 'add-piece', piece });
    this.sheet.showPiece(null);
    return true;
  }

  /** Does something to the whole piece that is worked on. */
  onPiece(change: (piece: Piece) => Change): void {
    if (this.piece && this.make(change(this.piece)).ok) this.sheet.showPiece(null);
  }

  #putDown(): void {
    this.#inHand = null;
    this.#change = null;
    this.hints = [];
    this.pointer = null;
    this.bench.breakOff = null;
    this.bench.preview(null);
  }

  #onSheet([x, y]: Spot): Spot {
    const { left, top } = this.sheet.view;
    return [x + left, y + top];
  }

  #gripAt(spot: Spot, reach: number): Grip | null {
    return gripNear(this.#seen, spot, reach);
  }

  get #seen(): SeenGrip[] {
    return this.grips.flatMap(({ grip, at }) => {
      const spot = this.spotOf(grip.piece, at);
      return spot ? [{ grip, spot }] : [];
    });
  }
}
