import type { PathRole, TextRole } from './marks';
import { WEIGHT } from './sizes';

/** The few colours of a drawing. Picked-up points are madder, markers are woad, all else ink and the greys of paper. */
export interface Palette {
  readonly ink: string;
  readonly quiet: string;
  readonly fabric: string;
  readonly stitch: string;
  readonly stitchLine: string;
  readonly picked: string;
  readonly marker: string;
  readonly onMarker: string;
  readonly skipped: string;
}

/** Colours of files, and of the page in light. The page's style sheet names the same ones (diagram.css). */
export const LIGHT: Palette = {
  ink: '#2b2926',
  quiet: '#645d52',
  fabric: '#efe7d8',
  stitch: '#f7f1e5',
  stitchLine: '#d3c7b1',
  picked: '#a9351f',
  marker: '#27506b',
  onMarker: '#ffffff',
  skipped: '#7d7465',
};

/** How a kind of path is drawn: which colours of the palette fill and stroke it, and its weight in mm. */
export interface PathLook {
  readonly fill: keyof Palette | null;
  readonly stroke: keyof Palette | null;
  readonly weight: number;
}

const filled = (fill: keyof Palette): PathLook => ({ fill, stroke: null, weight: 0 });
const stroked = (stroke: keyof Palette, weight: number): PathLook => ({ fill: null, stroke, weight });

export const PATH_LOOK: Readonly<Record<PathRole, PathLook>> = {
  fabric: filled('fabric'),
  knit: { fill: 'stitch', stroke: 'stitchLine', weight: WEIGHT.stitch },
  purl: { fill: 'stitch', stroke: 'stitchLine', weight: WEIGHT.stitch },
  selvage: { fill: 'stitch', stroke: 'skipped', weight: WEIGHT.stitch },
  open: stroked('skipped', WEIGHT.stem),
  outline: stroked('ink', WEIGHT.outline),
  worked: stroked('ink', WEIGHT.worked),
  skipped: stroked('skipped', WEIGHT.ring),
  'skipped-second': stroked('skipped', WEIGHT.ring),
  stem: stroked('picked', WEIGHT.stem),
  used: filled('picked'),
  'used-second': filled('picked'),
  live: stroked('picked', WEIGHT.stem),
  marker: stroked('marker', WEIGHT.marker),
  running: filled('marker'),
  buttonhole: { fill: 'stitch', stroke: 'ink', weight: WEIGHT.stem },
  arrow: stroked('ink', WEIGHT.arrow),
  ruler: stroked('quiet', WEIGHT.ruler),
  dimension: stroked('quiet', WEIGHT.ruler),
};

export const TEXT_COLOUR: Readonly<Record<TextRole, keyof Palette>> = {
  'end-number': 'ink',
  number: 'ink',
  'running-number': 'onMarker',
  'start-word': 'ink',
  'piece-name': 'quiet',
  'piece-note': 'quiet',
  'edge-name': 'quiet',
  'edge-size': 'quiet',
  'ruler-number': 'quiet',
  'ruler-unit': 'quiet',
  'dimension-text': 'quiet',
};
