import { chooseOpenings } from './choose';
import type { EdgeOpening } from './openings';
import { spreadEvenly } from './spread';
import type { WorkedStretch } from './stretches';

/** The openings of a stretch that a plan shows, and which of them it uses. */
export interface Selection {
  readonly openings: readonly EdgeOpening[];
  readonly used: readonly boolean[];
}

/**
 * Which openings of a stretch are used for `count` stitches. Second places are brought in only when there are more
 * stitches than first ones; then every first place is used and the second ones are spread evenly, one at an end of the
 * edge among them. Step holes, where the knitter uses them, come on top of `count`.
 */
export function selectOpenings(one: WorkedStretch, count: number, spread: 'even' | 'grouped'): Selection {
  const first = one.openings.filter((opening) => !opening.second);
  if (first.length === one.openings.length && count <= first.length) {
    const at = first.map((opening) => opening.joinAt);
    return { openings: one.openings, used: chooseOpenings(at, count, spread) };
  }
  const holes = one.openings.some((opening) => opening.hole);
  const brought = count > first.length;
  const shown = one.openings.filter((opening) => !opening.second || opening.hole || brought);
  const chosen = new Set<EdgeOpening>();
  if (brought) {
    first.forEach((opening) => chosen.add(opening));
    const second = one.openings.filter((opening) => opening.second && !opening.hole);
    const more = Math.min(second.length, count - first.length);
    // A gap at an end of the edge is among them; worked downwards it comes first. With one at each end, both are.
    const atStart = shown[0]?.second === true && !shown[0].hole;
    const atEnd = shown.at(-1)?.second === true;
    if (atStart && atEnd) {
      spreadEvenly(second.length, more, spread).forEach((used, i) => used && chosen.add(second[i]!));
    } else {
      for (let i = 1; i <= more; i++) {
        const fromEnd = Math.ceil((second.length * i) / more) - 1;
        chosen.add(second[atStart ? second.length - 1 - fromEnd : fromEnd]!);
      }
    }
  } else {
    const picked = chooseOpenings(
      first.map((opening) => opening.joinAt),
      count,
      spread,
    );
    first.forEach((opening, i) => {
      if (picked[i]) chosen.add(opening);
    });
  }
  if (holes) one.openings.filter((opening) => opening.hole).forEach((opening) => chosen.add(opening));
  return { openings: shown, used: shown.map((opening) => chosen.has(opening)) };
}

/** The same choice on a mirror twin: point for point, seen from its own working direction. */
export function mirrored(one: WorkedStretch, twin: WorkedStretch, choice: Selection): Selection {
  const turned = one.against === twin.against;
  const second = choice.openings.some((opening) => opening.second && !opening.hole);
  const openings = twin.openings.filter((opening) => !opening.second || opening.hole || second);
  const used = turned ? [...choice.used].reverse() : choice.used;
  return { openings, used };
}
