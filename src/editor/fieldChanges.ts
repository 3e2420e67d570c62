import type {
  Band,
  Buttonholes,
  Design,
  EdgeRef,
  FirstRowWish,
  Hand,
  Pickup,
  Rate,
  SectionsWish,
  StatedRatio,
  Terms,
  Units,
} from '../piece';
import type { Mm } from '../units';
import { onPickup, placed, withFields } from './records';

/** A change of one field or entry, which leaves every outline as it is. */
export type FieldChange =
  | { readonly kind: 'rename'; readonly name: string }
  | { readonly kind: 'units'; readonly units: Units }
  | { readonly kind: 'terms'; readonly terms: Terms }
  | { readonly kind: 'hand'; readonly hand: Hand }
  | { readonly kind: 'rate'; readonly pickup: string; readonly edge: EdgeRef; readonly rate: Rate | null }
  | { readonly kind: 'measured'; readonly pickup: string; readonly edge: EdgeRef; readonly mm: Mm | null }
  | { readonly kind: 'stated'; readonly pickup: string; readonly edge: EdgeRef; readonly count: number | null }
  | {
      readonly kind: 'stated-ratio';
      readonly pickup: string;
      readonly edge: EdgeRef;
      readonly ratio: StatedRatio | null;
    }
  | { readonly kind: 'buttonholes'; readonly pickup: string; readonly buttonholes: Buttonholes | null }
  | { readonly kind: 'first-row'; readonly pickup: string; readonly firstRow: FirstRowWish | null }
  | { readonly kind: 'band'; readonly pickup: string; readonly band: Partial<Band> }
  | { readonly kind: 'sections'; readonly pickup: string; readonly sections: SectionsWish | null }
  | { readonly kind: 'pickup'; readonly pickup: string; readonly fields: PickupFields };

/** What of a pick-up can be set as a whole. */
export type PickupFields = Partial<
  Pick<
    Pickup,
    | 'name'
    | 'joined'
    | 'measure'
    | 'inset'
    | 'target'
    | 'spread'
    | 'statedTotal'
    | 'statedSections'
    | 'got'
    | 'flat'
    | 'stepHoles'
    | 'halfLoop'
    | 'garterAt'
  >
>;

/** All their kinds. */
const KINDS = {
  rename: true,
  units: true,
  terms: true,
  hand: true,
  rate: true,
  measured: true,
  stated: true,
  'stated-ratio': true,
  buttonholes: true,
  'first-row': true,
  band: true,
  sections: true,
  pickup: true,
} as const satisfies Record<FieldChange['kind'], true>;

/** Whether a change concerns fields alone, so that `fieldChanged` makes it. */
export function isFieldChange(change: { readonly kind: string }): change is FieldChange {
  return Object.hasOwn(KINDS, change.kind);
}

/**
 * The design after a change of fields. What does not change stays the same object, so that nothing is measured or
 * planned anew without need; a change to what already is gives the same design.
 */
export function fieldChanged(design: Design, change: FieldChange): Design {
  switch (change.kind) {
    case 'rename':
      return withFields(design, { name: change.name });
    case 'units':
      return withFields(design, { units: change.units });
    case 'terms':
      return withFields(design, { terms: change.terms });
    case 'hand':
      return withFields(design, { hand: change.hand });
    case 'rate':
      return onPickup(design, change.pickup, (pickup) =>
        withFields(pickup, {
          rates: placed(pickup.rates, change.edge, change.rate === null ? null : { rate: change.rate }),
        }),
      );
    case 'measured':
      return onPickup(design, change.pickup, (pickup) =>
        withFields(pickup, {
          measured: placed(pickup.measured, change.edge, change.mm === null ? null : { mm: change.mm }),
        }),
      );
    case 'stated':
      return onPickup(design, change.pickup, (pickup) =>
        withFields(pickup, {
          stated: placed(pickup.stated, change.edge, change.count === null ? null : { count: change.count }),
        }),
      );
    case 'stated-ratio':
      return onPickup(design, change.pickup, (pickup) => {
        const statedRatios = placed(pickup.statedRatios ?? [], change.edge, change.ratio);
        return statedRatios.length > 0 || pickup.statedRatios ? withFields(pickup, { statedRatios }) : pickup;
      });
    case 'buttonholes':
      return onPickup(design, change.pickup, (pickup) => withOrWithout(pickup, 'buttonholes', change.buttonholes));
    case 'first-row':
      return onPickup(design, change.pickup, (pickup) => withOrWithout(pickup, 'firstRow', change.firstRow));
    case 'band':
      return onPickup(design, change.pickup, (pickup) =>
        withFields(pickup, { band: withFields(pickup.band, change.band) }),
      );
    case 'sections':
      return onPickup(design, change.pickup, (pickup) => withOrWithout(pickup, 'sections', change.sections));
    case 'pickup':
      return onPickup(design, change.pickup, (pickup) => withFields(pickup, change.fields));
  }
}

/** A field that may be missing, set or taken away. */
function withOrWithout<K extends 'sections' | 'buttonholes' | 'firstRow'>(
  pickup: Pickup,
  key: K,
  value: Pickup[K] | null,
): Pickup {
  if (value !== null) return withFields<Pickup>(pickup, { [key]: value });
  if (pickup[key] === undefined) return pickup;
  const { [key]: _gone, ...rest } = pickup;
  return rest as Pickup;
}
