import type { PlaceTyped, RowTyped } from '../../src/text';

/**
 * Small cases from published sources and from practice, as a person would type them into the quick question. Where the
 * arithmetic of a source is wrong, `says` tells so, and what is expected is the right value.
 */
export interface QuickCase {
  /** Short, to name the test. */
  readonly id: string;
  readonly title: string;
  /** Where it stands; null for a case from practice, gathered from questions that knitters ask. */
  readonly address: string | null;
  readonly says: string;
  readonly asks: PlaceTyped | RowTyped;
  /** What the answer must hold, word for word, on the page and from the command. */
  readonly shows: readonly string[];
  /** The counts of its sections, in order. */
  readonly sections?: readonly number[];
}

/** A question about an edge: `71 over 88 rows`, in groups unless said otherwise. */
function place(
  place: string,
  over: string,
  measure: PlaceTyped['measure'],
  more: Partial<PlaceTyped> = {},
): PlaceTyped {
  return { place, over, measure, sections: '', gauge: '', spread: 'grouped', ...more };
}

/** A question about a row. */
function row(
  change: RowTyped['change'],
  amount: string,
  have: string,
  round = false,
  amountIs: RowTyped['amountIs'] = 'by',
): RowTyped {
  return { have, change, amount, amountIs, round };
}

const PRACTICE = 'a case from practice';

export const QUICK_CASES: readonly QuickCase[] = [
  {
    id: '71 over 88',
    title: 'How to knit up (forum thread)',
    address: 'https://forum.knittinghelp.com/t/how-to-knit-up/124191',
    says: 'pick 4, skip 1, 17 times, then 3; sections of 18, 18, 18 and 17, here with the 17 third',
    asks: place('71', '88', 'row', { sections: '4' }),
    shows: ['Pick up 4, skip 1, 17 times; then pick up 3.', '17 are passed over', '4 from every 5 rows'],
    sections: [18, 18, 17, 18],
  },
  {
    id: '20 by 26',
    title: 'Perfectly picked up stitches',
    address: 'https://kelbournewoolens.com/blog/2015/04/perfectly-picked-up-stitches/',
    says: '20 stitches by 26 rows is 10 from 13, in groups of 3 and 4; over 130 rows 100, one run more since the last row is picked here',
    asks: place('100', '130', 'row'),
    shows: ['Pick up 4, skip 1, 7 times; pick up 3, skip 1, 23 times; then pick up 3.', '30 are passed over'],
  },
  {
    id: '5 from 7',
    title: 'A little pick-me-up',
    address: 'https://espacetricot.com/2013/05/09/a-little-pick-me-up/',
    says: '20 stitches by 28 rows is 5 from 7',
    asks: place('60', '84', 'row'),
    shows: ['5 from every 7 rows', 'exact'],
  },
  {
    id: '2 from 3',
    title: 'Picking up stitches (forum thread)',
    address: 'http://www.menwhoknit.com/community/?q=node/5359',
    says: '80 stitches for 120 rows is 2 from 3',
    asks: place('80', '120', 'row'),
    shows: ['Pick up 2, skip 1, 39 times; pick up 1, skip 1; then pick up 1.', '2 from every 3 rows', 'exact'],
  },
  {
    id: '80 over 102',
    title: 'Picking up stitches (forum thread)',
    address: 'http://www.menwhoknit.com/community/?q=node/5359',
    says: 'a pattern with 80 from 102 rows lies between 3 of 4 and 4 of 5',
    asks: place('80', '102', 'row'),
    shows: ['4 from every 5 rows', '3 from every 4 rows', '22 are passed over'],
  },
  {
    id: '1 from 2',
    title: 'Combined knitting: picking up stitches',
    address: 'http://www.modeknit.com/pickup.html',
    says: '3 stitches and 6 rows to the inch is one for every 2 rows; over 8 inches 24 from 48',
    asks: place('24', '8', 'in', { gauge: '24' }),
    shows: ['1 from every 2 rows', 'exact', '12 stitches to 4 in, 3 to the inch'],
  },
  {
    id: 'k2p2',
    title: 'How to pick up and knit',
    address: 'https://piiamariaknit.com/en/how-to-pick-up-and-knit-stitches-in-knitting',
    says: 'k2p2 rib takes 3 from 4 rows',
    asks: place('36', '48', 'row'),
    shows: ['3 from every 4 rows', 'exact'],
  },
  {
    id: 'k1p1',
    title: 'How to pick up and knit',
    address: 'https://piiamariaknit.com/en/how-to-pick-up-and-knit-stitches-in-knitting',
    says: 'k1p1 rib takes 4 from 6 rows',
    asks: place('32', '48', 'row'),
    shows: ['2 from every 3 rows', 'exact'],
  },
  {
    id: 'garter side',
    title: 'How to pick up and knit',
    address: 'https://piiamariaknit.com/en/how-to-pick-up-and-knit-stitches-in-knitting',
    says: 'garter takes 1 from 2 rows, that is one from each ridge',
    asks: place('24', '24', 'ridge'),
    shows: ['Pick up every ridge (24).', '1 from each ridge'],
  },
  {
    id: 'marked inches',
    title: 'Knit Perfect: borders',
    address: 'https://www.knittingmagic.biz/guide-8/knit-perfect-mvd.html',
    says: '10 inches by 4 stitches to the inch are 40, with a marker every inch and 4 between',
    asks: place('40', '10', 'in', { sections: '10' }),
    shows: ['A stitch every 0.25 in.', '16 stitches to 4 in, 4 to the inch'],
    sections: [4, 4, 4, 4, 4, 4, 4, 4, 4, 4],
  },
  {
    id: '21 to 10 cm',
    title: 'Little Vest, Australian Knitting, April 2015',
    address: 'https://issuhub.com/view/index/9560?pageIndex=24',
    says: '21 stitches to 10 cm of edge; along 40 cm that is 84',
    asks: place('84', '40', 'cm'),
    shows: ['A stitch every 4.8 mm.', '21 stitches to 10 cm'],
  },
  {
    id: 'rows read as ridges',
    title: 'Picking up along garter edge (forum thread)',
    address: 'https://forum.knittinghelp.com/t/issue-picking-up-stitches-along-garter-edge/158788',
    says: '5 from 6 rows was worked into ridges and came out at half: 60 ridges are 120 rows, so 100, 5 from every 3 ridges',
    asks: place('100', '60', 'ridge'),
    shows: ['5 from every 3 ridges', '100 of 120 places are used'],
  },
  {
    id: 'top loops',
    title: 'Picking up from a garter selvedge',
    address: 'https://illitilli.com/?p=15613',
    says: 'one stitch for 2 rows: 10 ridges give 10',
    asks: place('10', '10', 'ridge'),
    shows: ['Pick up every ridge (10).', 'All 10 ridges are used.'],
  },
  {
    id: 'log cabin',
    title: 'Log cabin (wildflower wool knits)',
    address: 'http://wildflowerwoolknits.blogspot.com/2009/07/everything-is-always-right.html',
    says: 'the third log has 5 and 10 ridges: 15 are picked up, before the corner stitch',
    asks: place('15', '15', 'ridge'),
    shows: ['Pick up every ridge (15).'],
  },
  {
    id: 'flap',
    title: 'The flap heel: gussets come and go',
    address: 'https://osbornfiber.com/2010/06/27/the-flap-heel-gussets-come-and-go/',
    says: '32 rows are 16 chains, a stitch from each',
    asks: place('16', '16', 'chain'),
    shows: ['Pick up every chain (16).', '1 from each chain'],
  },
  {
    id: '3 from 2 chains',
    title: 'How to pick up neckband stitches',
    address: 'https://www.interweave.com/article/knitting/how-to-pick-up-neckband-stitches/',
    says: '3 for 4 rows are 3 from every 2 chains; over 64 rows 48 from 32',
    asks: place('48', '32', 'chain'),
    shows: ['3 from every 2 chains', 'exact'],
  },
  {
    id: 'bound off',
    title: 'Picking up stitches, curved edge',
    address: 'https://tkga.org/article/picking-up-stitches-curved-edge-by-binka-schwan/',
    says: 'one stitch for each stitch bound off',
    asks: place('12', '12', 'stitch'),
    shows: ['Pick up every stitch (12).', '1 from each stitch'],
  },
  {
    id: '80 in quarters',
    title: 'Picking up stitches for button bands',
    address: 'https://sageyarn.wordpress.com/2013/08/05/fal-technique-spotlight-picking-up-stitches-for-buttonbands/',
    says: '80 in four sections are 20 in each; the 107 rows are ours',
    asks: place('80', '107', 'row', { sections: '4' }),
    shows: ['80 of 107 rows are used'],
    sections: [20, 20, 20, 20],
  },
  {
    id: '132 in quarters',
    title: 'TCG: picking up stitches',
    address: 'https://juliaknitwits.blogspot.com/2010/02/tcg-picking-up-stitches.html',
    says: 'the four spaces of 16.5 that it gives make 66: a quarter of 132 is 33; the 176 rows are ours',
    asks: place('132', '176', 'row', { sections: '4' }),
    shows: ['3 from every 4 rows', 'exact'],
    sections: [33, 33, 33, 33],
  },
  {
    id: '132 in eighths',
    title: 'TCG: picking up stitches',
    address: 'https://juliaknitwits.blogspot.com/2010/02/tcg-picking-up-stitches.html',
    says: 'spaces of 16.5 are eighths: 17 and 16 in turn; the 176 rows are ours',
    asks: place('132', '176', 'row', { sections: '8', spread: 'even' }),
    shows: ['132 of 176 rows are used'],
    sections: [17, 16, 17, 16, 17, 16, 17, 16],
  },
  {
    id: '56 over 80',
    title: 'Provence baby cardigan, part 4',
    address:
      'https://tessknits.com/3880/provence-baby-cardigan-part-4-%e2%80%93-sleeves-math-knitting-up-stitches-tracking-progress',
    says: '80 rows round the armhole for 56 stitches: 7 from 10, so 24 rows are passed over; 5 from 7 gives one more',
    asks: place('56', '80', 'row'),
    shows: ['24 are passed over', '5 from every 7 rows', '1 over, 1.8%'],
  },
  {
    id: 'baby armhole',
    title: 'Garter-trimmed baby jacket, print 2130',
    address: 'http://freevintageknitting.com/print/2130',
    says: '49 from 72 rows: 2 from 3 gives 48, and one more makes it odd',
    asks: place('49', '72', 'row'),
    shows: ['2 from every 3 rows', '1 short, 2.0%'],
  },
  {
    id: 'four of five',
    title: 'Tommy Tucker pullover #5103',
    address: 'https://www.freevintageknitting.com/child-sweater-pattern/spool153/5103-tommy-tucker-pullover-pattern',
    says: '70 at the front neck less 38 bound off leave 32 for 40 rows, 4 from 5',
    asks: place('32', '40', 'row'),
    shows: ['4 from every 5 rows', 'exact'],
  },
  {
    id: 'worked V',
    title: 'Colorburst vest',
    address: 'https://knitmuch.com',
    says: 'the V has 64 rows and 56 stitches: 7 from 8',
    asks: place('56', '64', 'row'),
    shows: ['7 from every 8 rows', 'exact'],
  },
  {
    id: 'every row',
    title: 'Front cardi bands',
    address: 'http://lifelackadaisical.blogspot.com/2010/08/front-cardi-bands.html',
    says: 'one for each of 156 rows, on a smaller needle',
    asks: place('156', '156', 'row'),
    shows: ['Pick up every row (156).', 'That is 1 stitch to a row.'],
  },
  {
    id: 'doll band',
    title: 'Button band (doll cardigan)',
    address: 'https://karenmakesstuff.blogspot.com/2010/04/button-band.html',
    says: '19 stitches along 4½ inches',
    asks: place('19', '4½', 'in'),
    shows: ['19 stitches over 4½ in', '4.22 to the inch'],
  },
  {
    id: 'blanket end',
    title: PRACTICE,
    address: null,
    says: 'the end of a blanket, 193 stitches to carry 176: 14 runs of 10 and 4 of 9',
    asks: place('176', '193', 'stitch'),
    shows: ['Pick up 10, skip 1, 14 times; pick up 9, skip 1, 3 times; then pick up 9.'],
  },
  {
    id: 'blanket side',
    title: PRACTICE,
    address: null,
    says: 'the side of a blanket, 294 rows to carry 218: 64 runs of 3 and 13 of 2',
    asks: place('218', '294', 'row'),
    shows: ['Pick up 3, skip 1, 64 times; pick up 2, skip 1, 12 times; then pick up 2.', '3 from every 4 rows'],
  },
  {
    id: 'six sections',
    title: PRACTICE,
    address: null,
    says: '218 in 6 sections: 4 of 36 and 2 of 37',
    asks: place('218', '294', 'row', { sections: '6' }),
    shows: ['218 of 294 rows are used'],
    sections: [36, 37, 36, 36, 37, 36],
  },
  {
    id: 'eight sections',
    title: PRACTICE,
    address: null,
    says: '218 in 8 sections: 6 of 27 and 2 of 28',
    asks: place('218', '294', 'row', { sections: '8' }),
    shows: ['218 of 294 rows are used'],
    sections: [27, 28, 27, 27, 27, 28, 27, 27],
  },
  {
    id: 'too few chains',
    title: PRACTICE,
    address: null,
    says: '115 wanted from 32 chains: 64 places at most, then 51 increases',
    asks: place('115', '32', 'chain'),
    shows: [
      'All 64 places are used, the chains and the gaps between them; the other 51 are increased on the first row.',
      'First row: k1, (m1, k2) 12 times, (m1, k1) 39 times (uses 64 stitches, leaves 115).',
    ],
  },
  {
    id: '4 from 3 chains',
    title: PRACTICE,
    address: null,
    says: '6 stitches and 9 rows to the inch along 8 inches of slipped edge: 4 from every 3 chains; one from each is 25% short',
    asks: place('48', '36', 'chain'),
    shows: ['4 from every 3 chains', 'exact', '12 short, 25%'],
  },
  {
    id: '80 not 56',
    title: PRACTICE,
    address: null,
    says: '80 over 112 rows is 10 of 14, that is 5 of 7; 56 came of counting chains as rows',
    asks: place('80', '112', 'row'),
    shows: ['5 from every 7 rows', 'exact', '32 are passed over'],
  },
  {
    id: '40 plus 4',
    title: 'How to increase at several points in the same row',
    address: 'http://www.dummies.com/how-to/content/how-to-increase-at-several-points-in-the-same-row.html',
    says: '4 increases part 40 stitches in five; it gives five of 8, here the two at the ends are half as long as the others',
    asks: row('increase', '4', '40'),
    shows: ['K5, *m1, k10; repeat from * 2 more times; m1, k5.', 'uses 40 stitches, leaves 44'],
  },
  {
    id: '48 plus 6',
    title: 'Techniques in depth: evenly across, part I',
    address: 'https://moderndailyknitting.com/community/techniques-in-depth-evenly-across-part-i',
    says: '6 increases in 48 stitches are 6 groups of 8',
    asks: row('increase', '6', '48', true),
    shows: ['*K8, m1; repeat from * 5 more times.', 'uses 48 stitches, leaves 54'],
  },
  {
    id: '124 plus 14',
    title: 'Magic formula for placement of increases or decreases',
    address: 'https://studyres.com/doc/1062783/magic-formula-for-placement-of-increases-or-decreases?page=1',
    says: '14 in 124: every 8th twice, every 9th 12 times',
    asks: row('increase', '14', '124', true),
    shows: ['uses 124 stitches, leaves 138'],
  },
  {
    id: '131 less 39',
    title: 'Decrease evenly across row',
    address: 'http://spincraftpatterns.com/content/decrease-evenly-across-row',
    says: 'its (k2, k2tog) 39 times would take 156 stitches, not the 117 printed: it is 25 times (k1, k2tog), 14 times (k2, k2tog)',
    asks: row('decrease', '39', '131', true),
    shows: ['(K2, k2tog) 14 times, (k1, k2tog) 25 times.', 'uses 131 stitches, leaves 92'],
  },
  {
    id: '131 to 92',
    title: 'Decrease evenly across row',
    address: 'http://spincraftpatterns.com/content/decrease-evenly-across-row',
    says: 'the same flat, by the 92 that are to be left',
    asks: row('decrease', '92', '131', false, 'to'),
    shows: ['131 − 39 = 92.', 'uses 131 stitches, leaves 92'],
  },
  {
    id: '30 less 10',
    title: 'Decreasing multiple stitches',
    address: 'https://issuhub.com/view/index/4587?pageIndex=76',
    says: 'k1, decrease over the next 2, repeated: 20 are left, a third fewer, where it says half',
    asks: row('decrease', '10', '30', true),
    shows: ['*K1, k2tog; repeat from * 9 more times.', 'uses 30 stitches, leaves 20'],
  },
  {
    id: '157 less 1',
    title: 'Front cardi bands',
    address: 'http://lifelackadaisical.blogspot.com/2010/08/front-cardi-bands.html',
    says: 'the side with 157 rows is brought to 156 by one k2tog',
    asks: row('decrease', '1', '157'),
    shows: ['157 − 1 = 156.', 'uses 157 stitches, leaves 156'],
  },
];

/** The words of the command that ask the same. */
export function commandWords(asks: PlaceTyped | RowTyped): string[] {
  if ('have' in asks) {
    const { change, amount, amountIs, have, round } = asks;
    return [change, ...(amountIs === 'to' ? ['to'] : []), amount, 'over', have, ...(round ? ['--round'] : [])];
  }
  const { place: wanted, over, measure, sections, gauge, spread } = asks;
  return [
    ...['place', wanted, 'over', over, measure],
    ...(sections === '' ? [] : ['--sections', sections]),
    ...(gauge === '' ? [] : ['--gauge', gauge]),
    ...(spread === 'grouped' ? ['--grouped'] : []),
  ];
}
