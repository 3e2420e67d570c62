import { NEEDLE } from './needle';
import { boundOffStitch } from './places';
import type { Terms } from './terms';
import { capitalised } from './words';

/** What the close-up drawings of openings show. */
export const CLOSE_UP_KINDS = [
  'bound-off',
  'cast-on',
  'provisional',
  'live',
  'selvage',
  'selvage-half',
  'selvage-strand',
  'slope',
  'garter-bump',
  'garter-between',
  'garter-hollow',
  'chain',
  'chain-gap',
  'step',
  'step-hole',
] as const;

export type CloseUpKind = (typeof CLOSE_UP_KINDS)[number];

export interface CloseUpCaption {
  readonly title: string;
  /** One sentence, with its full stop. */
  readonly sentence: string;
}

/** Short words inside the drawings. They are alike in all English terms, so the drawings are too. */
export const CLOSE_UP_LABELS = {
  chain: 'chain',
  castOn: 'cast-on',
  undone: 'loops of the undone cast-on',
  held: 'held stitches',
  edgeStitch: 'edge stitch',
  strand: 'outermost strand',
  decrease: 'decrease',
  ridge: 'ridge',
  hollow: 'hollow',
  gap: 'gap',
  foot: 'foot of the step',
  passOver: 'foot of the step: pass over',
} as const;

/**
 * Title and sentence under a close-up: where the needle goes, in the words of the written instructions.
 *
 * @param firstRow "row" or "round", as the first one after the pick-up is called
 */
export function closeUpCaption(kind: CloseUpKind, terms: Terms, firstRow: string): CloseUpCaption {
  const { selvage, stockinette } = terms;
  const side = `${capitalised(stockinette)} ${selvage}`;
  const said = (title: string, where: string): CloseUpCaption => ({ title, sentence: `${capitalised(where)}.` });
  switch (kind) {
    case 'bound-off':
      return said(`${capitalised(boundOffStitch(terms))} edge`, NEEDLE.boundOff(terms));
    case 'cast-on':
      return said('Cast-on edge', NEEDLE.castOn);
    case 'provisional':
      return said('Provisional cast-on', NEEDLE.provisional);
    case 'live':
      return said('Held stitches', NEEDLE.live);
    case 'selvage':
      return said(`${side}, a whole stitch in`, NEEDLE.row[1](terms));
    case 'selvage-half':
      return said(`${side}, half a stitch in`, NEEDLE.row[0.5](terms));
    case 'selvage-strand':
      return said(`${side}, at the very edge`, NEEDLE.row[0]());
    case 'slope':
      return said('Slope with decreases', `${NEEDLE.row[1](terms)}, as on a straight edge`);
    case 'garter-bump':
      return said('Garter ridge, at the edge', NEEDLE.bump);
    case 'garter-between':
      return said('Garter ridge, a stitch in', NEEDLE.inside);
    case 'garter-hollow':
      return said('Hollow between garter ridges', NEEDLE.hollow);
    case 'chain':
      return said('Slipped edge', NEEDLE.chain);
    case 'chain-gap':
      return said('Slipped edge, between chains', NEEDLE.gap);
    case 'step':
      return said('Foot of a step', NEEDLE.passOver);
    case 'step-hole':
      return said('Foot of a step, hole used', NEEDLE.hole(firstRow));
  }
}
