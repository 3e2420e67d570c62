import type { Gauge } from '../units';

/** What a handout can be composed of. */
export const HANDOUT_BLOCKS = [
  'title',
  'diagram',
  'edges',
  'sections',
  'sum',
  'needle',
  'instructions',
  'first-row',
  'band',
  'gauges',
  'strips',
  'abbreviations',
  'ruler',
] as const;

export type HandoutBlock = (typeof HANDOUT_BLOCKS)[number];

/** For whom it is printed: to work from, to be worked out by a class, or with the answers to that. */
export type HandoutVersion = 'sheet' | 'exercise' | 'answers';

/** How a design is printed as a handout. */
export interface Handout {
  readonly paper: 'A4' | 'Letter';
  readonly orientation: 'portrait' | 'landscape';
  /** The diagram as large as the page has room for, or in the size of the fabric over as many pages as that takes. */
  readonly diagram: 'fitted' | 'true-size';
  readonly version: HandoutVersion;
  /** In colour, or all in black on white, for copiers. */
  readonly ink: 'colour' | 'black';
  /** A line or more under the title. */
  readonly note: string;
  /** The blocks that are printed, in their order. */
  readonly blocks: readonly HandoutBlock[];
  /** Other gauges, for the table of gauges and for the practice strips. */
  readonly gauges: readonly Gauge[];
}

/** What a handout is without any wish: all that a piece of work needs, and a ruler to check the print by. */
export const DEFAULT_HANDOUT: Handout = {
  paper: 'A4',
  orientation: 'portrait',
  diagram: 'fitted',
  version: 'sheet',
  ink: 'colour',
  note: '',
  blocks: ['title', 'diagram', 'sections', 'edges', 'needle', 'instructions', 'ruler'],
  gauges: [],
};
