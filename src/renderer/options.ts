import type { DrawingWords } from '../text';
import type { Window } from './cells';
import type { FabricStyle } from './fabric';
import type { Layout } from './layout';
import type { Box, Lettering } from './marks';

export interface DrawOptions {
  /** Index of the pick-up to draw; null for the pieces alone. */
  readonly pickup: number | null;
  /** Sheet mm to one fabric mm. */
  readonly scale: number;
  /** Smooth lines, or the stitches themselves with the edges as worked. */
  readonly detail: 'shape' | 'stitches';
  readonly words: DrawingWords;
  /** Ids of the pieces to draw; if not given, those of the pick-up, or all. */
  readonly pieces?: readonly string[];
  readonly rulers: boolean;
  readonly dimensions: boolean;
  /** The part of the sheet that is shown, sheet mm: no label stands outside it. The whole sheet if not given. */
  readonly within?: Box;
  /** Every opening as an empty ring, without numbers or markers: to be marked by hand. */
  readonly blank?: boolean;
  /** Names and sizes of edges and pieces on the fabric; on if not given. */
  readonly names?: boolean;
  /** Texture: a pattern for screens, stitches near the picked edges for files, or nothing. */
  readonly fabric: FabricStyle;
  /**
   * What is in view, in fabric mm of each piece by its id: in stitch detail only stitches inside are built. A piece
   * that is not named has none.
   */
  readonly windows?: Readonly<Record<string, Window>>;
  /** Where the pieces stand, whatever their size now; side by side in the order of the document if not given. */
  readonly layout?: Layout;
  /**
   * Numbers, markers, names, rulers and dimensions of an earlier drawing of the same pieces, to be taken as they are:
   * while an edge moves only what is touched is drawn, and no label looks for its place.
   */
  readonly lettering?: Lettering;
}
