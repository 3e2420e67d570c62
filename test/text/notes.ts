import type { Note } from '../../src/pickup';

const edge = { piece: 'front', edge: 'neck-left' };

/** A note of every kind. */
export const NOTES: readonly Note[] = [
  { kind: 'too-few-openings', edge, wanted: 115, openings: 64, unit: 'chain', made: 'first-row' },
  { kind: 'too-few-openings', edge, wanted: 61.48, openings: 50, unit: 'row', made: 'other-edges' },
  { kind: 'twins-odd', target: 109, picked: 108 },
  { kind: 'fixed-counts', target: 108, picked: 105 },
  { kind: 'same-needs-length' },
  { kind: 'same-sections', each: 14, parts: 8, picked: 112, target: 115 },
  { kind: 'target-off-multiple', target: 109, multiple: 4, plus: 2, below: 106, above: 110 },
  { kind: 'target-off-multiple', target: 1, multiple: 4, plus: 2, below: 2, above: 2 },
  { kind: 'measured-differs', edge, measuredMm: 104, computedMm: 106.63 },
  { kind: 'sections-cannot-mirror', count: 71, parts: 4, better: [3, 5] },
  { kind: 'sections-do-not-sum', sum: 164, total: 218, stated: 'total' },
  { kind: 'sections-do-not-sum', sum: 164, total: 218, stated: 'plan' },
  { kind: 'stated-edges-do-not-sum', sum: 107, total: 108 },
  { kind: 'total-off-multiple', total: 109, multiple: 4, plus: 0 },
  { kind: 'sides-differ', left: edge, right: { piece: 'front', edge: 'neck-right' }, leftCount: 24, rightCount: 23 },
  { kind: 'matches-but-stretched', edge: null, count: 108, stretch: -0.09 },
  { kind: 'matches-but-stretched', edge, count: 24, stretch: 0.09 },
  { kind: 'stretched', edge, stretch: -0.05, verdict: 'slightly tight' },
  { kind: 'stretched', edge, stretch: 0.12, verdict: 'will ruffle' },
  { kind: 'gauge-unusual', what: 'piece', name: 'Front', per10cm: 50, rowsPer10cm: 60, reason: 'outside-ranges' },
  { kind: 'gauge-unusual', what: 'band', name: 'Neckband', per10cm: 22, rowsPer10cm: 18, reason: 'rows-to-stitches' },
  { kind: 'buttonholes-do-not-fit', holes: 30, needed: 125, total: 80 },
  { kind: 'buttonholes-not-in-rib', why: 'no-rib' },
  { kind: 'buttonholes-not-in-rib', why: 'no-room' },
  { kind: 'row-not-clear' },
  { kind: 'row-not-by-sections' },
  { kind: 'row-not-in-rib', why: 'no-rib' },
  { kind: 'row-not-in-rib', why: 'no-room' },
  { kind: 'got', got: 414, target: 424, stretch: -0.0236, verdict: 'lies flat', fits: true },
  { kind: 'got', got: 400, target: 424, stretch: -0.0566, verdict: 'slightly tight', fits: false },
  { kind: 'got', got: 424, target: 424, stretch: 0, verdict: 'lies flat', fits: true },
];
