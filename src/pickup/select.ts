import type { Pickup } from '../piece';
import { shelf } from '../units';
import { chooseOpenings } from './choose';
import { indicesOf, pickOut, unitOf } from './openingList';
import type { OpeningList, Selection } from './plan';
import { rhythmOf, spreadEvenly } from './spread';
import type { StretchOpenings, WorkedStretch } from './stretches';

/** An edge whose count goes up and down in a drag is chosen on once for each count. */
const kept = shelf<StretchOpenings, Selection>(4);

/** The chosen openings of every stretch; of twins the first is chosen and the other is its mirror image. */
export function selectionsOf(
  stretches: readonly WorkedStretch[],
  counts: readonly number[],
  twins: readonly number[],
  spread: Pickup['spread'],
): Selection[] {
  const selections: Selection[] = [];
  stretches.forEach((one, i) => {
    const twin = twins[i] ?? -1;
    const [other, chosen] = [stretches[twin], selections[twin]];
    const alike = counts[twin] === counts[i] && other?.openings.x.length === one.openings.x.length;
    const mirror = twin >= 0 && twin < i && other && chosen && alike;
    selections.push(mirror ? mirrored(other, one, chosen) : selectOpenings(one.openings, counts[i] ?? 0, spread));
  });
  return selections;
}

/**
 * Which openings of a stretch are used for `count` stitches. Second places are brought in only when there are more
 * stitches than first ones; then every first place is used and the second ones are spread evenly, one at an end of the
 * edge among them. Step holes, where the knitter uses them, come on top of `count`.
 */
export function selectOpenings(openings: StretchOpenings, count: number, spread: Pickup['spread']): Selection {
  return kept(openings, [count, spread], () => {
    const all = openings.x.length;
    if (count > openings.first) return withSecond(openings, count, spread);
    if (openings.first === all) return selectionOf(openings, chooseOpenings(openings.joinAt, count, spread));
    const shown = pickOut(
      openings,
      indicesOf(openings, ({ second, hole }) => !second || hole),
    );
    const places = indicesOf(shown, ({ hole }) => !hole);
    const chosen = chooseOpenings(
      places.map((i) => shown.joinAt[i]!),
      count,
      spread,
    );
    const used = shown.sort.map(({ hole }) => hole);
    places.forEach((i, k) => (used[i] = chosen[k]!));
    return selectionOf(shown, used);
  });
}

/** Every first place and hole, and as many second ones as are wanted and there are. */
function withSecond(openings: StretchOpenings, count: number, spread: Pickup['spread']): Selection {
  const used = openings.sort.map(({ second, hole }) => !second || hole);
  const second = indicesOf(openings, (sort) => sort.second && !sort.hole);
  const more = Math.min(second.length, count - openings.first);
  // A gap at an end of the edge is among them; worked downwards it comes first. With one at each end, both are.
  const atStart = second[0] === 0;
  const atEnd = openings.sort.at(-1)?.second === true;
  if (atStart && atEnd) {
    spreadEvenly(second.length, more, spread).forEach((one, i) => (used[second[i]!] = one));
  } else {
    for (let i = 1; i <= more; i++) {
      const fromEnd = Math.ceil((second.length * i) / more) - 1;
      used[second[atStart ? second.length - 1 - fromEnd : fromEnd]!] = true;
    }
  }
  return selectionOf(openings, used);
}

/** The same choice on a mirror twin: point for point, seen from its own working direction. */
function mirrored(one: WorkedStretch, twin: WorkedStretch, choice: Selection): Selection {
  const turned = one.against === twin.against;
  return kept(twin.openings, [choice, turned], () => {
    const brought = choice.openings.sort.some(({ second, hole }) => second && !hole);
    const openings = brought
      ? twin.openings
      : pickOut(
          twin.openings,
          indicesOf(twin.openings, ({ second, hole }) => !second || hole),
        );
    return selectionOf(openings, turned ? [...choice.used].reverse() : choice.used);
  });
}

function selectionOf(openings: OpeningList, used: readonly boolean[]): Selection {
  const usedAt: number[] = [];
  const holes: number[] = [];
  for (let i = 0; i < used.length; i++) {
    if (!used[i]) continue;
    usedAt.push(i);
    if (openings.sort[i]!.hole) holes.push(usedAt.length);
  }
  return { openings, used, usedAt, holes, rhythm: rhythmOf(used), unit: unitOf(openings) };
}
