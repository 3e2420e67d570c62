import type { ListOf, Problem, SyntaxReason } from '../piece';
import { plainNumber } from './numbers';
import { counted, listed, quoted, rowsText, stitchesText } from './words';

function shown(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (typeof value === 'string') return quoted(value);
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'number' || typeof value === 'boolean') return String(value);
  return value === null ? 'null' : 'an object';
}

/** A number out of a file, with as many decimals as tell it from a whole one. */
function figure(value: number): string {
  return Number.isInteger(value) ? String(value) : plainNumber(value, 4);
}

function place(x: number, y: number): string {
  return `stitch ${figure(x)}, row ${figure(y)}`;
}

function meant(nearest: string | null, otherwise: string): string {
  return nearest === null ? otherwise : `did you mean ${quoted(nearest)}?`;
}

const EXPECTED = {
  text: 'text in double quotes',
  number: 'a number',
  'yes-no': 'true or false',
  list: 'a list in square brackets',
  object: 'an object in curly brackets',
} as const;

const ENTRIES: Readonly<Record<ListOf, readonly [one: string, many: string]>> = {
  pieces: ['piece', 'pieces'],
  outline: ['edge', 'edges'],
  steps: ['step', 'steps'],
  pickups: ['pick-up', 'pick-ups'],
  along: ['stretch', 'stretches'],
  gauges: ['gauge', 'gauges'],
};

const SYNTAX: Readonly<Record<SyntaxReason, string>> = {
  empty: 'the file is empty; choose a design that was saved from here',
  'ends-early':
    'the text ends in the middle of something; the file may have been cut short, so get it again or close what is open',
  comment: 'JSON has no comments; take the comment out',
  'trailing-comma': 'this comma has nothing behind it; take it out',
  quotes: 'names and texts stand between straight double quotes; put them in',
  number: 'this is not a number as JSON writes it; write it as in 12 or -3.5, with a point',
  text: 'a text breaks off or has a stray backslash; close it with a double quote and write a backslash as \\\\',
  other: 'this does not belong here; look for a missing comma, quote or bracket just before it',
};

function boundsText(min: number | null, max: number | null, beyond: boolean): string {
  if (min === null && max === null) return 'a number too large to keep';
  if (max === null) return beyond ? `not above ${figure(min ?? 0)}` : `below ${figure(min ?? 0)}`;
  return min === null ? `above ${figure(max)}` : `outside ${figure(min)} to ${figure(max)}`;
}

function boundsMend(min: number | null, max: number | null, beyond: boolean): string {
  if (min === null && max === null) return 'give a smaller number';
  if (max === null) return beyond ? `give more than ${figure(min ?? 0)}` : `give ${figure(min ?? 0)} or more`;
  return min === null ? `give ${figure(max)} or less` : `give a number from ${figure(min)} to ${figure(max)}`;
}

/** `4 stitches in`, `2 stitches out`, `no stitches`. */
function moved(stitches: number): string {
  if (stitches === 0) return 'no stitches';
  return `${stitchesText(Math.abs(stitches))} ${stitches < 0 ? 'in' : 'out'}`;
}

/** What is to be added to a schedule or taken from it: `take in 2 more stitches and work 4 more rows`. */
function scheduleMend(stitches: number, rows: number): string {
  const more = (n: number, one: string, many: string) => `${Math.abs(n)} more ${Math.abs(n) === 1 ? one : many}`;
  const across = `${stitches < 0 ? 'take in' : 'bring out'} ${more(stitches, 'stitch', 'stitches')}`;
  const up = rows > 0 ? `work ${more(rows, 'row', 'rows')}` : `work ${counted(Math.abs(rows), 'row')} fewer`;
  return [...(stitches === 0 ? [] : [across]), ...(rows === 0 ? [] : [up])].join(' and ');
}

type Of<K extends Problem['kind']> = Problem & { readonly kind: K };

/** What is wrong and how to mend it, by kind; the place stands before it. */
const SENTENCES: { readonly [K in Problem['kind']]: (problem: Of<K>) => string } = {
  'too-large': ({ bytes, limit }) =>
    `the file has ${plainNumber(Math.ceil((bytes / 2 ** 20) * 100) / 100, 2)} MiB and at most ${limit / 2 ** 20} are read; split the design into smaller ones`,
  'not-json': ({ line, column, reason, found }) => {
    const here = found === null ? 'at the end' : `at ${quoted(found)}`;
    return `not JSON in line ${line}, column ${column}, ${here}: ${SYNTAX[reason]}`;
  },
  'too-deep': ({ limit }) =>
    `lists and objects stand more than ${limit} deep in one another; take out what is nested so deep`,
  'not-edgewise': ({ found }) =>
    found === 'edgewise-plan'
      ? 'this is a plan, not a design; open the design file that the plan was made from'
      : `a design says "edgewise" here and this file has ${shown(found)}; choose a file that was saved as a design`,
  'no-version': ({ newest }) => `the version is missing; write "version": ${newest} beside "format"`,
  'bad-version': ({ found, newest }) => `${shown(found)} is no version of the format; write ${newest}`,
  'future-version': ({ found, newest }) =>
    `the file was written by a later version of the program (format ${shown(found)}, this one reads up to ${newest}); update the program and open it again`,
  missing: ({ field }) => `${quoted(field)} is missing; add it`,
  'wrong-type': ({ at, expected, found }) =>
    at === ''
      ? `a design is ${EXPECTED[expected]} and this file holds ${shown(found)}; choose a file that was saved as a design`
      : `${shown(found)} stands where ${EXPECTED[expected]} should; put that there instead`,
  'wrong-count': ({ expected, found }) =>
    `the list has ${counted(found, 'entry', 'entries')} and needs ${expected}; give exactly ${expected}`,
  'not-one-of': ({ options, found, nearest }) => {
    const choices = listed(
      options.map((option) => (typeof option === 'string' ? quoted(option) : option)),
      'or',
    );
    const like = nearest === null ? '' : ` (did you mean ${quoted(nearest)}?)`;
    return `${shown(found)} is not known here${like}; choose ${choices}`;
  },
  'out-of-bounds': ({ found, min, max, beyond }) =>
    `${figure(found)} is ${boundsText(min, max, beyond)}; ${boundsMend(min, max, beyond)}`,
  'not-whole': ({ found }) =>
    `${figure(found)} is not whole, and knitting has no halves here; give ${Math.floor(found)} or ${Math.ceil(found)}`,
  'too-few': ({ list, found, limit }) =>
    `there ${found === 1 ? 'is' : 'are'} ${found === 0 ? `no ${ENTRIES[list][1]}` : `only ${counted(found, ...ENTRIES[list])}`}; give at least ${counted(limit, ...ENTRIES[list])}`,
  'too-many': ({ list, found, limit }) =>
    `there are ${counted(found, ...ENTRIES[list])} and at most ${limit} are allowed; leave some out`,
  'empty-id': () => 'the id is empty; give it a short name of its own',
  'same-id': ({ id, list }) =>
    `another ${ENTRIES[list][0]} before it has the id ${quoted(id)} too; give one of them a new id`,
  'gauge-bounds': ({ what, per10cm, min, max }) =>
    `${figure(per10cm)} ${what} over 10 cm ${per10cm < min ? `is fewer than ${min}` : `is more than ${max}`}; correct the gauge ("over" is in mm: 100 for 10 cm, 101.6 for 4 in)`,
  'piece-too-big': ({ piece, what, found, limit }) =>
    `piece ${quoted(piece)} is ${figure(found)} ${what} ${what === 'rows' ? 'high' : 'wide'} and ${limit} is the most; make it smaller or split it into two pieces`,
  'far-corner': ({ x, y, limit }) =>
    `the corner at ${place(x, y)} lies more than ${limit} from 0; move the piece so that its first corner lies near 0, 0`,
  'off-grid': ({ piece, edge, x, y }) =>
    `edge ${quoted(edge)} of piece ${quoted(piece)} begins at ${place(x, y)}, off the grid; move the corner to a whole stitch and a whole row, such as ${Math.round(x)}, ${Math.round(y)}`,
  'no-length': ({ piece, edge }) =>
    `edge ${quoted(edge)} of piece ${quoted(piece)} has no length, since the next edge begins at the same corner; move one of the two or take the edge out`,
  'schedule-flat': ({ piece, edge }) =>
    `edge ${quoted(edge)} of piece ${quoted(piece)} has a schedule but no rows to work it in; make its path "straight" or move its far corner up or down`,
  crossing: ({ piece, first, second, x, y }) =>
    `the outline of piece ${quoted(piece)} meets itself at ${place(x, y)}: ${first === second ? `edge ${quoted(first)} runs into itself` : `edge ${quoted(first)} runs into edge ${quoted(second)}`}; move a corner or a handle so that they stay apart`,
  clockwise: ({ piece }) =>
    `the outline of piece ${quoted(piece)} has come to run clockwise, with the fabric outside; move the corners back or list the edges the other way round`,
  'schedule-off': ({ piece, edge, stitches, rows, gotStitches, gotRows }) =>
    `the schedule of edge ${quoted(edge)} of piece ${quoted(piece)} moves ${moved(gotStitches)} over ${rowsText(gotRows)} where the edge moves ${moved(stitches)} over ${rowsText(rows)}; ${scheduleMend(stitches - gotStitches, rows - gotRows)}, or move the far corner`,
  'not-symmetric': ({ piece, edge }) =>
    `piece ${quoted(piece)} is called symmetric but edge ${quoted(edge)} has no mirror twin; draw its twin alike (corners, path, finish or selvage) or set "symmetric" to false`,
  'unknown-piece': ({ piece, nearest }) =>
    `there is no piece ${quoted(piece)}; ${meant(nearest, 'use the id of a piece of this design')}`,
  'unknown-edge': ({ piece, edge, nearest }) =>
    `piece ${quoted(piece)} has no edge ${quoted(edge)}; ${meant(nearest, 'use the id of an edge in its outline')}`,
  'same-stretch': ({ piece, edge, from, to }) =>
    `the stretch of edge ${quoted(edge)} of piece ${quoted(piece)} from ${figure(from)} to ${figure(to)} is picked up twice; take one of the two out or change its "part"`,
  'part-order': ({ from, to }) =>
    `the part from ${figure(from)} to ${figure(to)} has no length in the outline's direction; give the smaller fraction first, and "backwards": true to work it the other way`,
  'not-along': ({ piece, edge }) =>
    `the pick-up does not run along edge ${quoted(edge)} of piece ${quoted(piece)}; add the edge to "along" or take this entry out`,
  'given-twice': ({ piece, edge }) =>
    `edge ${quoted(edge)} of piece ${quoted(piece)} stands in this list twice; take one of the two out`,
  'ratio-above-one': ({ pick, of }) =>
    `${pick} of ${of} is more than there are openings; give at most ${of} of ${of}, or a rate by length or count`,
  'length-without-gauge': ({ piece, edge, wants }) =>
    wants === 'piece'
      ? `edge ${quoted(edge)} can't go by length, since piece ${quoted(piece)} has no gauge; add a gauge, or the edge's length by tape to "measured", or choose another rate`
      : `edge ${quoted(edge)} of piece ${quoted(piece)} can't go by length, since there is no gauge for the band; add one to "band" or choose another rate`,
  'flat-order': ({ slight, strong }) =>
    `the slight threshold ${figure(slight)} is above the strong one ${figure(strong)}; give them in rising order`,
  'too-long': ({ found, limit }) =>
    `the text has ${counted(found, 'letter')} and at most ${limit} are allowed; make it shorter`,
  'block-twice': ({ block }) => `the block ${quoted(block)} stands in this list twice; take one of the two out`,
};

/** One sentence on one line: the place in the file, what is wrong there, and how to mend it. */
export function problemSentence(problem: Problem): string {
  const say = SENTENCES[problem.kind] as (problem: Problem) => string;
  const text = say(problem);
  const whole = problem.at === '' ? text.charAt(0).toUpperCase() + text.slice(1) : `${problem.at}: ${text}`;
  return whole.endsWith('?') ? whole : `${whole}.`;
}
