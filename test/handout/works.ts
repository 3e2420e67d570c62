import { handoutWork } from '../../src/editor';
import type { Work } from '../../src/handout';
import { planDesign, type DesignPlan } from '../../src/pickup';
import { DEFAULT_HANDOUT, HANDOUT_BLOCKS, type Handout } from '../../src/piece';
import { handoutWorkWords } from '../../src/text';
import { along, design, rectangle, type Raw } from '../pickup/builders';

export const GAUGES = [
  { stitches: 18, rows: 24, over: 100 },
  { stitches: 26, rows: 36, over: 100 },
] as const;

/** A handout with every block on it, made for a pick-up of a plan, with the counts at other gauges. */
export function workOf(plan: DesignPlan, fields: Partial<Handout> = {}, pickup = 0): Work {
  const handout: Handout = {
    ...DEFAULT_HANDOUT,
    blocks: HANDOUT_BLOCKS,
    note: 'For the class',
    gauges: GAUGES,
    ...fields,
  };
  return handoutWork(plan, pickup, handout, handoutWorkWords(plan.design));
}

/** Settings in which every two of them meet in every way. */
export const SETTINGS: readonly Partial<Handout>[] = [
  { paper: 'A4', orientation: 'portrait', diagram: 'fitted', version: 'sheet', ink: 'colour' },
  { paper: 'Letter', orientation: 'landscape', diagram: 'true-size', version: 'sheet', ink: 'black' },
  { paper: 'A4', orientation: 'landscape', diagram: 'fitted', version: 'exercise', ink: 'black' },
  { paper: 'Letter', orientation: 'portrait', diagram: 'true-size', version: 'exercise', ink: 'colour' },
  { paper: 'Letter', orientation: 'landscape', diagram: 'fitted', version: 'answers', ink: 'colour' },
  { paper: 'A4', orientation: 'portrait', diagram: 'true-size', version: 'answers', ink: 'black' },
];

const ALL_ROUND = ['bottom', 'right', 'top', 'left'];
const SECTIONS = { by: 'length', parts: 6, counts: 'exact' };

const border = (edges: readonly string[], fields: Raw = {}) =>
  along(edges, { name: 'Border', joined: true, sections: SECTIONS, ...fields });

const planned = (name: string, pieces: Raw, pickup: Raw) => planDesign(design(pieces, pickup, { name }));

/** A piece of 24 edges: a comb of battlements. */
function comb(): Raw {
  const teeth = Array.from({ length: 5 }, (_, i): Raw[] => {
    const right = 60 - i * 12;
    return [
      { from: [right, 60], path: 'straight' },
      { from: [right - 6, 60], path: 'straight' },
      { from: [right - 6, 40], path: 'straight' },
      { from: [right - 12, 40], path: 'straight' },
    ];
  }).flat();
  const outline = [{ from: [0, 0], path: 'straight' }, { from: [60, 0], path: 'straight' }, ...teeth];
  const last = [
    { from: [0, 40], path: 'straight' },
    { from: [0, 20], path: 'straight' },
  ];
  return {
    id: 'piece',
    name: 'Comb',
    gauge: { stitches: 20, rows: 28 },
    // The last corner of the teeth is the first of the left side.
    outline: [...outline, ...last]
      .filter(({ from }, i, all) => JSON.stringify(from) !== JSON.stringify(all[i - 1]?.from))
      .map((edge, i) => ({ id: `edge-${i + 1}`, name: `Edge ${i + 1} of the battlements`, ...edge })),
  };
}

const LONG =
  'The blanket that was begun for a cousin who has since grown up, and is now being finished for whoever comes next, in the wool that was left';

/** Work that is hard to lay out. */
export const HARD: Readonly<Record<string, () => DesignPlan>> = {
  'one very long name': () =>
    planned(LONG, rectangle(80, 112, { top: { name: LONG } }, { name: LONG }), border(ALL_ROUND, { name: LONG })),
  'one long word': () =>
    planned('Kilim'.repeat(40), rectangle(80, 112, {}, { name: 'x'.repeat(90) }), border(ALL_ROUND)),
  Cyrillic: () =>
    planned(
      'Детский плед «Севастопольский рассвет»',
      rectangle(80, 112, { top: { name: 'Верхний край, от левого угла' } }, { name: 'Полотно' }),
      border(ALL_ROUND, { name: 'Обвязка по кругу' }),
    ),
  Japanese: () =>
    planned(
      '赤ちゃんのおくるみ、ガーター編みの縁どり',
      rectangle(80, 112, { top: { name: '上端、左の角から右の角まで' } }, { name: '本体' }),
      border(ALL_ROUND, { name: '縁編み' }),
    ),
  '900 stitches': () =>
    planned('Shawl', rectangle(240, 336, {}, { name: 'Shawl' }), border(ALL_ROUND, { target: 900 })),
  '24 edges': () => {
    const piece = comb();
    const ids = (piece.outline as readonly { id: string }[]).map(({ id }) => id);
    return planned('Battlements', piece, border(ids, { sections: { by: 'length', parts: 24, counts: 'exact' } }));
  },
  'a blanket of 5 m': () =>
    planned(
      'Blanket',
      rectangle(700, 980, {}, { gauge: { stitches: 14, rows: 19.6 }, name: 'Blanket' }),
      border(ALL_ROUND),
    ),
};
