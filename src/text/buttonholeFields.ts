/** The words of the panel that plans buttonholes. */
export const BUTTONHOLES = {
  holes: 'Buttonholes',
  stitches: 'Stitches in each',
  from: 'Before the first',
  to: 'After the last',
  gap: 'Between two',
  rib: 'In the purl columns of the rib',
  workOut: 'Work out',
  ways: { gap: 'the gaps', ends: 'both ends', holes: 'how many', total: 'the total' },
  none: 'Give a number of buttonholes to place them on this band, in working order.',
  noRoom: 'There is no room for that on this band: take fewer or smaller holes, or a smaller gap.',
} as const;

/** What a band of these buttonholes and gaps would have in all: `They fit a band of 104 stitches.` */
export function fitsBandText(total: number): string {
  return `They fit a band of ${total} stitches.`;
}

export function useTotalText(total: number): string {
  return `Use ${total} as the total`;
}
