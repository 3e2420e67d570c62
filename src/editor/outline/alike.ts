/** Whether two plain values hold the same, whatever the order of their fields; a field that is undefined is none. */
export function alike(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (Array.isArray(a) !== Array.isArray(b)) return false;
  const keys = new Set([...Object.keys(a), ...Object.keys(b)]);
  const [left, right] = [a, b] as [Record<string, unknown>, Record<string, unknown>];
  return [...keys].every((key) => alike(left[key], right[key]));
}
