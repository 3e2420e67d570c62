import { brokenOff, IDLE, lifted, moved, pressed, type Finger, type Gesture, type Spot, type Turn } from '../editor';
import type { CanvasTool, PressHow } from './tool';

/** How far a finger may tremble, mm of the view. */
export const SLACK = { mouse: 0.8, touch: 2 };

/** What the hand does with the drawing when no tool takes it. */
export interface Looking {
  pan(dx: number, dy: number): void;
  zoom(factor: number, at: Spot): void;
  tap(at: Spot): void;
  hover(at: Spot | null): void;
}

/** The fingers on the drawing: one that a tool takes is the tool's; all others move and zoom the drawing. */
export class Hand {
  readonly #looking: Looking;
  readonly #tool: () => CanvasTool | null;
  #gesture: Gesture = IDLE;
  /** The finger that the tool has taken. */
  #held: Finger | null = null;
  #how: PressHow = { touch: false, shift: false };
  /** The drawing itself is being moved. */
  dragging = $state(false);

  constructor(looking: Looking, tool: () => CanvasTool | null) {
    this.#looking = looking;
    this.#tool = tool;
  }

  get busy(): boolean {
    return this.dragging || this.#held !== null;
  }

  /** @param taken whether a tool may take the finger: it is the first, and no button but the main one */
  press(finger: Finger, how: PressHow, taken: boolean): void {
    this.#how = how;
    if (this.#held) {
      // A second finger: the first one lets go of what it held, and both look at the drawing.
      const first = this.#held;
      this.#letGo();
      this.#take(pressed(this.#gesture, first));
    } else if (taken && this.#gesture.kind === 'idle' && this.#tool()?.press(finger.at, how)) {
      this.#held = finger;
      return;
    }
    this.#take(pressed(this.#gesture, finger));
  }

  move(finger: Finger, touch: boolean): void {
    const tool = this.#tool();
    if (this.#held) {
      if (this.#held.id !== finger.id) return;
      this.#held = finger;
      tool?.move(finger.at);
      return;
    }
    this.#take(moved(this.#gesture, finger, touch ? SLACK.touch : SLACK.mouse));
    if (touch) return;
    const at = this.dragging ? null : finger.at;
    if (tool) tool.hover(at);
    else this.#looking.hover(at);
  }

  lift(finger: Finger): void {
    if (this.#held?.id === finger.id) {
      this.#held = null;
      this.#tool()?.lift(finger.at);
      return;
    }
    this.#take(lifted(this.#gesture, finger.id));
  }

  /** The browser took a finger away that was not lifted: a window came between. */
  lose(id: number): void {
    const gesture = this.#gesture;
    const fingers = gesture.kind === 'pan' ? [gesture.finger] : gesture.kind === 'pinch' ? gesture.fingers : [];
    if ([...fingers, ...(this.#held ? [this.#held] : [])].some((finger) => finger.id === id)) this.breakOff();
  }

  breakOff(): void {
    if (this.#held) this.#letGo();
    this.#take(brokenOff(this.#gesture));
  }

  leave(): void {
    this.#tool()?.hover(null);
    this.#looking.hover(null);
  }

  #letGo(): void {
    this.#held = null;
    this.#tool()?.breakOff();
  }

  #take({ gesture, effect }: Turn): void {
    this.#gesture = gesture;
    this.dragging = gesture.kind === 'pinch' || (gesture.kind === 'pan' && gesture.moved);
    if (effect?.kind === 'pan') this.#looking.pan(effect.dx, effect.dy);
    else if (effect?.kind === 'zoom') {
      this.#looking.zoom(effect.factor, effect.at);
      this.#looking.pan(effect.dx, effect.dy);
    } else if (effect?.kind === 'tap') {
      const tool = this.#tool();
      if (tool) tool.tap(effect.at, this.#how);
      else this.#looking.tap(effect.at);
    }
  }
}
