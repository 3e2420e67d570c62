import { readNumber } from '../units';

/** A list of whole counts, as typed with commas, spaces or plus signs between; null for an empty one. */
export function readCounts(typed: string): readonly number[] | null | 'unread' {
  const words = typed.split(/[\s,;+]+/u).filter((word) => word !== '');
  if (words.length === 0) return null;
  const counts = words.map((word) => {
    const read = readNumber(word);
    return read.ok && Number.isInteger(read.value) && read.value >= 0 ? read.value : null;
  });
  return counts.every((count) => count !== null) ? counts : 'unread';
}
