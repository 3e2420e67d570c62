import type { CommandId, Spot } from '../editor';

/** How a finger or the mouse came down. */
export interface PressHow {
  readonly touch: boolean;
  readonly shift: boolean;
}

/**
 * What takes the hand on the drawing in place of looking at it. Spots are in mm of the view, from its upper left corner.
 */
export interface CanvasTool {
  /** One finger came down; true where the tool takes it, and then it alone hears of it until it is lifted. */
  press(at: Spot, how: PressHow): boolean;
  move(at: Spot): void;
  lift(at: Spot): void;
  /** A press that the tool did not take was lifted where it came down. */
  tap(at: Spot, how: PressHow): void;
  /** A second press in the same place, soon after the first. */
  again(at: Spot): void;
  /** The movement is broken off: all goes back to where it was. */
  breakOff(): void;
  /** Nothing is pressed; null where the pointer left the drawing. */
  hover(at: Spot | null): void;
  /** What is chosen, as text for the clipboard; null where there is nothing of that kind. */
  copied?(): string | null;
  /** Takes in what was copied so; false where it is something else. */
  paste?(text: string): boolean;
  /** Which pointer to show. */
  readonly cursor: string;
  /** Commands that mean something of their own while the tool is in use. */
  readonly work: Readonly<Partial<Record<CommandId, () => void>>>;
}
