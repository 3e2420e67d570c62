import type { PlaceQuestion, RowQuestion, StarterWords, Units, Hand, Terms as TermsName } from '../piece';
import type { PlaceAnswer, RowAnswer } from '../pickup';
import { toUnit, type Mm } from '../units';
import { edgeNames } from './edgeName';
import { firstRowProof, firstRowText } from './firstRow';
import { densityLabel } from './labels';
import { rowOrRound } from './rowOrRound';
import { noteText } from './notes';
import { fixedNumber, lengthText, percentText, plainNumber } from './numbers';
import { unitOf } from './sorts';
import { quickCounted, overText } from './quickFaults';
import type { QuickMeasure } from './quickWords';
import { rhythmText } from './rhythm';
import { starterWords } from './starters';
import { voiceOf, type Voice } from './voice';
import { capitalised, counted, stitchesText } from './words';

/** How the words of a question are chosen: those of the design on the page, or the command's own. */
export interface QuickVoice {
  readonly terms: TermsName;
  readonly units: Units;
  readonly hand: Hand;
}

/** What the design of a question is called, and how it speaks. */
export function quickWords(question: PlaceQuestion | RowQuestion, voice: QuickVoice): StarterWords {
  const name = question.kind === 'place' ? placeTitle(question, voice.units) : rowTitle(question);
  return { ...starterWords('strip', voice), name };
}

/** `71 stitches over 88 rows`. */
export function placeTitle({ place, over, unit }: PlaceQuestion, units: Units): string {
  return `${stitchesText(place)} over ${unit === 'length' ? askedLength(over, units) : quickCounted(over, unit)}`;
}

/** A length as it was asked about: `50 cm`, `5.5 cm`, `4½ in`. */
function askedLength(mm: Mm, units: Units): string {
  return units === 'cm' ? `${plainNumber(toUnit(mm, units), 2)} cm` : lengthText(mm, units);
}

/** `131 stitches decreased by 39`. */
export function rowTitle({ have, change, amount, amountIs }: RowQuestion): string {
  return `${stitchesText(have)} ${change}d ${amountIs} ${amount}`;
}

/**
 * The answer in one sentence: the runs, `Pick up 4, skip 1, 17 times; then pick up 3`; where only a length is known,
 * how far apart the stitches stand.
 */
export function placeSentence(answer: PlaceAnswer): string {
  const { pickup, edge, plan, question, lengthMm } = answer;
  const voice = voiceOf(plan.design);
  if (!answer.hasOpenings && lengthMm !== null)
    return `A stitch every ${spacingText(lengthMm / question.place, voice)}`;
  return capitalised(rhythmText(edge.rhythm, unitOf(pickup, edge), voice));
}

function spacingText(mm: Mm, { units }: Pick<Voice, 'units'>): string {
  return units === 'in' ? `${plainNumber(toUnit(mm, units), 2)} in` : `${fixedNumber(mm)} mm`;
}

/** Under it, how the places are used: `71 of 88 rows; 17 are passed over.` */
export function placeUse(answer: PlaceAnswer): string {
  const { edge, pickup, question } = answer;
  if (!answer.hasOpenings) {
    return `The runs need the rows of the edge: with the rows to ${overText(answer.design.units)} every place is drawn.`;
  }
  const unit = unitOf(pickup, edge);
  const all = pickup.points.length;
  const places = unit === 'place' || unit === 'live' ? counted(all, 'place') : quickCounted(all, unit);
  const skipped = all - edge.count;
  const rows = question.unit === 'length' ? `${askedLength(question.over, answer.design.units)} are ${places}: ` : '';
  if (skipped > 0) {
    const used = rows === '' ? `${edge.count} of ${places} are used` : `${edge.count} are used`;
    return `${rows}${used}, ${skipped} ${skipped === 1 ? 'is' : 'are'} passed over.`;
  }
  const every = all === 1 ? `the only ${places.slice(2)} is used` : `all ${places} are used`;
  const used = rows === '' ? capitalised(every) : `${rows}${every}`;
  const [first] = pickup.points;
  const gaps = unit !== 'place' || !first ? '' : first.kind === 'ridge' ? RIDGES : CHAINS;
  const rest = question.place - all;
  const made = rest === 1 ? 'one more is' : `the other ${rest} are`;
  return rest > 0 ? `${used}${gaps}; ${made} increased on the first row.` : `${used}${gaps}.`;
}

const CHAINS = ', the chains and the gaps between them';
const RIDGES = ', the ridges and the hollows between them';

/** The field for a gauge, as it is called and as the line goes on after it: `rows to 10 cm,`. */
export function gaugeFieldText(
  measure: QuickMeasure,
  units: Units,
): { readonly label: string; readonly after: string } {
  const many = `${measure === 'stitch' ? 'stitches' : 'rows'} to ${overText(units)}`;
  return { label: capitalised(many), after: `${many},` };
}

/** A first row that makes what the edge could not take; empty where there is nothing to make. */
export function placeFirstRow({ pickup }: PlaceAnswer): string {
  return pickup.firstRow.groups.length === 0
    ? ''
    : `First row: ${firstRowText(pickup.firstRow)} (${firstRowProof(pickup.firstRow)}).`;
}

/** What lies flat with this count: the gauge where a length is known, else stitches to a row. */
export function placeGauge(answer: PlaceAnswer): string {
  const { impliedPer10cm, question, design } = answer;
  if (impliedPer10cm !== null) {
    const inch = plainNumber((impliedPer10cm * 25.4) / 100, 2);
    return `It lies flat where the band has ${densityLabel(impliedPer10cm, design.units)}, ${inch} to the inch.`;
  }
  const each = question.unit === 'length' ? 'row' : question.unit;
  const rate = plainNumber(question.place / question.over, 2);
  const many = rate === '1' ? 'stitch' : 'stitches';
  return each === 'stitch'
    ? `That is ${rate} new ${many} to each of the edge.`
    : `That is ${rate} ${many} to a ${each}.`;
}

/** A plain ratio beside the answer: what to do, what it gives, how far off that is. */
export interface RatioRow {
  readonly ratio: string;
  readonly count: string;
  readonly off: string;
}

/** The nearest plain ratios with what each would give, and the error: `1 short, 1.4%`. */
export function ratioRows({ edge, pickup, question, hasOpenings }: PlaceAnswer): RatioRow[] {
  if (!hasOpenings) return [];
  const unit = unitOf(pickup, edge);
  const one = unit === 'place' || unit === 'live' ? edge.unit : unit;
  return edge.ratios.map(({ pick, of, count }) => {
    const each = one === 'live' ? 'stitch' : one;
    const from = of === 1 ? `each ${each}` : `every ${quickCounted(of, each)}`;
    return { ratio: `${pick} from ${from}`, count: `${count}`, off: offText(count, question.place) };
  });
}

function offText(count: number, wanted: number): string {
  const off = count - wanted;
  if (off === 0) return 'exact';
  return `${Math.abs(off)} ${off < 0 ? 'short' : 'over'}, ${percentText(Math.abs(off) / wanted)}`;
}

/** What there is to know besides, a sentence or two each. */
export function placeNotes({ plan, pickup }: PlaceAnswer): string[] {
  const names = edgeNames(plan.design);
  const voice = voiceOf(plan.design);
  return pickup.notes.flatMap((note) => {
    // What its places can't hold is told with their use, and the fabric of the strip is not asked about.
    if (note.kind === 'too-few-openings' || (note.kind === 'gauge-unusual' && note.what === 'piece')) return [];
    if (note.kind !== 'gauge-unusual') return [noteText(note, names, voice, rowOrRound(pickup))];
    return [
      `${densityLabel(note.per10cm, voice.units)} lies outside the usual range of hand knitting: check the numbers.`,
    ];
  });
}

/** The row in words, `(K1, k2tog) 25 times, (k2, k2tog) 14 times`. */
export function rowSentence({ pickup }: RowAnswer): string {
  return firstRowText(pickup.firstRow).replace(/[a-z]/u, (letter) => letter.toUpperCase());
}

/** `131 − 39 = 92. Counted out, it uses 131 stitches, leaves 92.` */
export function rowProof({ pickup }: RowAnswer): string {
  const { from, to } = pickup.firstRow;
  const sign = to > from ? '+' : '−';
  return `${from} ${sign} ${Math.abs(to - from)} = ${to}. Counted out, the ${rowOrRound(pickup)} ${firstRowProof(pickup.firstRow)}.`;
}

/** What the letters of the row stand for. */
export function rowLetters({ question }: RowAnswer): string {
  const worked =
    question.change === 'increase' ? 'm1 an increase made between two' : 'k2tog two stitches worked as one';
  return `k is any plain stitch, ${worked}.`;
}
