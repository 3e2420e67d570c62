import type { Handout, HandoutBlock, HandoutVersion } from '../piece';
import { counted } from './words';

/** Words of the page on which a handout is composed. */
export const HANDOUT = {
  title: 'Handout',
  close: 'Close',
  settings: 'What is printed',
  pages: 'The pages',
  pickup: 'Part',
  paper: 'Paper',
  orientation: 'Page',
  portrait: 'Portrait',
  landscape: 'Landscape',
  diagram: 'Diagram',
  version: 'Kind of sheet',
  ink: 'Printed',
  note: 'Note under the title',
  blocks: 'On the sheet, in this order',
  up: 'Up',
  down: 'Down',
  gauges: 'Other gauges, to 10 cm',
  gaugesHint: 'stitches × rows, such as 20 × 28, 24 × 32',
  print: 'Print',
  pdf: 'Save as PDF',
  more: 'Save or copy in other forms',
  svg: 'Drawing as SVG',
  png: 'Drawing as PNG',
  resolution: 'Dots to the inch',
  csv: 'All openings as CSV',
  text: 'Instructions as text',
  html: 'Instructions as HTML',
  copy: 'Copy the instructions',
  copied: 'Copied, with headings and tables where they are pasted.',
  notCopied: 'The browser keeps its clipboard to itself: save the instructions as text instead.',
  cancel: 'Cancel',
  cancelled: 'Cancelled. Nothing was saved.',
  making: 'The document is being made …',
  makingPicture: 'The picture is being made …',
  failed: 'The pages could not be made',
  nothing: 'Nothing is picked up yet. Choose a run of edges first, and its handout is here.',
  lettersMissing:
    'The letters of the handout could not be fetched. The pages are shown in others; the lines may end elsewhere.',
} as const;

export const HANDOUT_DIAGRAM: Readonly<Record<Handout['diagram'], string>> = {
  fitted: 'Fitted to the page',
  'true-size': 'Also in true size',
};

export const HANDOUT_INK: Readonly<Record<Handout['ink'], string>> = {
  colour: 'In colour',
  black: 'In black alone',
};

export const HANDOUT_VERSION: Readonly<Record<HandoutVersion, string>> = {
  sheet: 'To work from',
  exercise: 'Exercise',
  answers: 'Answers',
};

export const HANDOUT_BLOCK: Readonly<Record<HandoutBlock, string>> = {
  title: 'Title and note',
  diagram: 'Diagram',
  edges: 'Edges',
  sections: 'Sections, to tick off',
  sum: 'Sums worked out',
  needle: 'Where the needle goes',
  instructions: 'Instructions',
  'first-row': 'First row or round',
  band: 'Band and buttonholes',
  gauges: 'Counts at other gauges',
  strips: 'Practice strips',
  abbreviations: 'Abbreviations',
  ruler: 'Ruler to check the print',
};

export function pagesText(pages: number): string {
  return counted(pages, 'page');
}

export function pageTitle(page: number, pages: number): string {
  return `Page ${page} of ${pages}`;
}

export function pageDone(done: number, of: number): string {
  return `Page ${done} of ${of} is done.`;
}

/** What a gauge was typed as and could not be: `"twenty" is no gauge: type stitches × rows, such as 20 × 28.` */
export function gaugesFault(typed: string): string {
  return `"${typed}" is no gauge: type stitches × rows to 10 cm, such as 20 × 28, with commas between several.`;
}

export function pngTooLarge(dots: number): string {
  return `At ${dots} dots to the inch the picture is larger than the browser can draw: choose fewer dots, or save it as SVG.`;
}
