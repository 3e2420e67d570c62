import type { EvenPart } from './readScheduleEven';
import { MOST_STITCHES, ScheduleFault } from './readScheduleFaults';
import type { Part } from './readSchedulePart';
import type { RowsSaid } from './readScheduleRows';
import type { Verb } from './readScheduleVerb';

/** Rows between two shapings of one edge where nothing is said: an edge can only be shaped on every second row. */
const USUAL = 2;

/** What a number without a verb does; `either` where it can't be told. */
export type Way = 'in' | 'out' | 'either';

/** A step whose last words may be still to come. */
export interface StepDraft {
  readonly kind: 'shaping';
  readonly start: number;
  readonly end: number;
  readonly stitches: number;
  every: number;
  times: number | null;
  /** Nothing is said of its rows yet, and what is said behind it is said of it too. */
  bare: boolean;
  rows: RowsSaid | null;
  needsTimes: boolean;
  /** It is counted on from the step before it: `next and every following 4th row`, `next row, then every 4 rows`. */
  readonly goesOn: boolean;
}

export type Draft = StepDraft | { readonly kind: 'even'; readonly start: number; readonly end: number; rows: number };

/** Gathers the parts of a schedule into steps. What is said once carries on: the verb, the number, on which rows. */
export class Gathering {
  readonly drafts: Draft[] = [];
  private readonly way: Way;
  private verb: Verb | null = null;
  private stitches: number | null = null;
  private every: number | null = null;
  /** Where the list of numbers begins that is being read. */
  private list = 0;

  constructor(way: Way) {
    this.way = way;
  }

  /** What follows is no longer said of the numbers before it. */
  endList(): void {
    this.list = this.drafts.length;
  }

  add(part: Part | EvenPart): void {
    if (part.kind === 'even') {
      this.drafts.push({ kind: 'even', start: part.start, end: part.end, rows: part.rows });
      this.endList();
      return;
    }
    if (part.verb) this.begin(part.verb);
    const amount = part.amount ?? (part.verb && !part.verb.together ? 1 : null);
    if (amount !== null) this.push(part, this.signed(part, amount), false);
    else if (part.verb) throw new ScheduleFault('no-amount', part.start, part.end);
    else if (part.rows) this.addRows(part, part.rows);
    else if (part.times !== null) this.addTimes(part);
  }

  private begin(verb: Verb): void {
    if (verb.sign !== this.verb?.sign || verb.together !== this.verb.together) this.every = null;
    this.verb = verb;
    this.endList();
  }

  private signed(part: Part, amount: number): number {
    if (amount > MOST_STITCHES) throw new ScheduleFault('too-many-stitches', part.start, part.end);
    if (!this.verb && this.way === 'either') throw new ScheduleFault('no-way', part.start, part.end);
    return amount * (this.verb?.sign ?? (this.way === 'out' ? 1 : -1));
  }

  private push(part: Part, stitches: number, goesOn: boolean): void {
    this.stitches = stitches;
    const draft: StepDraft = {
      kind: 'shaping',
      start: part.start,
      end: part.end,
      stitches,
      every: this.every ?? USUAL,
      times: part.times,
      bare: part.times === null || part.inBrackets,
      rows: null,
      needsTimes: false,
      goesOn,
    };
    this.drafts.push(draft);
    if (part.rows) this.say(draft, part, part.rows);
  }

  /** Rows alone: they are said of the bare numbers before them, or repeat the last number. */
  private addRows(part: Part, rows: RowsSaid): void {
    const last = this.drafts.at(-1);
    if (last?.kind === 'shaping' && last.bare && this.drafts.length > this.list) {
      if (part.times !== null && last.times !== null) throw new ScheduleFault('once-only', part.start, part.end);
      last.times ??= part.times;
      this.say(last, part, rows);
    } else if (this.stitches !== null) this.push(part, this.stitches, true);
    else throw new ScheduleFault('nothing-before', part.start, part.end);
  }

  private addTimes(part: Part): void {
    const last = this.drafts.at(-1);
    if (last?.kind !== 'shaping' || last.times !== null || this.drafts.length === this.list) {
      throw new ScheduleFault('nothing-before', part.start, part.end);
    }
    last.times = part.times;
    last.bare = false;
  }

  /** Says of the last step, and of the bare ones of its list, on which rows they are. */
  private say(draft: StepDraft, part: Part, rows: RowsSaid): void {
    const fellows = this.fellows();
    const often = (part.times !== null && !part.inBrackets) || rows.kind !== 'every';
    if (fellows.length > 0 && often) throw new ScheduleFault('which-times', part.start, part.end);
    if (rows.kind !== 'every' && draft.times !== null) throw new ScheduleFault('once-only', part.start, part.end);
    draft.rows = rows;
    draft.bare = false;
    draft.every = rows.every;
    draft.times ??= rows.times;
    if (rows.inARow) this.sayInARow(draft, part, rows);
    if (rows.kind !== 'every') return;
    for (const fellow of fellows) fellow.every = rows.every;
    draft.needsTimes = draft.times === null && fellows.length === 0 && this.verb !== null && !this.verb.together;
    this.every = rows.every;
  }

  /** The bare steps right before the last one, in its list. */
  private fellows(): StepDraft[] {
    const fellows: StepDraft[] = [];
    for (let i = this.drafts.length - 2; i >= this.list; i--) {
      const draft = this.drafts[i];
      if (draft?.kind !== 'shaping' || !draft.bare) break;
      fellows.push(draft);
    }
    return fellows;
  }

  /** `next 4 rows`: on each of them, or, where it is done at the start of a row, on every second one of either edge. */
  private sayInARow(draft: StepDraft, part: Part, rows: RowsSaid): void {
    if (!part.atStart && !(this.verb?.together ?? Math.abs(draft.stitches) > 1)) return;
    const count = rows.times ?? 0;
    if (count % 2 !== 0) throw new ScheduleFault('odd-rows', part.start, part.end);
    draft.every = USUAL;
    draft.times = count / 2;
  }
}
