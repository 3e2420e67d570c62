/** The four sizes of type of a handout, mm (9.6, 7.4, 13 and 21 points). */
export const TYPE = { text: 3.4, small: 2.6, heading: 4.6, title: 7.4 } as const;

/** From one line to the next, as a part of the size of type. */
export const LEADING = 1.42;

/** Room over a block's heading and under it, and over a paragraph, mm. */
export const ROOM = { block: 7, heading: 1.6, paragraph: 1.5 } as const;

/** How far letters rise over their line, as a part of the size. */
export const RISE = 0.76;

/** Weights of lines, mm: of boxes to be filled in, of rules, of the bars of the ruler. */
export const LINE = { box: 0.3, rule: 0.18, bar: 0.35 } as const;
