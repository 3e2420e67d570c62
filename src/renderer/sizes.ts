/** Every measure of the drawing's hand, in sheet mm: the same on screen and on paper. */

export const WEIGHT = {
  outline: 0.35,
  stem: 0.25,
  marker: 0.25,
  ring: 0.18,
  arrow: 0.25,
  worked: 0.18,
  ruler: 0.13,
  stitch: 0.13,
} as const;

/** The four type sizes: small print, numbers, names of edges, names of pieces. */
export const TYPE = { small: 2.5, number: 2.9, edge: 3.4, piece: 5 } as const;

/** Serifs with open forms first; the last ones are what common systems have. */
export const SERIF = "'Iowan Old Style', Charter, 'Palatino Linotype', Palatino, 'DejaVu Serif', Georgia, serif";

/** Radius of a dot, as a part of the distance between neighbouring openings, and its bounds. */
export const DOT = { part: 0.34, floor: 0.24, most: 0.85 } as const;

/** A ring is this part of a dot. */
export const RING = 0.62;

/** Rings closer together than this can't be told from a line, so they are left out; dots stay. */
export const RING_SPACING = 0.62;

/** How far a stem reaches over the edge: this part of the spacing, within bounds. */
export const STEM = { part: 1.5, least: 1.1, most: 2.6 } as const;

/** Clear distance between a mark and its label. */
export const LABEL_GAP = 0.7;

/** Clear room round every label. */
export const CLEAR = 0.45;

/** Room round a piece for numbers and marks outside it. */
export const MARGIN = 11;

/** Room between two pieces, beyond their margins. */
export const PIECE_GAP = 8;

/** Room that one ruler takes, with its numbers. */
export const RULER = 7;

/** Room that a dimension line takes. */
export const DIMENSION = 7;
