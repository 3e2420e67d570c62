/** How keys are written. */

const KEY_NAMES: Readonly<Record<string, string>> = {
  ArrowLeft: '←',
  ArrowRight: '→',
  ArrowUp: '↑',
  ArrowDown: '↓',
  Escape: 'Esc',
  '-': '−',
  ',': 'comma',
  '.': 'full stop',
};

/** A key as it is printed on it: `Ctrl Shift Z`, `⌘ Z`, `+`. */
export function keyText({ key, mod, shift }: { key: string; mod?: boolean; shift?: boolean }, apple = false): string {
  const name = KEY_NAMES[key] ?? (key.length === 1 ? key.toUpperCase() : key);
  return [...(mod ? [apple ? '⌘' : 'Ctrl'] : []), ...(shift ? ['Shift'] : []), name].join(' ');
}
