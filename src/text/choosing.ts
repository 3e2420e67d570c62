/** The words for choosing the edges of a pick-up on the drawing. */

export const CHOOSING = {
  bar: 'The run of the pick-up',
  marks: 'Edges to choose from',
  hint: 'Press the edges in the order in which they are worked; press one again to take it out. With Shift, all from the last one up to there.',
  done: 'Done',
} as const;

/** An edge and where it comes in the run: `Front, left neck: 3 in the run`, `Front, cast on: not in the run`. */
export function chosenLabel(title: string, places: readonly number[]): string {
  return places.length === 0 ? `${title}: not in the run` : `${title}: ${places.join(' and ')} in the run`;
}
