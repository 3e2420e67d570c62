/** What the command says: its help and what is wrong with its words. */
import type { QuickFault, QuickField, Units } from '../piece';
import { foreignLettersText } from './handoutProblems';
import { quickFaultText } from './quickFaults';
import type { QuickUnread } from './readQuick';

export const COMMAND_HELP = `edgewise: pick-up points along the edges of a flat piece of knitting

  edgewise measure FILE [--as text|json]              every edge in stitches, rows and length
  edgewise plan FILE [--pickup ID] [--as text|html|json|csv|svg|pdf|png] [--resolution DOTS]
                                                      the plan, or the drawing of one pick-up
  edgewise plan FILE --as pdf|png --pages [--paper A4|Letter] [--orientation portrait|landscape]
                     [--exercise|--answers]           the handout of one pick-up, as the file has it unless said
                                                      otherwise
  edgewise check FILE                                 is the file valid, do its stated counts lie flat?

  edgewise place N over R rows [--sections S] [--grouped] [--gauge ROWS] [--as text|json|csv|svg]
                                                      a quick question without a file: N stitches over R
                                                      rows, ridges, chains, stitches, cm or inches
  edgewise increase N over M [--round]                N increases spaced evenly in a row of M stitches;
  edgewise decrease N over M [--round]                "to N over M" says how many are to be there after it

  FILE          a design file (NAME.edgewise.json), or - for standard input
  --as FORM     text unless said otherwise
  --pickup ID   one pick-up of the design; the first one where a drawing needs one
  --pages       the pages of the handout instead of the drawing alone; as png each is a file of its own, numbered
                after the name that --out gives: handout-1.png, handout-2.png
  --resolution DOTS
                dots to the inch of a png, 300 unless said otherwise
  --exercise    the handout with its counts left blank, --answers with the answers to that
  --sections S  divide the edge into S equal sections
  --grouped     longer runs first, easy to remember, instead of spread evenly
  --gauge ROWS  rows of the edge to 10 cm (to 4 in where R is in inches; stitches where R is in stitches)
  --round       worked in the round
  --out FILE    write there, whole or not at all, instead of to standard output
  --help        this page

Exit status: 0 done, 1 checked and something does not lie flat, 2 nothing could be done (one line says why).
`;

export type CommandProblem =
  | { readonly kind: 'no-command' }
  | { readonly kind: 'unknown-command'; readonly word: string; readonly known: readonly string[] }
  | { readonly kind: 'no-file'; readonly command: string }
  | { readonly kind: 'too-many-files'; readonly word: string }
  | {
      readonly kind: 'unknown-option';
      readonly word: string;
      readonly command: string;
      readonly known: readonly string[];
    }
  | { readonly kind: 'no-value'; readonly option: string }
  | { readonly kind: 'no-value-wanted'; readonly option: string }
  | { readonly kind: 'no-question'; readonly command: string; readonly words: string }
  | { readonly kind: 'unknown-measure'; readonly word: string }
  | {
      readonly kind: 'unanswered';
      readonly command: string;
      readonly fault: QuickFault | QuickUnread;
      readonly units: Units;
    }
  | { readonly kind: 'no-openings'; readonly form: string }
  | { readonly kind: 'twice'; readonly option: string }
  | { readonly kind: 'only-pages'; readonly option: string }
  | { readonly kind: 'pages-form'; readonly form: string }
  | { readonly kind: 'pages-out'; readonly form: string }
  | { readonly kind: 'only-picture'; readonly option: string }
  | { readonly kind: 'unknown-resolution'; readonly word: string; readonly least: number; readonly most: number }
  | { readonly kind: 'too-many-dots'; readonly dots: number; readonly most: number }
  | { readonly kind: 'not-both'; readonly options: readonly [string, string] }
  | {
      readonly kind: 'unknown-value';
      readonly option: string;
      readonly word: string;
      readonly known: readonly string[];
    }
  | { readonly kind: 'terminal' }
  | { readonly kind: 'no-letters'; readonly folder: string }
  | { readonly kind: 'no-painter'; readonly file: string }
  | {
      readonly kind: 'foreign';
      readonly form: 'pdf' | 'png';
      readonly letters: readonly string[];
      readonly texts: readonly string[];
    }
  | { readonly kind: 'unknown-form'; readonly word: string; readonly known: readonly string[] }
  | { readonly kind: 'unknown-pickup'; readonly word: string; readonly known: readonly string[] }
  | { readonly kind: 'no-pickup' }
  | { readonly kind: 'cannot-read'; readonly file: string; readonly why: FileTrouble }
  | { readonly kind: 'cannot-write'; readonly file: string; readonly why: FileTrouble };

export type FileTrouble = 'missing' | 'folder' | 'forbidden' | 'full' | 'not-text' | 'other';

const TROUBLE: Readonly<Record<FileTrouble, string>> = {
  missing: 'there is no such file or folder; check the name and the folder',
  folder: 'it is a folder; name a file in it',
  forbidden: 'this account may not; change its permissions or choose another place',
  full: 'there is no room left; free some or choose another place',
  'not-text': 'it is not UTF-8 text; save it as UTF-8',
  other: 'the system refused; try another place',
};

/** Which part of a question a fault is about. */
const FIELD_NAMES: Readonly<Record<QuickField, string>> = {
  place: 'the stitches',
  over: 'what comes after "over"',
  per10cm: '--gauge',
  sections: '--sections',
  have: 'the stitches after "over"',
  amount: 'the change',
};

/** One line that says what is wrong with the command's words, and the mend. */
export function commandProblemText(problem: CommandProblem): string {
  switch (problem.kind) {
    case 'no-command':
      return 'no command given: say measure, plan or check and a file, or ask place, increase or decrease (edgewise --help tells more)';
    case 'unknown-command':
      return `"${problem.word}" is not a command: say ${either(problem.known)}`;
    case 'no-file':
      return `${problem.command} needs a design file: name one, or - for standard input`;
    case 'too-many-files':
      return `"${problem.word}" is one file too many: name one file at a time`;
    case 'unknown-option':
      return `${problem.command} has no option "${problem.word}": use ${either(problem.known)}`;
    case 'no-value':
      return `${problem.option} needs a value after it`;
    case 'no-value-wanted':
      return `${problem.option} stands alone: leave out what follows its =`;
    case 'no-question':
      return problem.command === 'place'
        ? 'place needs a question: say how many stitches over what, such as edgewise place 71 over 88 rows'
        : `${problem.command} needs a question: say how many over how many, such as edgewise ${problem.command} 39 over 131`;
    case 'unknown-measure':
      return `"${problem.word}" is nothing to place stitches over: say rows, ridges, chains, stitches, cm or in`;
    case 'unanswered':
      return `${problem.command}, ${FIELD_NAMES[problem.fault.field]}: ${quickFaultText(problem.fault, problem.units)}`;
    case 'no-openings':
      return `--as ${problem.form} needs the places of the edge, and a length alone has none: add --gauge with its rows to 10 cm (to 4 in for inches)`;
    case 'twice':
      return `${problem.option} is given twice: leave one out`;
    case 'only-pages':
      return `${problem.option} is about the pages of the handout: add --pages with --as pdf or png, or leave it out`;
    case 'pages-form':
      return `--pages makes several pages, which --as ${problem.form} can't hold: use --as pdf or png`;
    case 'pages-out':
      return `--pages --as ${problem.form} makes a file of each page: add --out with a name, such as handout.${problem.form}`;
    case 'only-picture':
      return `${problem.option} is about the dots of a picture: add --as png, or leave it out`;
    case 'unknown-resolution':
      return `--resolution ${problem.word} is no number of dots to the inch: say a whole one from ${problem.least} to ${problem.most}, such as 300`;
    case 'too-many-dots':
      return `at ${problem.dots} dots to the inch the picture is larger than a PNG should be: use --resolution ${problem.most} or less, or --as svg or pdf`;
    case 'not-both':
      return `${problem.options[0]} and ${problem.options[1]} are two versions: leave one out`;
    case 'unknown-value':
      return `${problem.option} ${problem.word} is not known: use ${either(problem.known)}`;
    case 'terminal':
      return "a PDF document or a picture can't be shown on a terminal: add --out with the name of a file";
    case 'no-letters':
      return `the letters of PDF documents and pictures are missing from ${problem.folder}: put the folder back beside the command, or run npm run build again`;
    case 'no-painter':
      return `what draws pictures is missing, ${problem.file}: put its folder back beside the command, or run npm run build again`;
    case 'foreign':
      return foreignLettersText(problem, problem.form);
    case 'unknown-form':
      return `--as ${problem.word} is not a form of this: use ${either(problem.known)}`;
    case 'unknown-pickup':
      return problem.known.length === 0
        ? `--pickup ${problem.word}: the design has no pick-up; add one under "pickups"`
        : `--pickup ${problem.word}: the design has no such pick-up; its pick-ups are ${listOf(problem.known)}`;
    case 'no-pickup':
      return 'the design has no pick-up to plan: add one under "pickups"';
    case 'cannot-read':
      return `${problem.file} can't be read: ${TROUBLE[problem.why]}`;
    case 'cannot-write':
      return `${problem.file} can't be written: ${TROUBLE[problem.why]}`;
  }
}

function either(words: readonly string[]): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} or ${words.at(-1) ?? ''}`;
}

function listOf(words: readonly string[]): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1) ?? ''}`;
}

/** The progress line of slow work on a terminal. */
export function planningText(name: string, done: number, all: number): string {
  return `planning ${name} (${String(done)} of ${String(all)}) …`;
}

/** The same while a document is written, page by page. */
export function writingText(done: number, all: number): string {
  return `writing page ${String(Math.min(done + 1, all))} of ${String(all)} …`;
}

/** A fault of the program itself, told without a stack trace. */
export function unexpectedText(message: string): string {
  return `a fault in edgewise itself, please report it with the file: ${message}`;
}
