import type { Spot } from './viewport';

/** A finger, or the pointer of a mouse, at a place in the view. */
export interface Finger {
  readonly id: number;
  readonly at: Spot;
}

/** What the hand is doing: one finger moves the drawing, two move and zoom it. */
export type Gesture =
  | { readonly kind: 'idle' }
  | { readonly kind: 'pan'; readonly from: Spot; readonly finger: Finger; readonly moved: boolean }
  | { readonly kind: 'pinch'; readonly fingers: readonly [Finger, Finger] };

/** What follows for the view. */
export type Effect =
  | { readonly kind: 'pan'; readonly dx: number; readonly dy: number }
  | { readonly kind: 'zoom'; readonly factor: number; readonly at: Spot; readonly dx: number; readonly dy: number }
  | { readonly kind: 'tap'; readonly at: Spot };

export interface Turn {
  readonly gesture: Gesture;
  readonly effect: Effect | null;
}

export const IDLE: Gesture = { kind: 'idle' };

const only = (gesture: Gesture, effect: Effect | null = null): Turn => ({ gesture, effect });

/** A finger comes down. A third one changes nothing. */
export function pressed(gesture: Gesture, finger: Finger): Turn {
  switch (gesture.kind) {
    case 'idle':
      return only({ kind: 'pan', from: finger.at, finger, moved: false });
    case 'pan':
      return only({ kind: 'pinch', fingers: [gesture.finger, finger] });
    case 'pinch':
      return only(gesture);
  }
}

/**
 * A finger moves.
 *
 * @param slack how far a finger may tremble before it moves the drawing
 */
export function moved(gesture: Gesture, finger: Finger, slack: number): Turn {
  switch (gesture.kind) {
    case 'idle':
      return only(gesture);
    case 'pan': {
      if (gesture.finger.id !== finger.id) return only(gesture);
      const { from } = gesture;
      if (!gesture.moved && Math.hypot(finger.at[0] - from[0], finger.at[1] - from[1]) <= slack) return only(gesture);
      const before = gesture.finger.at;
      return only(
        { kind: 'pan', from, finger, moved: true },
        { kind: 'pan', dx: finger.at[0] - before[0], dy: finger.at[1] - before[1] },
      );
    }
    case 'pinch': {
      const [a, b] = gesture.fingers;
      if (a.id !== finger.id && b.id !== finger.id) return only(gesture);
      const fingers: [Finger, Finger] = a.id === finger.id ? [finger, b] : [a, finger];
      const middle = middleOf(gesture.fingers);
      const next = middleOf(fingers);
      // Fingers that meet in one place give no scale.
      const apart = Math.max(spread(gesture.fingers), Number.EPSILON);
      const factor = spread(fingers) / apart;
      const zoom: Effect = { kind: 'zoom', factor, at: middle, dx: next[0] - middle[0], dy: next[1] - middle[1] };
      return only({ kind: 'pinch', fingers }, factor > 0 && factor < 1e6 ? zoom : null);
    }
  }
}

/** A finger is lifted: a tap where it never moved; of two, the other one goes on moving the drawing. */
export function lifted(gesture: Gesture, id: number): Turn {
  switch (gesture.kind) {
    case 'idle':
      return only(gesture);
    case 'pan':
      if (gesture.finger.id !== id) return only(gesture);
      return only(IDLE, gesture.moved ? null : { kind: 'tap', at: gesture.finger.at });
    case 'pinch': {
      const left = gesture.fingers.find((finger) => finger.id !== id);
      const known = gesture.fingers.some((finger) => finger.id === id);
      return known && left ? only({ kind: 'pan', from: left.at, finger: left, moved: true }) : only(gesture);
    }
  }
}

/** The gesture is broken off, by Escape or by the system: a drawing that was moved by one finger goes back. */
export function brokenOff(gesture: Gesture): Turn {
  if (gesture.kind !== 'pan' || !gesture.moved) return only(IDLE);
  const { from, finger } = gesture;
  return only(IDLE, { kind: 'pan', dx: from[0] - finger.at[0], dy: from[1] - finger.at[1] });
}

function middleOf([a, b]: readonly [Finger, Finger]): Spot {
  return [(a.at[0] + b.at[0]) / 2, (a.at[1] + b.at[1]) / 2];
}

function spread([a, b]: readonly [Finger, Finger]): number {
  return Math.hypot(a.at[0] - b.at[0], a.at[1] - b.at[1]);
}
