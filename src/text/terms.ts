import type { Terms as TermsName } from '../piece';

/**
 * The words that differ between knitters of the United States and of the United Kingdom, in one record per language
 * of the trade. Words that both use (knit, purl, cast on, row, rib, garter) stand in the sentences themselves. The
 * pairs are common practice, as patterns of both countries write them.
 */
export interface Terms {
  readonly name: TermsName;
  readonly bindOff: string;
  readonly boundOff: string;
  readonly bindingOff: string;
  readonly gauge: string;
  readonly stockinette: string;
  readonly reverseStockinette: string;
  readonly seed: string;
  readonly selvage: string;
  readonly selvages: string;
  /** To make new stitches along an edge, with yarn. */
  readonly pickUpAndKnit: string;
  readonly pickingUpAndKnitting: string;
  /** The same, short enough to be said again and again inside a rhythm. */
  readonly pickUp: string;
  /** Abbreviation of `pickUpAndKnit`. */
  readonly pickUpShort: string;
  /** Without shaping: `work 6 rows even`. */
  readonly even: string;
  /** Increase made in the front and back of one stitch. */
  readonly knitFrontAndBack: string;
  readonly yarnOver: string;
  /** A decrease that leans to the left. */
  readonly leftDecrease: string;
  /** A decrease of three stitches to one that stands upright. */
  readonly centredDecrease: string;
}

const US: Terms = {
  name: 'US',
  bindOff: 'bind off',
  boundOff: 'bound off',
  bindingOff: 'binding off',
  gauge: 'gauge',
  stockinette: 'stockinette',
  reverseStockinette: 'reverse stockinette',
  seed: 'seed stitch',
  selvage: 'selvage',
  selvages: 'selvages',
  pickUpAndKnit: 'pick up and knit',
  pickingUpAndKnitting: 'picking up and knitting',
  pickUp: 'pick up',
  pickUpShort: 'pu&k',
  even: 'even',
  knitFrontAndBack: 'kfb',
  yarnOver: 'yo',
  leftDecrease: 'ssk',
  centredDecrease: 's2kp2',
};

const UK: Terms = {
  name: 'UK',
  bindOff: 'cast off',
  boundOff: 'cast off',
  bindingOff: 'casting off',
  gauge: 'tension',
  stockinette: 'stocking stitch',
  reverseStockinette: 'reverse stocking stitch',
  seed: 'moss stitch',
  selvage: 'selvedge',
  selvages: 'selvedges',
  pickUpAndKnit: 'knit up',
  pickingUpAndKnitting: 'knitting up',
  pickUp: 'knit up',
  pickUpShort: 'knit up',
  even: 'straight',
  knitFrontAndBack: 'k1f&b',
  yarnOver: 'yfwd',
  leftDecrease: 'skpo',
  centredDecrease: 'sl2tog k1 psso',
};

export const TERMS: Readonly<Record<TermsName, Terms>> = { US, UK };

/** The words of one language of the trade. */
export function termsFor(name: TermsName): Terms {
  return TERMS[name];
}
