import type { Design, EdgeRef, Pickup, Stretch } from '../piece';
import { freshId } from './outline/ids';
import { onPickup, withFields } from './records';

/** A change of the list of pick-ups, or of what one of them goes along. A stretch is told by its place in the run. */
export type PickupChange =
  | { readonly kind: 'add-pickup'; readonly pickup: Pickup }
  | { readonly kind: 'remove-pickup'; readonly pickup: string }
  | { readonly kind: 'duplicate-pickup'; readonly pickup: string; readonly name: string }
  | {
      readonly kind: 'along';
      readonly pickup: string;
      readonly along: readonly Stretch[];
      readonly joined?: boolean;
    }
  | { readonly kind: 'start-at'; readonly pickup: string; readonly stretch: number }
  | { readonly kind: 'turn-run'; readonly pickup: string }
  | {
      readonly kind: 'part';
      readonly pickup: string;
      readonly stretch: number;
      readonly part: readonly [from: number, to: number];
    };

/** The design after a change of its pick-ups; the very same where nothing changes or there is no such pick-up. */
export function pickupChanged(design: Design, change: PickupChange): Design {
  switch (change.kind) {
    case 'add-pickup':
      return withPickupAt(design, change.pickup, design.pickups.length);
    case 'remove-pickup': {
      const pickups = design.pickups.filter(({ id }) => id !== change.pickup);
      return pickups.length === design.pickups.length ? design : { ...design, pickups };
    }
    case 'duplicate-pickup': {
      const index = design.pickups.findIndex(({ id }) => id === change.pickup);
      const pickup = design.pickups[index];
      return pickup ? withPickupAt(design, { ...pickup, name: change.name }, index + 1) : design;
    }
    case 'along':
      return onPickup(design, change.pickup, (pickup) => {
        const joined = change.joined ?? pickup.joined;
        const next = withFields(pickup, { along: change.along, joined });
        return next === pickup ? pickup : withoutStrays(next);
      });
    case 'start-at':
      return onPickup(design, change.pickup, (pickup) => {
        const { along, joined } = pickup;
        const { stretch } = change;
        if (!joined || !along[stretch]) return pickup;
        return withFields(pickup, { along: [...along.slice(stretch), ...along.slice(0, stretch)] });
      });
    case 'turn-run':
      return onPickup(design, change.pickup, (pickup) => ({ ...pickup, along: turnedRun(pickup.along) }));
    case 'part':
      return onPickup(design, change.pickup, (pickup) => {
        const along = pickup.along.map((one, i) => (i === change.stretch ? { ...one, part: change.part } : one));
        return withFields(pickup, { along });
      });
  }
}

/** A run worked the other way: from its end to its beginning. */
export function turnedRun(along: readonly Stretch[]): Stretch[] {
  return [...along].reverse().map((stretch) => ({ ...stretch, backwards: !stretch.backwards }));
}

function withPickupAt(design: Design, pickup: Pickup, index: number): Design {
  const id = freshId(
    pickup.id,
    design.pickups.map((one) => one.id),
  );
  const named = id === pickup.id ? pickup : { ...pickup, id };
  return { ...design, pickups: [...design.pickups.slice(0, index), named, ...design.pickups.slice(index)] };
}

/** Nothing may be said of an edge that the run does not go along. */
function withoutStrays(pickup: Pickup): Pickup {
  const isAlong = (ref: EdgeRef) => pickup.along.some(({ piece, edge }) => piece === ref.piece && edge === ref.edge);
  const kept = <T extends EdgeRef>(list: readonly T[]) => (list.every(isAlong) ? list : list.filter(isAlong));
  const { rates, measured, stated, statedRatios } = pickup;
  const lists = { rates: kept(rates), measured: kept(measured), stated: kept(stated) };
  return { ...pickup, ...lists, ...(statedRatios && { statedRatios: kept(statedRatios) }) };
}
