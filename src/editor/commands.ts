/** A key with its modifiers; `mod` is Ctrl, or the command key on a Mac. */
export interface Chord {
  readonly key: string;
  readonly mod?: boolean;
  readonly shift?: boolean;
}

/** What was pressed, as a plain record. */
export interface Press {
  readonly key: string;
  readonly ctrl: boolean;
  readonly meta: boolean;
  readonly alt: boolean;
  readonly shift: boolean;
}

/** Where the keys were going: to a text field, to a grip of an outline, to the drawing or nothing, to anything else. */
export type Focus = 'field' | 'grip' | 'drawing' | 'elsewhere';

interface CommandShape {
  readonly id: string;
  readonly group: 'design' | 'changes' | 'drawing' | 'outline';
  readonly keys: readonly Chord[];
  /** Only while the drawing has the keys, since other things use them too. */
  readonly onDrawing?: boolean;
  /** Only while a grip of an outline has the keys. */
  readonly onGrip?: boolean;
}

/** Everything that can be done by a key, a button or a menu: one record each, shared by all of them. */
export const COMMANDS = [
  { id: 'new', group: 'design', keys: [{ key: 'n' }] },
  { id: 'quick', group: 'design', keys: [{ key: 'q' }] },
  { id: 'open', group: 'design', keys: [{ key: 'o', mod: true }] },
  { id: 'save', group: 'design', keys: [{ key: 's', mod: true }] },
  { id: 'designs', group: 'design', keys: [{ key: 'o', mod: true, shift: true }] },
  { id: 'link', group: 'design', keys: [{ key: 'l', mod: true, shift: true }] },
  { id: 'save-drawing', group: 'design', keys: [{ key: 's', mod: true, shift: true }] },
  { id: 'handout', group: 'design', keys: [{ key: 'h' }] },
  { id: 'needles', group: 'design', keys: [{ key: 'k' }] },
  { id: 'undo', group: 'changes', keys: [{ key: 'z', mod: true }] },
  {
    id: 'redo',
    group: 'changes',
    keys: [
      { key: 'z', mod: true, shift: true },
      { key: 'y', mod: true },
    ],
  },
  { id: 'zoom-in', group: 'drawing', keys: [{ key: '+' }, { key: '=' }] },
  { id: 'zoom-out', group: 'drawing', keys: [{ key: '-' }] },
  { id: 'fit', group: 'drawing', keys: [{ key: '0' }] },
  { id: 'edges', group: 'drawing', keys: [{ key: '1' }] },
  { id: 'outline', group: 'outline', keys: [{ key: 'e' }] },
  { id: 'choose-edges', group: 'outline', keys: [{ key: 'p' }] },
  { id: 'nudge-far-left', group: 'outline', keys: [{ key: 'ArrowLeft', shift: true }], onGrip: true },
  { id: 'nudge-far-right', group: 'outline', keys: [{ key: 'ArrowRight', shift: true }], onGrip: true },
  { id: 'nudge-far-up', group: 'outline', keys: [{ key: 'ArrowUp', shift: true }], onGrip: true },
  { id: 'nudge-far-down', group: 'outline', keys: [{ key: 'ArrowDown', shift: true }], onGrip: true },
  { id: 'nudge-left', group: 'outline', keys: [{ key: 'ArrowLeft' }], onGrip: true },
  { id: 'nudge-right', group: 'outline', keys: [{ key: 'ArrowRight' }], onGrip: true },
  { id: 'nudge-up', group: 'outline', keys: [{ key: 'ArrowUp' }], onGrip: true },
  { id: 'nudge-down', group: 'outline', keys: [{ key: 'ArrowDown' }], onGrip: true },
  { id: 'add-corner', group: 'outline', keys: [{ key: 'i' }], onGrip: true },
  { id: 'remove-corner', group: 'outline', keys: [{ key: 'Delete' }, { key: 'Backspace' }], onGrip: true },
  { id: 'exact', group: 'outline', keys: [{ key: 'Enter' }], onGrip: true },
  { id: 'choose-all', group: 'outline', keys: [{ key: 'a', mod: true }], onGrip: true },
  { id: 'duplicate-piece', group: 'outline', keys: [{ key: 'd', mod: true }], onGrip: true },
  { id: 'mirror-piece', group: 'outline', keys: [{ key: 'm' }], onGrip: true },
  { id: 'pan-left', group: 'drawing', keys: [{ key: 'ArrowLeft' }], onDrawing: true },
  { id: 'pan-right', group: 'drawing', keys: [{ key: 'ArrowRight' }], onDrawing: true },
  { id: 'pan-up', group: 'drawing', keys: [{ key: 'ArrowUp' }], onDrawing: true },
  { id: 'pan-down', group: 'drawing', keys: [{ key: 'ArrowDown' }], onDrawing: true },
  { id: 'next-edge', group: 'drawing', keys: [{ key: ']' }], onDrawing: true },
  { id: 'previous-edge', group: 'drawing', keys: [{ key: '[' }], onDrawing: true },
  { id: 'next-point', group: 'drawing', keys: [{ key: '.' }], onDrawing: true },
  { id: 'previous-point', group: 'drawing', keys: [{ key: ',' }], onDrawing: true },
  { id: 'first-point', group: 'drawing', keys: [{ key: 'Home' }], onDrawing: true },
  { id: 'last-point', group: 'drawing', keys: [{ key: 'End' }], onDrawing: true },
  { id: 'let-go', group: 'drawing', keys: [{ key: 'Escape' }], onDrawing: true },
  { id: 'keys', group: 'design', keys: [{ key: '?' }] },
] as const satisfies readonly CommandShape[];

export type CommandId = (typeof COMMANDS)[number]['id'];
export type Command = CommandShape & { readonly id: CommandId };

const commands: readonly Command[] = COMMANDS;

/** The command that a key press asks for, if any. Plain keys belong to a text field while it has the focus. */
export function commandFor(press: Press, focus: Focus): CommandId | null {
  if (press.alt) return null;
  const mod = press.ctrl || press.meta;
  if (focus === 'field' && !mod) return null;
  const onDrawing = focus === 'drawing' || focus === 'grip';
  const found = commands.find(
    (command) =>
      (onDrawing || !command.onDrawing) &&
      (focus === 'grip' || !command.onGrip) &&
      command.keys.some((chord) => matches(chord, press, mod)),
  );
  return found?.id ?? null;
}

function matches(chord: Chord, press: Press, mod: boolean): boolean {
  if ((chord.mod ?? false) !== mod) return false;
  // On many keyboards + and ? are typed with Shift, which says nothing then.
  if ((mod || chord.shift !== undefined) && (chord.shift ?? false) !== press.shift) return false;
  return chord.key === (press.key.length === 1 ? press.key.toLowerCase() : press.key);
}
