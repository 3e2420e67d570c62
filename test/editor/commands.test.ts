import { describe, expect, it } from 'vitest';
import { commandFor, COMMANDS, type Command, type Focus, type Press } from '../../src/editor';
import { COMMAND_LABELS, keyText } from '../../src/text';

const commands: readonly Command[] = COMMANDS;

const press = (key: string, held: Partial<Press> = {}): Press => ({
  key,
  ctrl: false,
  meta: false,
  alt: false,
  shift: false,
  ...held,
});

describe('the commands', () => {
  it('each have a name of their own and at least one key', () => {
    expect(Object.keys(COMMAND_LABELS).sort()).toEqual(commands.map(({ id }) => id).sort());
    expect(new Set(Object.values(COMMAND_LABELS)).size).toBe(commands.length);
    for (const { keys } of commands) expect(keys.length).toBeGreaterThan(0);
  });

  it('share no key with another one that goes to the same place', () => {
    const keysOf = (held: (command: Command) => boolean) =>
      commands.filter(held).flatMap(({ keys }) => keys.map((chord) => keyText(chord)));
    const anywhere = keysOf(({ onDrawing, onGrip }) => !onDrawing && !onGrip);
    const drawing = keysOf(({ onDrawing }) => onDrawing === true);
    const grip = keysOf(({ onGrip }) => onGrip === true);
    // What a grip means by a key comes before what the drawing under it means; neither takes a key of the whole page.
    for (const own of [drawing, grip]) {
      const all = [...anywhere, ...own];
      expect(new Set(all).size).toBe(all.length);
    }
    expect(grip.filter((key) => drawing.includes(key)).sort()).toEqual(['←', '↑', '→', '↓']);
  });

  it.each(commands)('$id is given by each of its keys in its own place', ({ id, keys, onGrip }) => {
    const focus = onGrip ? 'grip' : 'drawing';
    for (const { key, mod = false, shift = false } of keys) {
      expect(commandFor(press(key, { ctrl: mod, shift }), focus)).toBe(id);
      if (mod) expect(commandFor(press(key, { meta: true, shift }), focus)).toBe(id);
      if (onGrip) expect(commandFor(press(key, { ctrl: mod, shift }), 'drawing')).not.toBe(id);
    }
  });
});

describe('a key', () => {
  it('with Shift or Caps Lock is the same letter', () => {
    expect(commandFor(press('Z', { ctrl: true, shift: true }), 'drawing')).toBe('redo');
    expect(commandFor(press('Z', { ctrl: true }), 'drawing')).toBe('undo');
  });

  it('that is typed into a field stays there, unless it is held with Ctrl', () => {
    for (const key of ['0', '1', '-', '+', '?', 'ArrowLeft', '[']) expect(commandFor(press(key), 'field')).toBeNull();
    expect(commandFor(press('s', { ctrl: true }), 'field')).toBe('save');
  });

  it.each<[string, Focus, string | null]>([
    ['ArrowLeft', 'drawing', 'pan-left'],
    ['ArrowLeft', 'grip', 'nudge-left'],
    ['ArrowLeft', 'elsewhere', null],
    ['Delete', 'grip', 'remove-corner'],
    ['Delete', 'drawing', null],
    ['Escape', 'grip', 'let-go'],
    ['Escape', 'elsewhere', null],
    ['+', 'elsewhere', 'zoom-in'],
  ])('%s with the focus on %s gives %s', (key, focus, id) => {
    expect(commandFor(press(key), focus)).toBe(id);
  });

  it('with Shift goes ten times as far on a grip, and moves the drawing as it does without', () => {
    expect(commandFor(press('ArrowUp', { shift: true }), 'grip')).toBe('nudge-far-up');
    expect(commandFor(press('ArrowUp', { shift: true }), 'drawing')).toBe('pan-up');
  });

  it('that means nothing, or is held with Alt, gives nothing', () => {
    expect(commandFor(press('x'), 'drawing')).toBeNull();
    expect(commandFor(press('0', { alt: true }), 'drawing')).toBeNull();
    expect(commandFor(press('0', { ctrl: true }), 'drawing')).toBeNull();
  });

  it('is written as on the keyboard', () => {
    expect(keyText({ key: 'z', mod: true, shift: true })).toBe('Ctrl Shift Z');
    expect(keyText({ key: 's', mod: true }, true)).toBe('⌘ S');
    expect(keyText({ key: 'ArrowUp' })).toBe('↑');
  });
});
