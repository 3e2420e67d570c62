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

/** Where the keys were going: to a text field, to the drawing or nothing in particular, to anything else. */
export type Focus = 'field' | 'drawing' | 'elsewhere';

interface CommandShape {
  readonly id: string;
  readonly group: 'design' | 'changes' | 'drawing';
  readonly keys: readonly Chord[];
  /** Only while the drawing has the keys, since other things use them too. */
  readonly onDrawing?: boolean;
}

/** Everything that can be done by a key, a button or a menu: one record each, shared by all of them. */
export const COMMANDS = [
  { id: 'open', group: 'design', keys: [{ key: 'o', mod: true }] },
  { id: 'save', group: 'design', keys: [{ key: 's', mod: true }] },
  { id: 'save-drawing', group: 'design', keys: [{ key: 's', mod: true, shift: true }] },
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
  { id: 'pan-left', group: 'drawing', keys: [{ key: 'ArrowLeft' }], onDrawing: true },
  { id: 'pan-right', group: 'drawing', keys: [{ key: 'ArrowRight' }], onDrawing: true },
  { id: 'pan-up', group: 'drawing', keys: [{ key: 'ArrowUp' }], onDrawing: true },
  { id: 'pan-down', group: 'drawing', keys: [{ key: 'ArrowDown' }], onDrawing: true },
  { id: 'next-edge', group: 'drawing', keys: [{ key: ']' }], onDrawing: true },
  { id: 'previous-edge', group: 'drawing', keys: [{ key: '[' }], onDrawing: true },
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
  const found = commands.find(
    ({ keys, onDrawing }) => (focus === 'drawing' || !onDrawing) && keys.some((chord) => matches(chord, press, mod)),
  );
  return found?.id ?? null;
}

function matches(chord: Chord, press: Press, mod: boolean): boolean {
  if ((chord.mod ?? false) !== mod) return false;
  // On many keyboards + and ? are typed with Shift, which says nothing then.
  if (mod && (chord.shift ?? false) !== press.shift) return false;
  return chord.key === (press.key.length === 1 ? press.key.toLowerCase() : press.key);
}
