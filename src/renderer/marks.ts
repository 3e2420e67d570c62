/**
 * A drawing as plain data: marks in sheet millimetres, y down, grouped by piece and by edge. There is one path for
 * each kind of mark and edge, never one element for each point, so that thousands of points stay few elements.
 */

/** What a path shows. Colour and weight follow from it (palette.ts, sizes.ts). */
export type PathRole =
  | 'fabric'
  | 'knit'
  | 'purl'
  | 'selvage'
  | 'open'
  | 'outline'
  | 'worked'
  | 'skipped'
  | 'skipped-second'
  | 'stem'
  | 'used'
  | 'used-second'
  | 'live'
  | 'marker'
  | 'running'
  | 'buttonhole'
  | 'arrow'
  | 'ruler'
  | 'dimension';

export type TextRole =
  | 'end-number'
  | 'number'
  | 'running-number'
  | 'start-word'
  | 'piece-name'
  | 'piece-note'
  | 'edge-name'
  | 'edge-size'
  | 'ruler-number'
  | 'ruler-unit'
  | 'dimension-text';

export interface PathMark {
  readonly kind: 'path';
  readonly role: PathRole;
  readonly d: string;
  /** How many points, stitches or ticks the path holds. */
  readonly count: number;
  /** Line weight in mm where it is not the role's own. */
  readonly weight?: number;
  /** Id of the pattern that fills it, without prefix. */
  readonly pattern?: string;
}

export interface TextMark {
  readonly kind: 'text';
  readonly role: TextRole;
  readonly text: string;
  /** Where the baseline begins, has its middle or ends, by the anchor. */
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly anchor: 'start' | 'middle' | 'end';
  /** Degrees clockwise about (x, y). */
  readonly rotate?: number;
}

export type Mark = PathMark | TextMark;

/** A named stretch of the drawing; `data` become data- attributes on its element. */
export interface Group {
  readonly name: 'piece' | 'fabric' | 'rulers' | 'dimensions' | 'edge' | 'markers' | 'numbers' | 'names';
  readonly id: string;
  readonly data: Readonly<Record<string, string>>;
  readonly marks: readonly Mark[];
  readonly groups: readonly Group[];
}

/** A repeated stitch that tints the fabric on screen. Never made for files. */
export interface StitchPattern {
  readonly id: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly marks: readonly PathMark[];
}

/** A rectangle in sheet mm; (x, y) is its upper left corner. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Where a piece stands on the sheet: its grid's origin, and how large a stitch and a row are drawn. */
export interface Place {
  readonly piece: string;
  /** Sheet position of the grid's (0, 0). */
  readonly x: number;
  readonly y: number;
  /** Sheet mm to one fabric mm. */
  readonly scale: number;
  /** A stitch's width and a row's height in fabric mm (drawn 3 to 4 where the piece has no gauge). */
  readonly cell: { readonly width: number; readonly height: number };
  /** The fabric on the sheet. */
  readonly box: Box;
}

/** The line of an edge in sheet mm, fine enough to find by arithmetic. */
export interface EdgeTrace {
  readonly piece: string;
  readonly edge: string;
  /** x0, y0, x1, y1 … in the direction of the outline. */
  readonly line: readonly number[];
  readonly box: Box;
}

/** An opening in sheet mm: where its dot or ring is drawn, whether or not there was room for a ring. */
export interface PointTrace {
  /** Index into the points of the drawn pick-up. */
  readonly point: number;
  readonly x: number;
  readonly y: number;
  /** As far outside the line of its edge as stems reach: where its stitch lies on the needle. */
  readonly over: readonly [x: number, y: number];
}

/** Marks that make a group of their own. */
export interface Leaf {
  readonly name: Group['name'];
  readonly marks: readonly Mark[];
}

/** All that is written on a drawing, and what it stands on: of each piece, and over all of them. */
export interface Lettering {
  readonly pieces: readonly (readonly Leaf[])[];
  readonly over: readonly Leaf[];
  /** The room every label takes, in the order they were placed. No two overlap. */
  readonly labels: readonly Box[];
}

export interface Drawing {
  /** Size of the sheet in mm. */
  readonly width: number;
  readonly height: number;
  readonly groups: readonly Group[];
  readonly patterns: readonly StitchPattern[];
  readonly places: readonly Place[];
  readonly edges: readonly EdgeTrace[];
  readonly points: readonly PointTrace[];
  readonly lettering: Lettering;
}
