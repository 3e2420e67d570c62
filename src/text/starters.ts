import type {
  Hand,
  MeasureKey,
  StarterKind,
  StarterPickupKey,
  StarterWords,
  Terms as TermsName,
  Units,
} from '../piece';
import { termsFor, type Terms } from './terms';
import { capitalised } from './words';

/** What a starter is called, what it is for in a line, and what its piece is called in a design. */
export interface StarterText {
  readonly title: string;
  readonly line: string;
  readonly piece: string;
}

/** The two words that patterns of the two countries write apart, besides those of `Terms` (common practice). */
const centre = ({ name }: Terms) => (name === 'US' ? 'center' : 'centre');
const cap = ({ name }: Terms) => (name === 'US' ? 'cap' : 'sleeve head');

const STARTERS: Readonly<Record<StarterKind, (terms: Terms) => StarterText>> = {
  strip: () => ({
    title: 'Bare strip',
    line: 'Place stitches over rows, without a drawing.',
    piece: 'Strip',
  }),
  rectangle: () => ({
    title: 'Rectangle',
    line: 'A blanket, a scarf or a panel, with a border all round.',
    piece: 'Rectangle',
  }),
  'round-neck': () => ({
    title: 'Front with a round neck',
    line: 'Set-in armholes, sloped shoulders and a neckband.',
    piece: 'Front',
  }),
  'v-neck': () => ({
    title: 'Front with a V neck',
    line: 'Set-in armholes, sloped shoulders and a V from a point.',
    piece: 'Front',
  }),
  'cardigan-left': () => ({
    title: 'Left front of a cardigan',
    line: 'Worn on the left, with a band along its front edge.',
    piece: 'Left front',
  }),
  'cardigan-right': () => ({
    title: 'Right front of a cardigan',
    line: 'Worn on the right, with a band along its front edge.',
    piece: 'Right front',
  }),
  back: () => ({
    title: 'Back',
    line: 'Set-in armholes, sloped shoulders and a shallow neck.',
    piece: 'Back',
  }),
  sleeve: (terms) => ({
    title: terms.name === 'US' ? 'Sleeve with a cap' : 'Sleeve with a sleeve head',
    line: `Widened from the wrist to the upper arm, with a bell-shaped ${cap(terms)}.`,
    piece: 'Sleeve',
  }),
  raglan: () => ({
    title: 'Raglan front',
    line: 'Sloped from the underarm to a round neck.',
    piece: 'Front',
  }),
  'heel-flap': () => ({
    title: 'Heel flap',
    line: 'Slipped edges, a gusset picked up along each.',
    piece: 'Heel flap',
  }),
  shawl: () => ({
    title: 'Triangular shawl',
    line: 'Garter stitch from the point up, with an edging along two sides.',
    piece: 'Shawl',
  }),
  'garter-square': () => ({
    title: 'Garter square',
    line: 'As high as it is wide, with a border all round.',
    piece: 'Square',
  }),
};

export function starterText(kind: StarterKind, terms: Terms): StarterText {
  return STARTERS[kind](terms);
}

const MEASURES: Readonly<Record<MeasureKey, string>> = {
  stitches: 'Stitches',
  rows: 'Rows',
  width: 'Width',
  height: 'Height',
  side: 'Length of a side',
  chest: 'Width at the chest',
  'front-width': 'Width of the front',
  length: 'Length to the armhole',
  armhole: 'Armhole depth',
  'raglan-depth': 'Raglan depth',
  shoulder: 'Shoulder width',
  'shoulder-drop': 'Shoulder drop',
  'neck-width': 'Neck width',
  'half-neck': 'Half the neck width',
  'neck-depth': 'Neck depth',
  'v-depth': 'Depth of the V',
  'back-neck-depth': 'Neck depth',
  wrist: 'Width at the wrist',
  'upper-arm': 'Width at the upper arm',
  'sleeve-length': 'Length to the underarm',
  'cap-height': 'Cap height',
  'shawl-width': 'Width along the top',
  'shawl-depth': 'Depth to the point',
};

/** What a measure is asked as. */
export function measureLabel(key: MeasureKey, terms: Terms): string {
  return key === 'cap-height' ? `${capitalised(cap(terms))} height` : MEASURES[key];
}

/** Edges whose name is not simply their side before what they are. */
const EDGES: Readonly<Record<string, (terms: Terms) => string>> = {
  'cast-on': () => 'cast-on edge',
  'bound-off': ({ boundOff }) => `${boundOff.replace(' ', '-')} edge`,
  'neck-center': (terms) => `${centre(terms)} neck`,
  'neck-front': () => 'front of the neck',
  'cap-top': (terms) => `top of the ${cap(terms)}`,
  'cap-left': (terms) => `left side of the ${cap(terms)}`,
  'cap-right': (terms) => `right side of the ${cap(terms)}`,
  'raglan-left': () => 'left raglan line',
  'raglan-right': () => 'right raglan line',
  'tip-left': () => 'left raglan tip',
  'tip-right': () => 'right raglan tip',
};

/** The name of a starter's edge by its id: `left armhole`, `bound-off edge`. */
export function starterEdgeName(id: string, terms: Terms): string {
  const own = Object.hasOwn(EDGES, id) ? EDGES[id] : undefined;
  if (own) return own(terms);
  const sided = /^(.+)-(left|right)$/.exec(id);
  return (sided ? `${sided[2] ?? ''} ${sided[1] ?? ''}` : id).replaceAll('-', ' ');
}

const PICKUPS: Readonly<Record<StarterPickupKey, string>> = {
  band: 'Band',
  border: 'Border all round',
  neckband: 'Neckband',
  'front-band': 'Front band',
  'first-gusset': 'First gusset',
  'second-gusset': 'Second gusset',
  edging: 'Edging',
};

export function starterPickupName(key: StarterPickupKey): string {
  return PICKUPS[key];
}

/** All the words that a design started from one piece needs; it is called by the starter's title. */
export function starterWords(
  kind: StarterKind,
  voice: { readonly terms: TermsName; readonly units: Units; readonly hand: Hand },
): StarterWords {
  const terms = termsFor(voice.terms);
  const { title, piece } = starterText(kind, terms);
  return {
    name: title,
    piece,
    pickups: starterPickupName,
    edges: (id) => starterEdgeName(id, terms),
    units: voice.units,
    terms: voice.terms,
    hand: voice.hand,
  };
}
