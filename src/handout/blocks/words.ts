import {
  abbreviationsIn,
  bandCornersText,
  buttonholesText,
  edgeTitle,
  EXERCISE,
  firstRowLine,
  HANDOUT_COLUMNS,
  handoutBand,
  handoutHeading,
  handoutSums,
  instructions,
  needleParagraph,
  rowOrRound,
} from '../../text';
import { box, rule, textAt } from '../elements';
import { fitted } from '../letters/fitted';
import { heading, paragraph, type Strip } from '../strip';
import { LINE, TYPE } from '../type';
import type { Sheet } from '../work';

/** From one line to write on to the next, mm, and how many there are. */
const RULED = { apart: 9, lines: 6 } as const;
/** A box to reckon in, mm high. */
const RECKONING = 11;

/** Lines to write on, all on one page. */
function ruled(width: number, lines: number): Strip[] {
  return Array.from({ length: lines }, (_, i): Strip => ({
    gap: 0,
    height: RULED.apart,
    withNext: i + 1 < lines,
    draw: (x, y) => [rule(x, y + RULED.apart, width, LINE.rule)],
  }));
}

/** The written instructions, a paragraph each; for a class, lines to write them on. */
export function instructionsBlock({ chosen, handout, voice, width }: Sheet): Strip[] {
  const title = heading(handoutHeading('instructions', voice), width);
  if (handout.version === 'exercise') {
    return [...title, ...paragraph(EXERCISE.instructions, width, { withNext: true }), ...ruled(width, RULED.lines)];
  }
  // Abbreviations stand in a block of their own where one is asked for.
  const own = handout.blocks.includes('abbreviations');
  const said = instructions(chosen, voice);
  const explained = abbreviationsIn(said, voice.terms).length > 0;
  const told = own && explained ? said.slice(0, -1) : said;
  // What has a block of its own is not said twice.
  const elsewhere = [
    ...(handout.blocks.includes('needle') ? [needleParagraph(chosen, voice.terms)] : []),
    ...(handout.blocks.includes('first-row') ? [firstRowLine(chosen, voice)] : []),
    ...(handout.blocks.includes('band') ? [buttonholesText(chosen, voice), ...bandCornersText(chosen, voice)] : []),
  ];
  return [...title, ...told.filter((text) => !elsewhere.includes(text)).flatMap((text) => paragraph(text, width))];
}

/** The first row or round with its proof; for a class, lines to write it on. */
export function firstRowBlock({ chosen, handout, voice, width }: Sheet): Strip[] {
  const title = heading(handoutHeading('first-row', voice, rowOrRound(chosen)), width);
  if (handout.version === 'exercise') return [...title, ...ruled(width, 2)];
  return [...title, ...paragraph(firstRowLine(chosen, voice), width)];
}

/** The abbreviations of the instructions, each on a line. */
export function abbreviationsBlock({ chosen, handout, voice, width }: Sheet): Strip[] {
  const found = handout.version === 'exercise' ? [] : abbreviationsIn(instructions(chosen, voice), voice.terms);
  if (found.length === 0) return [];
  return [
    ...heading(handoutHeading('abbreviations', voice), width),
    ...found.flatMap((text) => paragraph(text, width, { gap: 0.6, hanging: 4 })),
  ];
}

/** The arithmetic of every edge and of the total; for a class, a box for each. */
export function sumBlock({ chosen, handout, voice, width }: Sheet): Strip[] {
  const title = heading(handoutHeading('sum', voice), width);
  if (handout.version !== 'exercise') {
    return [...title, ...handoutSums(chosen, voice).flatMap((text) => paragraph(text, width, { hanging: 4 }))];
  }
  const boxes = [
    ...chosen.edges.map(({ piece, measured }) => edgeTitle(piece, measured.edge)),
    HANDOUT_COLUMNS.total,
  ].map((name): Strip => ({
    gap: 1.5,
    height: RECKONING,
    draw: (x, y) => [
      box(x, y, width, RECKONING, LINE.box),
      textAt(fitted(name, width - 3, TYPE.small, 'italic'), x + 1.5, y + TYPE.small + 0.8, {
        size: TYPE.small,
        face: 'italic',
      }),
    ],
  }));
  return [...title, ...paragraph(EXERCISE.sum, width, { withNext: true }), ...boxes];
}

/** What is worked on the stitches, its buttonholes and its corners. */
export function bandBlock({ chosen, handout, voice, width }: Sheet): Strip[] {
  const counted = handout.version !== 'exercise';
  const holes = counted ? buttonholesText(chosen, voice) : '';
  const corners = counted ? bandCornersText(chosen, voice) : [];
  const lines = [...handoutBand(chosen, handout.version, voice), ...(holes === '' ? [] : [holes]), ...corners];
  return [...heading(handoutHeading('band', voice), width), ...lines.flatMap((text) => paragraph(text, width))];
}
