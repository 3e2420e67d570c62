import type { Note, OpeningKind, RowNote } from '../pickup';
import type { EdgeNames } from './edgeName';
import { densityLabel, gaugeLabel, openingsLabel, verdictClause } from './labels';
import { lengthText, multipleText, percentText, plainNumber, stretchText } from './numbers';
import type { Voice } from './voice';
import { counted, listed, stitchesText } from './words';

/**
 * A note of a plan in one to three plain sentences: what is so, why, and what would mend it.
 *
 * @param row what the band is worked in: `round` where it is joined
 */
export function noteText(
  note: Note,
  names: EdgeNames,
  voice: Pick<Voice, 'terms' | 'units'>,
  row: 'row' | 'round' = 'row',
): string {
  switch (note.kind) {
    case 'too-few-openings':
      return (
        `${names(note.edge)}: ${plainNumber(note.wanted)} stitches are wanted and there are only ` +
        `${placesCounted(note.openings, note.unit)}, so every one is used and the rest is ` +
        `${note.made === 'other-edges' ? 'picked up along the other edges' : `increased on the first ${row}`}. ` +
        morePlaces(note.unit, voice)
      );
    case 'twins-odd':
      return (
        `Mirrored edges get the same count, so ${note.target} cannot be shared out: ${note.picked} are picked up and ` +
        `the first ${row} makes ${note.target} of them. A total one higher or lower, or one more on an edge without a ` +
        'twin, needs no correction.'
      );
    case 'fixed-counts':
      return (
        `The edges give ${note.picked} by the rates set for them, and ${note.target} are needed: the first ${row} makes ` +
        'up the difference. Let one edge go by its length and it takes the difference instead.'
      );
    case 'same-needs-length':
      return 'The same count in every section needs sections of one length, so these keep their own counts; ask for sections by length to have them equal.';
    case 'same-sections':
      return (
        `${note.each} in each of ${note.parts} sections are ${note.picked} in all; the first ${row} makes ` +
        `${note.target} of them. With exact counts the sections would differ by one and need no correction.`
      );
    case 'target-off-multiple':
      return (
        `The total asked for, ${note.target}, is not ${multipleText(note.multiple, note.plus)}, so the band's pattern ` +
        `will not come out even. ${fitting(note.below, note.above, note.target)}`
      );
    case 'measured-differs': {
      const stretch = note.measuredMm / note.computedMm - 1;
      return (
        `${names(note.edge)}: the tape says ${lengthText(note.measuredMm, voice.units)}, ` +
        `${percentText(Math.abs(stretch))} ${stretch < 0 ? 'less' : 'more'} than the ` +
        `${lengthText(note.computedMm, voice.units)} of the drawing. The plan goes by the tape; if that surprises ` +
        `you, measure again after blocking or check the piece's ${voice.terms.gauge}.`
      );
    }
    case 'sections-cannot-mirror':
      return (
        `${stitchesText(note.count)} over ${note.parts} sections leave ${note.count % note.parts} over, an odd number, ` +
        `so the two halves cannot mirror each other.${note.better.length > 0 ? ` ${listed(note.better, 'or')} sections can.` : ''}`
      );
    case 'sections-do-not-sum':
      return note.stated === 'total'
        ? `The sections stated add up to ${note.sum}, not to the ${note.total} stated in all: one of them is a misprint.`
        : `The sections stated add up to ${note.sum}, not to the ${note.total} of this plan: correct them before you place the markers.`;
    case 'stated-edges-do-not-sum':
      return `The counts stated edge by edge add up to ${note.sum}, not to the ${note.total} stated in all: one of them is a misprint.`;
    case 'total-off-multiple':
      return (
        `The total stated, ${note.total}, is not ${multipleText(note.multiple, note.plus)}: the band's pattern will ` +
        `not come out even. Look for a correction, or change the count on the first ${row}.`
      );
    case 'sides-differ':
      return (
        `${names(note.left)} is stated with ${note.leftCount} and its mirror image, ${names(note.right)}, with ` +
        `${note.rightCount}: they should be alike, or the two sides will not match.`
      );
    case 'matches-but-stretched':
      return (
        `${note.edge ? `${names(note.edge)}: ` : ''}${note.count} matches the count stated, but on this piece it is ` +
        `${stretchText(note.stretch)}: its edge is not the one that the pattern has in mind. Go by the length, not by ` +
        'the count.'
      );
    case 'stretched':
      return (
        `${names(note.edge)}: the count set for it is ${stretchText(note.stretch)}, so it ${verdictClause(note.verdict)}. ` +
        'Let it go by its length, or change its rate.'
      );
    case 'gauge-unusual':
      return gaugeNote(note, voice);
    case 'buttonholes-do-not-fit':
      return (
        `${counted(note.holes, 'buttonhole')} with their ends and a stitch between each two take ${note.needed}, and ` +
        `the band has ${stitchesText(note.total)}: have fewer or smaller ones, or shorter ends.`
      );
    case 'buttonholes-not-in-rib':
      return holesNoteText(note);
    case 'row-not-clear':
    case 'row-not-by-sections':
    case 'row-not-in-rib':
      return rowNoteText(note, row);
    case 'got':
      return gotNote(note, row);
  }
}

/** What a first row could not keep of how it was asked to be placed, and what leaves room for it. */
export function rowNoteText(note: RowNote, row: 'row' | 'round'): string {
  switch (note.kind) {
    case 'row-not-clear':
      return (
        `The first ${row} changes too many stitches to keep clear of every marker and seam: some of its changes stand ` +
        'at one. Fewer sections, or a target nearer to what is picked up, leave room.'
      );
    case 'row-not-by-sections':
      return (
        `A section has too few stitches to be put right by itself, so the first ${row} is spaced over all of it. Fewer ` +
        'sections, or a target nearer to what is picked up, leave room.'
      );
    case 'row-not-in-rib':
      return note.why === 'no-rib'
        ? `The first ${row} keeps no rib, since the band is in none that its multiple tells: choose rib for the band, and k1, p1 or k2, p2 for the repeat.`
        : `The first ${row} changes too many stitches to keep the rib. A target nearer to what is picked up leaves room.`;
  }
}

/** Why buttonholes are not in the purl columns of a rib, and what would let them be. */
export function holesNoteText({ why }: Extract<Note, { kind: 'buttonholes-not-in-rib' }>): string {
  return why === 'no-rib'
    ? 'The buttonholes lie in no purl columns, since the band is in no rib that its multiple tells: choose rib for the band, and k1, p1 or k2, p2 for the repeat.'
    : 'The buttonholes are spaced evenly and not in the purl columns of the rib: there is no room to move them there. Fewer or smaller ones leave room.';
}

function placesCounted(openings: number, unit: OpeningKind): string {
  // Second places are counted in: a chain with its gap, a ridge with its hollow.
  return unit === 'chain' || unit === 'ridge'
    ? `${counted(openings, 'place')}, ${unit === 'chain' ? 'chains and the gaps' : 'ridges and the hollows'} between them`
    : openingsLabel(openings, unit);
}

function morePlaces(unit: OpeningKind, { terms }: Pick<Voice, 'terms'>): string {
  return unit === 'chain' || unit === 'ridge'
    ? `A plain ${terms.selvage} would have a place in every row.`
    : `A smaller count, or a band with a looser ${terms.gauge}, would do without the increases.`;
}

function fitting(below: number, above: number, target: number): string {
  const choices = [...new Set([below, above])].filter((count) => count !== target);
  if (choices.length === 0) return '';
  return choices.length === 1 ? `${choices.join('')} would.` : `${listed(choices, 'or')} would.`;
}

function gaugeNote(
  note: Extract<Note, { kind: 'gauge-unusual' }>,
  { terms, units }: Pick<Voice, 'terms' | 'units'>,
): string {
  const what = note.what === 'band' ? `The band ${note.name}` : note.name;
  const gauge = { stitches: note.per10cm, rows: note.rowsPer10cm, over: 100 };
  return note.reason === 'outside-ranges'
    ? `${what}: ${densityLabel(note.per10cm, units)} lies outside the usual range of hand knitting. Check over what length the ${terms.gauge} was counted.`
    : `${what}: ${gaugeLabel(gauge, units)} is an unusual pair for ${terms.stockinette}. Check that stitches and rows are not exchanged.`;
}

function gotNote(note: Extract<Note, { kind: 'got' }>, row: string): string {
  const off = note.stretch === null ? '' : `, ${stretchText(note.stretch)}`;
  const verdict = note.verdict === null ? '' : ` That ${verdictClause(note.verdict)}.`;
  if (note.got === note.target) return `You have ${note.got}, as planned.${verdict}`;
  const fits = note.fits
    ? "The band's pattern fits it, so it can stay."
    : `The band's pattern does not fit it: bring it to ${note.target} on the first ${row}.`;
  return `You have ${note.got} where ${note.target} are planned${off}.${verdict} ${fits}`;
}
