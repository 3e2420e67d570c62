import { DesignError, readDesign, type Design } from '../piece';
import { allFlat, planDesign, PlanError, planPickup, surveyDesign, type DesignPlan, type PickupPlan } from '../pickup';
import { fileSvg } from '../renderer';
import {
  checkDocument,
  checkReport,
  COMMAND_HELP,
  instructionsPage,
  measureDocument,
  measureReport,
  noticeSentence,
  planCsv,
  planDocument,
  planningText,
  planProblemText,
  planReport,
  problemSentence,
  unexpectedText,
} from '../text';
import { readInput } from './files';
import { give, type Content } from './output';
import { planPdf } from './pdf';
import { planPng } from './png';
import { CommandError } from './problem';
import { progressOn } from './progress';
import { quickText } from './quick';
import { readWords, type Wish } from './words';

type Work = Extract<Wish, { kind: 'do' }>;

const DONE = 0;
const NOT_FLAT = 1;
const REFUSED = 2;

/** Runs the command and returns its exit status. Nothing reaches standard output unless all went well. */
async function run(words: readonly string[]): Promise<number> {
  try {
    const wish = readWords(words);
    if (wish.kind === 'help') {
      process.stdout.write(COMMAND_HELP);
      return DONE;
    }
    if (wish.kind === 'quick') {
      give(quickText(wish), wish.out);
      return DONE;
    }
    const { design, notices } = readDesign(readInput(wish.file));
    const { content, status } = await work(wish, design);
    give(content, wish.out);
    for (const notice of notices) say(noticeSentence(notice));
    return status;
  } catch (error) {
    say(oneLine(refusal(error)));
    return REFUSED;
  }
}

async function work(wish: Work, design: Design): Promise<{ content: Content; status: number }> {
  switch (wish.task) {
    case 'measure': {
      const rows = surveyDesign(design).map(({ measured: edge, ...rest }) => ({ ...rest, edge }));
      return {
        content: wish.form === 'json' ? json(measureDocument(design, rows)) : measureReport(design, rows),
        status: DONE,
      };
    }
    case 'plan':
      return { content: await planContent(wish, planned(design, wish.pickup)), status: DONE };
    case 'check': {
      const plan = planned(design, null);
      const isFlat = (pickup: PickupPlan) => allFlat(pickup.stated, pickup.notes);
      return {
        content: wish.form === 'json' ? json(checkDocument(plan, isFlat)) : checkReport(plan, isFlat),
        status: plan.pickups.every(isFlat) ? DONE : NOT_FLAT,
      };
    }
  }
}

/** Plans pick-up by pick-up, so that slow work can say where it is; the whole is then put together from what is kept. */
function planned(design: Design, pickup: string | null): DesignPlan {
  const known = design.pickups.map(({ id }) => id);
  if (pickup !== null && !known.includes(pickup)) {
    throw new CommandError({ kind: 'unknown-pickup', word: pickup, known });
  }
  const progress = progressOn(process.stderr);
  try {
    design.pickups.forEach((one, i) => {
      progress.step(planningText(one.name, i, design.pickups.length));
      planPickup(design, one);
    });
    return planDesign(design);
  } finally {
    progress.end();
  }
}

async function planContent(wish: Work, plan: DesignPlan): Promise<Content> {
  const chosen = wish.pickup ?? undefined;
  if (plan.pickups.length === 0) throw new CommandError({ kind: 'no-pickup' });
  const drawn = chosen === undefined ? 0 : plan.pickups.findIndex(({ pickup }) => pickup.id === chosen);
  switch (wish.form) {
    case 'text':
      return planReport(plan, {}, chosen);
    case 'html':
      return instructionsPage(plan, {}, chosen);
    case 'json':
      return json(planDocument(plan, {}, chosen));
    case 'csv':
      return planCsv(planDocument(plan, {}, chosen));
    case 'svg':
      return fileSvg(plan, drawn);
    case 'pdf':
      return await planPdf(plan, drawn, wish.pages, progressOn(process.stderr));
    case 'png': {
      const pictures = await planPng(plan, drawn, wish, progressOn(process.stderr));
      return wish.pages === null ? pictures[0]! : pictures;
    }
  }
}

function json(value: unknown): string {
  return `${JSON.stringify(value, null, 2)}\n`;
}

function refusal(error: unknown): string {
  if (error instanceof DesignError) return problemSentence(error.problem);
  if (error instanceof PlanError) return planProblemText(error.problem);
  if (error instanceof CommandError) return error.message;
  return unexpectedText(error instanceof Error ? error.message : String(error));
}

function say(line: string): void {
  process.stderr.write(`edgewise: ${line}\n`);
}

/** A name with a line break in it still makes one line. */
function oneLine(text: string): string {
  return text.replace(/\s+/gu, ' ').trim();
}

// A reader that has seen enough, such as head, closes the pipe: that is no error.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
});
process.exitCode = await run(process.argv.slice(2));
