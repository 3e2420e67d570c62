import type { EdgeRef, SectionsWish } from '../piece';
import { roundHalfUp, type Mm } from '../units';
import type { Marker, Section } from './plan';
import type { Ruler } from './ruler';
import { firstFrom } from './search';

/** A corner, a seam or a centre, along the join. */
export interface Landmark {
  readonly alongMm: Mm;
  readonly ref: EdgeRef;
}

/** Distances one after another, asked for by their place, counted from 0. */
export interface UsedPlaces {
  readonly length: number;
  at(i: number): Mm | undefined;
}

/** What sections are made from. */
export interface SectionGround {
  readonly wish: SectionsWish;
  /** Distances of the used points along the join, growing. */
  readonly used: UsedPlaces;
  readonly landmarks: readonly Landmark[];
  readonly ruler: Ruler;
  readonly hasLength: boolean;
  /** What the first row leaves in all. */
  readonly target: number;
}

/**
 * The sections of a pick-up. With n equal parts and K points the running count at marker i is K * i / n, a half going
 * up, so that the sections sum exactly and differ by one at most; the marker stands between the points of that count,
 * as near as may be to its place by length. At a landmark the running count is the number of points before it.
 */
export function sectionsOf(ground: SectionGround): Section[] {
  const markers = markersOf(ground);
  const total = ground.used.length;
  let before: Marker = { running: 0, alongMm: 0, landmark: null };
  let afterBefore = 0;
  return markers.map((marker, i) => {
    const after = total === 0 ? 0 : roundHalfUp((ground.target * marker.running) / total);
    const section: Section = {
      n: i + 1,
      lengthMm: ground.hasLength ? ground.ruler.lengthAt(marker.alongMm) - ground.ruler.lengthAt(before.alongMm) : null,
      count: marker.running - before.running,
      running: marker.running,
      after: after - afterBefore,
      marker,
    };
    before = marker;
    afterBefore = after;
    return section;
  });
}

function markersOf(ground: SectionGround): Marker[] {
  const { wish, used, ruler } = ground;
  const total = used.length;
  const end: Marker = { running: total, alongMm: ruler.joinMm, landmark: null };
  const markers: Marker[] = [];
  if (wish.by !== 'landmarks') {
    for (let i = 1; i < wish.parts; i++) {
      const running = roundHalfUp((total * i) / wish.parts);
      const ideal = ruler.alongAt((ruler.lengthMm * i) / wish.parts);
      markers.push({ running, alongMm: between(ideal, used, running, ruler.joinMm), landmark: null });
    }
  }
  if (wish.by !== 'length') {
    const slack = 1e-9 * ruler.joinMm;
    for (const { alongMm, ref } of ground.landmarks) {
      if (alongMm <= slack || alongMm >= ruler.joinMm - slack) continue;
      const running = firstFrom(used.length, (i) => used.at(i)! >= alongMm - slack);
      markers.push({ running, alongMm, landmark: ref });
    }
  }
  markers.sort((a, b) => a.running - b.running || a.alongMm - b.alongMm);
  return [...(wish.by === 'both' ? apart(markers, total) : markers), end];
}

/** A marker of count c lies between point c and point c + 1. */
function between(ideal: Mm, used: UsedPlaces, count: number, end: Mm): Mm {
  const low = count > 0 ? (used.at(count - 1) ?? 0) : 0;
  const high = used.at(count) ?? end;
  if (count === 0 || count === used.length) return Math.min(Math.max(ideal, low), high);
  // A quarter of the way at least, so that a marker never stands on a point.
  const margin = (high - low) / 4;
  return Math.min(Math.max(ideal, low + margin), high - margin);
}

/** Of two markers at the same count the landmark stays. */
function apart(markers: readonly Marker[], total: number): Marker[] {
  const kept: Marker[] = [];
  for (const marker of markers) {
    if (marker.running === total && !marker.landmark) continue;
    const last = kept.at(-1);
    if (last?.running === marker.running && !(last.landmark && marker.landmark)) {
      kept[kept.length - 1] = last.landmark ? last : marker;
    } else kept.push(marker);
  }
  return kept;
}

/** Numbers of sections near `parts` over which `count` can be the same on both sides: an even remainder or an odd number. */
export function mirrorableParts(count: number, parts: number): number[] {
  const able = (n: number) => n >= 2 && n <= 64 && (n % 2 === 1 || (count % n) % 2 === 0);
  const found: number[] = [];
  for (let away = 1; away < parts && found.length < 2; away++) {
    for (const n of [parts - away, parts + away]) if (able(n) && found.length < 2) found.push(n);
  }
  return found.sort((a, b) => a - b);
}
