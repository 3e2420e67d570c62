import type { Band, Design, EdgeRef, Hand, Pickup, Piece, Rate, SectionsWish, Terms, Units } from '../piece';
import type { Gauge, Mm } from '../units';
import { regridded } from './regrid';

/** Every way in which a design can be changed: one record each, one step of the history each. */
export type Change =
  | { readonly kind: 'rename'; readonly name: string }
  | { readonly kind: 'units'; readonly units: Units }
  | { readonly kind: 'terms'; readonly terms: Terms }
  | { readonly kind: 'hand'; readonly hand: Hand }
  | { readonly kind: 'gauge'; readonly piece: string; readonly gauge: Gauge; readonly keep: 'size' | 'counts' }
  | { readonly kind: 'rate'; readonly pickup: string; readonly edge: EdgeRef; readonly rate: Rate | null }
  | { readonly kind: 'measured'; readonly pickup: string; readonly edge: EdgeRef; readonly mm: Mm | null }
  | { readonly kind: 'stated'; readonly pickup: string; readonly edge: EdgeRef; readonly count: number | null }
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

/**
 * The design after a change. What does not change stays the same object, so that nothing is measured or planned anew
 * without need; a change to what already is gives the same design.
 */
export function changed(design: Design, change: Change): Design {
  switch (change.kind) {
    case 'rename':
      return withFields(design, { name: change.name });
    case 'units':
      return withFields(design, { units: change.units });
    case 'terms':
      return withFields(design, { terms: change.terms });
    case 'hand':
      return withFields(design, { hand: change.hand });
    case 'gauge':
      return onPiece(design, change.piece, (piece) => {
        const gauged = withFields(piece, { gauge: change.gauge });
        return gauged !== piece && change.keep === 'size' ? regridded(piece, change.gauge) : gauged;
      });
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
    case 'band':
      return onPickup(design, change.pickup, (pickup) =>
        withFields(pickup, { band: withFields(pickup.band, change.band) }),
      );
    case 'sections':
      return onPickup(design, change.pickup, (pickup) => sectioned(pickup, change.sections));
    case 'pickup':
      return onPickup(design, change.pickup, (pickup) => withFields(pickup, change.fields));
  }
}

function sectioned(pickup: Pickup, sections: SectionsWish | null): Pickup {
  if (sections !== null) return withFields(pickup, { sections });
  if (pickup.sections === undefined) return pickup;
  const { sections: _sections, ...rest } = pickup;
  return rest;
}

/** A copy with these fields, or the very same object where they already are what they become. */
function withFields<T extends object>(value: T, fields: NoInfer<Partial<T>>): T {
  const entries = Object.entries(fields) as [keyof T, T[keyof T]][];
  return entries.every(([key, field]) => sameValue(value[key], field)) ? value : { ...value, ...fields };
}

function sameValue(a: unknown, b: unknown): boolean {
  return a === b || JSON.stringify(a) === JSON.stringify(b);
}

/** A list about edges with the entry of one edge put in its place, or taken out. */
function placed<T extends object>(
  list: readonly (EdgeRef & T)[],
  { piece, edge }: EdgeRef,
  entry: T | null,
): readonly (EdgeRef & T)[] {
  const at = list.findIndex((one) => one.piece === piece && one.edge === edge);
  if (entry === null) return at < 0 ? list : list.filter((_, i) => i !== at);
  if (at < 0) return [...list, { piece, edge, ...entry }];
  return list.map((one, i) => (i === at ? { ...one, ...entry } : one));
}

function onPiece(design: Design, id: string, change: (piece: Piece) => Piece): Design {
  const pieces = design.pieces.map((piece) => (piece.id === id ? change(piece) : piece));
  return pieces.every((piece, i) => piece === design.pieces[i]) ? design : { ...design, pieces };
}

function onPickup(design: Design, id: string, change: (pickup: Pickup) => Pickup): Design {
  const pickups = design.pickups.map((pickup) => (pickup.id === id ? change(pickup) : pickup));
  return pickups.every((pickup, i) => pickup === design.pickups[i]) ? design : { ...design, pickups };
}
