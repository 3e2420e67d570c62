import type { Band } from '../design';
import type { StarterKind, StarterPickup } from './kinds';

function along(...edges: string[]): StarterPickup['along'] {
  return edges.map((edge) => ({ edge, backwards: false, part: [0, 1] }));
}

type Made = Pick<Band, 'multiple' | 'plus' | 'fabric'>;

/** Flat k2, p2 whose ends match: 4n + 2 (tkga.org/article/k2p2-ribbing-by-binka-schwan). */
const FLAT_RIB: Made = { multiple: 4, plus: 2, fabric: 'rib' };
const GARTER: Made = { multiple: 1, plus: 0, fabric: 'garter' };
const STOCKINETTE: Made = { multiple: 1, plus: 0, fabric: 'stockinette' };

/** The front part of a neckband, until the back is there too. */
const neckband = (...edges: string[]): readonly StarterPickup[] => [
  { key: 'neckband', along: along(...edges), joined: false, ...FLAT_RIB, rows: 8 },
];

const FRONT_BAND: readonly StarterPickup[] = [
  { key: 'front-band', along: along('front-edge'), joined: false, ...FLAT_RIB, rows: 10 },
];

/** All round in the direction of work, from the right end of the bound-off edge. */
const BORDER: readonly StarterPickup[] = [
  {
    key: 'border',
    along: along('bound-off', 'side-left', 'cast-on', 'side-right'),
    joined: true,
    ...GARTER,
    rows: 12,
  },
];

/** One from each chain of a slipped edge (osbornfiber.com 2010/06/27). */
const gusset = (key: 'first-gusset' | 'second-gusset', edge: string): StarterPickup => ({
  key,
  along: along(edge),
  joined: false,
  ...STOCKINETTE,
  rate: { kind: 'each' },
});

/** The pick-ups that each starter is usually given, none for a sleeve; `along` names edges of the starter. */
export const STARTER_PICKUPS: Readonly<Record<StarterKind, readonly StarterPickup[]>> = {
  // Three from every four rows, the usual rate of stockinette, stands in for the gauge that a strip has not.
  strip: [
    {
      key: 'band',
      along: along('edge'),
      joined: false,
      ...STOCKINETTE,
      rate: { kind: 'ratio', pick: 3, of: 4 },
    },
  ],
  rectangle: BORDER,
  'round-neck': neckband('neck-left', 'neck-center', 'neck-right'),
  'v-neck': neckband('neck-left', 'neck-right'),
  'cardigan-left': FRONT_BAND,
  'cardigan-right': FRONT_BAND,
  back: neckband('neck-right', 'neck-center', 'neck-left'),
  sleeve: [],
  raglan: neckband('neck-left', 'neck-center', 'neck-right'),
  'heel-flap': [gusset('first-gusset', 'edge-left'), gusset('second-gusset', 'edge-right')],
  // Down one slanting side, across the two stitches of the point and up the other.
  shawl: [{ key: 'edging', along: along('side-left', 'cast-on', 'side-right'), joined: false, ...GARTER, rows: 8 }],
  'garter-square': BORDER,
};
