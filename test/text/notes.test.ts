import { describe, expect, test } from 'vitest';
import { noteText, TERMS, type EdgeNames } from '../../src/text';
import { NOTES } from './notes';

const names: EdgeNames = ({ edge }) => `Front, ${edge.replace('-', ' ')}`;
const voice = { terms: TERMS.US, units: 'cm' } as const;

describe('noteText', () => {
  test('says of every kind of note what is so, why, and what mends it', () => {
    expect(NOTES.map((note) => noteText(note, names, voice))).toEqual([
      'Front, neck left: 115 stitches are wanted and there are only 64 places, chains and the gaps between them, so every one is used and the rest is increased on the first row. A plain selvage would have a place in every row.',
      'Front, neck left: 61.5 stitches are wanted and there are only 50 rows, so every one is used and the rest is picked up along the other edges. A smaller count, or a band with a looser gauge, would do without the increases.',
      'Mirrored edges get the same count, so 109 cannot be shared out: 108 are picked up and the first row makes 109 of them. A total one higher or lower, or one more on an edge without a twin, needs no correction.',
      'The edges give 105 by the rates set for them, and 108 are needed: the first row makes up the difference. Let one edge go by its length and it takes the difference instead.',
      'The same count in every section needs sections of one length, so these keep their own counts; ask for sections by length to have them equal.',
      '14 in each of 8 sections are 112 in all; the first row makes 115 of them. With exact counts the sections would differ by one and need no correction.',
      "The total asked for, 109, is not a multiple of 4 plus 2, so the band's pattern will not come out even. 106 or 110 would.",
      "The total asked for, 1, is not a multiple of 4 plus 2, so the band's pattern will not come out even. 2 would.",
      "Front, neck left: the tape says 10.4 cm, 2.5% less than the 10.7 cm of the drawing. The plan goes by the tape; if that surprises you, measure again after blocking or check the piece's gauge.",
      '71 stitches over 4 sections leave 3 over, an odd number, so the two halves cannot mirror each other. 3 or 5 sections can.',
      'The sections stated add up to 164, not to the 218 stated in all: one of them is a misprint.',
      'The sections stated add up to 164, not to the 218 of this plan: correct them before you place the markers.',
      'The counts stated edge by edge add up to 107, not to the 108 stated in all: one of them is a misprint.',
      "The total stated, 109, is not a multiple of 4: the band's pattern will not come out even. Look for a correction, or change the count on the first row.",
      'Front, neck left is stated with 24 and its mirror image, Front, neck right, with 23: they should be alike, or the two sides will not match.',
      '108 matches the count stated, but on this piece it is 9.0% short: its edge is not the one that the pattern has in mind. Go by the length, not by the count.',
      'Front, neck left: 24 matches the count stated, but on this piece it is 9.0% over: its edge is not the one that the pattern has in mind. Go by the length, not by the count.',
      'Front, neck left: the count set for it is 5.0% short, so it is slightly tight. Let it go by its length, or change its rate.',
      'Front, neck left: the count set for it is 12% over, so it will ruffle. Let it go by its length, or change its rate.',
      'Front: 50 stitches to 10 cm lies outside the usual range of hand knitting. Check over what length the gauge was counted.',
      'The band Neckband: 22 stitches and 18 rows to 10 cm is an unusual pair for stockinette. Check that stitches and rows are not exchanged.',
      '30 buttonholes with their ends and a stitch between each two take 125, and the band has 80 stitches: have fewer or smaller ones, or shorter ends.',
      'The buttonholes lie in no purl columns, since the band is in no rib that its multiple tells: choose rib for the band, and k1, p1 or k2, p2 for the repeat.',
      'The buttonholes are spaced evenly and not in the purl columns of the rib: there is no room to move them there. Fewer or smaller ones leave room.',
      'The first row changes too many stitches to keep clear of every marker and seam: some of its changes stand at one. Fewer sections, or a target nearer to what is picked up, leave room.',
      'A section has too few stitches to be put right by itself, so the first row is spaced over all of it. Fewer sections, or a target nearer to what is picked up, leave room.',
      'The first row keeps no rib, since the band is in none that its multiple tells: choose rib for the band, and k1, p1 or k2, p2 for the repeat.',
      'The first row changes too many stitches to keep the rib. A target nearer to what is picked up leaves room.',
      "You have 414 where 424 are planned, 2.4% short. That lies flat. The band's pattern fits it, so it can stay.",
      "You have 400 where 424 are planned, 5.7% short. That is slightly tight. The band's pattern does not fit it: bring it to 424 on the first row.",
      'You have 424, as planned. That lies flat.',
    ]);
  });

  test('says round where the band is joined, and inches where they are wanted', () => {
    expect(noteText(NOTES[2]!, names, voice, 'round')).toContain('the first round makes 109');
    expect(
      noteText(
        NOTES.find(({ kind }) => kind === 'measured-differs')!,
        names,
        { ...voice, units: 'in' },
      ),
    ).toContain('the tape says 4⅛ in');
    expect(
      noteText(
        NOTES.find(({ kind }) => kind === 'gauge-unusual')!,
        names,
        { ...voice, units: 'in' },
      ),
    ).toContain('50.8 stitches to 4 in');
  });
});
