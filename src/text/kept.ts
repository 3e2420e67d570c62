/**
 * What becomes of the work in this browser: a sample that nobody changed; the knitter's own, kept or just being kept;
 * kept as it last could be planned; not kept, for the store is full or refused; another tab's, which this one follows.
 */
export type Keeps = 'sample' | 'own' | 'saving' | 'waits' | 'full' | 'refused' | 'follows';

/** Said beside the name of the design. */
export const KEEPS: Readonly<Record<Keeps, string>> = {
  sample: 'a sample',
  own: 'kept in this browser',
  saving: 'saving…',
  waits: 'kept as last planned',
  full: 'not kept',
  refused: 'not kept',
  follows: 'follows another tab',
};
