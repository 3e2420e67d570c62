import type { Gauge } from '../../units';
import type { Design, Fabric, Hand, Piece, Rate, Stretch, Terms, Units } from '../design';

/** The pieces that a design can start from. */
export type StarterKind =
  | 'strip'
  | 'rectangle'
  | 'round-neck'
  | 'v-neck'
  | 'cardigan-left'
  | 'cardigan-right'
  | 'back'
  | 'sleeve'
  | 'raglan'
  | 'heel-flap'
  | 'shawl'
  | 'garter-square';

export type MeasureKey =
  | 'stitches'
  | 'rows'
  | 'width'
  | 'height'
  | 'side'
  | 'chest'
  | 'front-width'
  | 'length'
  | 'armhole'
  | 'raglan-depth'
  | 'shoulder'
  | 'shoulder-drop'
  | 'neck-width'
  | 'half-neck'
  | 'neck-depth'
  | 'v-depth'
  | 'back-neck-depth'
  | 'wrist'
  | 'upper-arm'
  | 'sleeve-length'
  | 'cap-height'
  | 'shawl-width'
  | 'shawl-depth';

/** One thing that is asked before a starter is drawn. Stitches and rows are whole. */
export interface Measure {
  readonly key: MeasureKey;
  readonly unit: 'mm' | 'stitches' | 'rows';
  readonly usual: number;
  readonly least: number;
  readonly most: number;
}

export interface Starter {
  /** Id of the piece in a design of its own. */
  readonly id: string;
  readonly measures: readonly Measure[];
  /** Whether the piece needs a gauge: a bare strip does without. */
  readonly gauge: boolean;
  readonly usualGauge: Gauge;
  readonly fabric: Fabric;
}

/** Values by measure; what is not given is the usual one. */
export type MeasureValues = Readonly<Partial<Record<MeasureKey, number>>>;

/** Why no piece can be drawn to some measures. Every record names the measure to look at first. */
export type StarterFault =
  | {
      readonly ok: false;
      readonly reason: 'out-of-range';
      readonly measure: MeasureKey;
      readonly unit: Measure['unit'];
      readonly found: number;
      readonly least: number;
      readonly most: number;
    }
  | { readonly ok: false; readonly reason: 'not-whole'; readonly measure: MeasureKey; readonly found: number }
  | {
      /** The neck and the shoulders beside it are wider than the piece. Lengths in mm. */
      readonly ok: false;
      readonly reason: 'no-room';
      readonly measure: MeasureKey;
      readonly found: number;
      readonly shoulder: number;
      readonly shoulders: 1 | 2;
      readonly within: MeasureKey;
      readonly width: number;
    }
  | {
      /** One width is more than another one allows. Lengths in mm. */
      readonly ok: false;
      readonly reason: 'too-wide';
      readonly measure: MeasureKey;
      readonly found: number;
      readonly than: MeasureKey;
      readonly width: number;
    }
  | {
      /** The neck reaches the foot of the piece. Lengths in mm. */
      readonly ok: false;
      readonly reason: 'too-deep';
      readonly measure: MeasureKey;
      readonly found: number;
      readonly height: number;
    }
  | {
      /** More stitches or rows than a piece may have. */
      readonly ok: false;
      readonly reason: 'too-big';
      readonly measure: MeasureKey;
      readonly what: 'stitches' | 'rows';
      readonly found: number;
      readonly limit: number;
    };

export type StartedPiece = { readonly ok: true; readonly piece: Piece } | StarterFault;

/** Which of a starter's pick-ups it is; its name is text. */
export type StarterPickupKey =
  'band' | 'border' | 'neckband' | 'front-band' | 'first-gusset' | 'second-gusset' | 'edging';

/** A pick-up that a starter is usually given. */
export interface StarterPickup {
  readonly key: StarterPickupKey;
  /** In working order, on the starter's own piece. */
  readonly along: readonly Omit<Stretch, 'piece'>[];
  readonly joined: boolean;
  readonly multiple: number;
  readonly plus: number;
  readonly fabric: Fabric;
  readonly drawIn?: number;
  /** Depth of the band; left out where it is no band but goes on into the work. */
  readonly rows?: number;
  /** For all its edges, where it is not what an edge of its kind goes by. */
  readonly rate?: Rate;
}

/** What a started design is called and how it speaks; names come from text. */
export interface StarterWords {
  readonly name: string;
  readonly piece: string;
  readonly pickups: (key: StarterPickupKey) => string;
  readonly edges?: (id: string) => string | undefined;
  readonly units: Units;
  readonly terms: Terms;
  readonly hand: Hand;
}

export type StartedDesign = { readonly ok: true; readonly design: Design } | StarterFault;
