import { signedArea, line } from '../geometry';
import type { Edge, GridPoint, Piece } from '../piece';
import type { Gauge } from '../units';

/** Corners pressed one after the other, not yet a piece. */
export type Draft = readonly GridPoint[];

/** What a pressed place does to a draft: another corner, or the outline is closed. */
export type DraftStep = { readonly kind: 'corner'; readonly corners: Draft } | { readonly kind: 'close' };

/** So many corners make an outline. */
export const LEAST_CORNERS = 3;

/**
 * A place was pressed. On the first corner, or a second time on the last one, it closes the outline if there are corners
 * enough; on any other corner's place nothing changes, since an outline never meets itself.
 */
export function drafted(corners: Draft, at: GridPoint): DraftStep {
  const same = (corner: GridPoint | undefined) => corner?.[0] === at[0] && corner[1] === at[1];
  const closes = same(corners[0]) || same(corners.at(-1));
  if (closes && corners.length >= LEAST_CORNERS) return { kind: 'close' };
  return { kind: 'corner', corners: corners.some(same) ? corners : [...corners, at] };
}

/** What an edge bounds, the fabric on the left of its direction; a knitter renames it where she knows better. */
function sideOf([x, y]: GridPoint, [x1, y1]: GridPoint): string {
  if (y1 === y) return x1 > x ? 'lower-edge' : 'upper-edge';
  return `${y1 > y ? 'right' : 'left'}-${x1 === x ? 'edge' : 'slope'}`;
}

/**
 * A piece of straight edges through the corners, counterclockwise and from its lowest corner, with x and y from 0;
 * its edges are named after their sides.
 */
export function pieceFrom(corners: Draft, words: { id: string; name: string }, gauge: Gauge | null): Piece {
  const area = signedArea(
    corners.map(([x, y], i) => {
      const [x1, y1] = corners[(i + 1) % corners.length]!;
      return line({ x, y }, { x: x1, y: y1 });
    }),
  );
  const round = area < 0 ? [...corners].reverse() : corners;
  const left = Math.min(...round.map(([x]) => x));
  const bottom = Math.min(...round.map(([, y]) => y));
  // The cast-on comes first: the lowest corner, of two the left one.
  const ranked = round.map(([x, y], i) => ({ i, x, y })).sort((a, b) => a.y - b.y || a.x - b.x);
  const first = ranked[0]?.i ?? 0;
  const from = round.map((_, i): GridPoint => {
    const [x, y] = round[(first + i) % round.length]!;
    return [x - left, y - bottom];
  });
  const sides = from.map((corner, i) => sideOf(corner, from[(i + 1) % from.length]!));
  const outline = sides.map((side, i): Edge => {
    const alike = sides.slice(0, i).filter((one) => one === side).length;
    return { id: alike === 0 ? side : `${side}-${alike + 1}`, from: from[i]!, path: 'straight' };
  });
  return {
    ...words,
    ...(gauge ? { gauge } : {}),
    fabric: 'stockinette',
    symmetric: false,
    outline,
  };
}
