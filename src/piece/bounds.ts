/** How large a document may be. Inside these the program keeps its promises of speed and exactness. */
export const BOUNDS = {
  /** Size of a file in bytes: 4 MiB. */
  fileBytes: 4 * 1024 * 1024,
  /** How deep lists and objects may stand in one another, in the file. */
  depth: 64,
  /** Gauge over 10 cm. */
  gauge: { stitches: [4, 200], rows: [4, 300] },
  /** The length a gauge is counted over, mm. */
  over: [1, 10_000],
  /** A piece from side to side in stitches, and from foot to top in rows. */
  pieceStitches: 2000,
  pieceRows: 5000,
  /** How far from 0 a corner may lie, in stitches or rows. */
  corner: 1_000_000,
  edges: [2, 400],
  pieces: [1, 24],
  pickups: 24,
  /** Stretches of one pick-up: more than an all-round one can have. */
  stretches: [1, 1000],
  parts: [2, 64],
  /** Any number of stitches picked up, stated or counted. */
  count: 1_000_000,
  /** Percent by which a band is made shorter than its edge. */
  drawIn: [0, 99],
  /** Buttonholes in a row, and stitches of one. */
  holes: [1, 64],
  holeStitches: [1, 50],
  /** Thresholds of the verdicts, percent. */
  flat: [0, 100],
  /** A handout's note, in letters, and how many other gauges it tells of. */
  note: 2000,
  handoutGauges: 6,
  /** A length by tape, mm. */
  tape: 1_000_000,
} as const;
