import type { Place, Strand } from './strand';

/** Width of a needle's shaft, and how long its point tapers, mm. */
const SHAFT = 3.2;
const TAPER = 24;
const TIP = 1.1;

/** Depth of a needle before and behind the fabric. */
export const BEFORE = 6;
export const BEHIND = -6;

/** Over this length along the needle it goes from the front to the back. */
const DIVE = 0.8;

/**
 * A needle that lies before the fabric, goes in at `entry` and shows its tip `beyond` mm farther on, behind.
 *
 * @param angle of its direction on the sheet, radians, y down
 * @param before how much of it lies before the entry, mm
 */
export function needle(
  entry: { readonly x: number; readonly y: number },
  angle: number,
  before: number,
  beyond: number,
  depth: (along: number) => number = dive,
): Strand {
  const [dx, dy] = [Math.cos(angle), Math.sin(angle)];
  const places: Place[] = [];
  const widths: number[] = [];
  for (const along of stops(-before, beyond)) {
    places.push({ x: entry.x + dx * along, y: entry.y + dy * along, z: depth(along) });
    widths.push(widthAt(beyond - along));
  }
  return { kind: 'needle', places, widths };
}

/** From before the fabric to behind it about the entry. */
function dive(along: number): number {
  const t = Math.min(1, Math.max(0, (along - 0.4) / DIVE + 0.5));
  return BEFORE + (BEHIND - BEFORE) * t;
}

function stops(from: number, to: number): number[] {
  const list: number[] = [];
  const round = TIP / 2;
  for (let s = from; s < to - round - 0.2; s += 0.4) list.push(s);
  // The rounded end, by equal angles.
  for (let i = 0; i <= 8; i++) list.push(to - round + round * Math.sin((i * Math.PI) / 16));
  return list;
}

/** Width of the needle so far from its tip: a round end, a taper that softens into the shaft. */
export function widthAt(fromTip: number): number {
  const round = TIP / 2;
  if (fromTip < round) return 2 * Math.sqrt(Math.max(0, round * round - (round - fromTip) ** 2)) + 0.001;
  const t = Math.min(1, (fromTip - round) / TAPER);
  const eased = 1 - (1 - t) ** 2;
  return TIP + (SHAFT - TIP) * eased;
}
