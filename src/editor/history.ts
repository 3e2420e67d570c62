/** What was, is and can be again. Old states are kept whole: they share all that did not change. */
export interface History<T> {
  readonly past: readonly T[];
  readonly present: T;
  readonly future: readonly T[];
}

export function startHistory<T>(present: T): History<T> {
  return { past: [], present, future: [] };
}

/** One step on; the way forward from an undone step is given up. A step to the very same state is none. */
export function step<T>(history: History<T>, next: T): History<T> {
  if (next === history.present) return history;
  return { past: [...history.past, history.present], present: next, future: [] };
}

export function undo<T>({ past, present, future }: History<T>): History<T> {
  const before = past.at(-1);
  return before === undefined
    ? { past, present, future }
    : { past: past.slice(0, -1), present: before, future: [present, ...future] };
}

export function redo<T>({ past, present, future }: History<T>): History<T> {
  const [next, ...rest] = future;
  return next === undefined ? { past, present, future } : { past: [...past, present], present: next, future: rest };
}
