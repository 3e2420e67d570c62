import type { Terms } from './terms';

/** An abbreviation or a short word of the instructions, and what it stands for. */
interface Abbreviation {
  readonly short: string;
  /** How it is found in a text. */
  readonly found: RegExp;
  readonly meaning: (terms: Terms) => string;
}

/** How a centred double decrease goes on, whatever it is called. */
const DOUBLE_DECREASE = 'knit the next one and pass both over it: two stitches fewer, the middle one on top';

/**
 * Every abbreviation that the instructions use, in the order a list gives them. Meanings as the Craft Yarn Council's
 * list has them ("Knit Abbreviations", https://www.craftyarncouncil.com/standards/knit-abbreviations); `pu&k` and
 * `rib 10` are common practice.
 */
const ABBREVIATIONS: readonly Abbreviation[] = [
  { short: 'k', found: /(?<!sl2tog )\bk\d+\b/, meaning: () => 'knit so many stitches' },
  { short: 'k2tog', found: /\bk2tog\b/, meaning: () => 'knit two stitches together: one stitch fewer' },
  {
    short: 'm1',
    found: /\bm1\b/,
    meaning: () =>
      'make one: lift the strand between two stitches to the left needle and knit it through the back: one stitch more',
  },
  {
    short: 'm1p',
    found: /\bm1p\b/,
    meaning: () =>
      'make one purlwise: lift the strand between two stitches to the left needle and purl it through the back: one stitch more',
  },
  { short: 'p2tog', found: /\bp2tog\b/, meaning: () => 'purl two stitches together: one stitch fewer' },
  { short: 'pu&k', found: /\bpu&k\b/, meaning: ({ pickUpAndKnit }) => pickUpAndKnit },
  {
    short: 'rib',
    found: /\brib \d/,
    meaning: () => 'work so many stitches in rib, knits over knits and purls over purls',
  },
  {
    short: 's2kp2',
    found: /\bs2kp2\b/,
    meaning: () => `slip two stitches together as if to knit them, ${DOUBLE_DECREASE}`,
  },
  {
    short: 'skpo',
    found: /\bskpo\b/,
    meaning: () => 'slip one stitch, knit one, pass the slipped one over it: one stitch fewer',
  },
  {
    short: 'sl2tog k1 psso',
    found: /\bsl2tog k1 psso\b/,
    meaning: () => `slip two stitches together as if to knit them, ${DOUBLE_DECREASE}`,
  },
  {
    short: 'ssk',
    found: /\bssk\b/,
    meaning: () => 'slip two stitches one by one as if to knit them, then knit them together: one stitch fewer',
  },
  {
    short: 'yfwd',
    found: /\byfwd\b/,
    meaning: () =>
      'yarn forward: bring the yarn to the front and over the needle: one stitch more, with a hole under it',
  },
  {
    short: 'yo',
    found: /\byo\b/,
    meaning: () => 'yarn over: bring the yarn over the right needle: one stitch more, with a hole under it',
  },
  { short: '×', found: /×\d/, meaning: () => 'worked so many times' },
];

/**
 * The abbreviations that a text uses, each explained: `k2tog: knit two stitches together: one stitch fewer`; empty where
 * it uses none.
 */
export function abbreviationsIn(paragraphs: readonly string[], terms: Terms): string[] {
  const text = paragraphs.join('\n');
  return ABBREVIATIONS.filter(({ found }) => found.test(text)).map(
    ({ short, meaning }) => `${short}: ${meaning(terms)}`,
  );
}

/** The same as one paragraph: `Abbreviations. k: knit …; m1: make one …`. */
export function abbreviationsText(paragraphs: readonly string[], terms: Terms): string {
  const found = abbreviationsIn(paragraphs, terms);
  return found.length === 0 ? '' : `Abbreviations. ${found.join('; ')}.`;
}
