/** What becomes of the work in this browser: a sample that nobody changed, the knitter's own, or nothing. */
export type Keeps = 'sample' | 'own' | 'refused';

/** Said beside the name of the design. */
export const KEEPS: Readonly<Record<Keeps, string>> = {
  sample: 'a sample',
  own: 'kept in this browser',
  refused: 'not kept: save it to a file',
};
