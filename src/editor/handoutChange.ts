import type { Design, Handout } from '../piece';
import { withFields } from './records';

/** How the design is printed; null takes the field out, so that the handout is as it comes. */
export interface HandoutChange {
  readonly kind: 'handout';
  readonly handout: Handout | null;
}

/** The design printed in another way; the very same one where that changes nothing. */
export function handoutChanged(design: Design, { handout }: HandoutChange): Design {
  if (handout !== null) return withFields(design, { handout });
  if (design.handout === undefined) return design;
  const { handout: _gone, ...rest } = design;
  return rest;
}
