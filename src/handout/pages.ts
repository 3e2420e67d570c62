import type { HandoutBlock } from '../piece';
import { footText, voiceOf } from '../text';
import { bandBlock, abbreviationsBlock, firstRowBlock, instructionsBlock, sumBlock } from './blocks/words';
import { diagramBlock, diagramTiles } from './blocks/diagram';
import { needleBlock } from './blocks/needle';
import { rulerBlock } from './blocks/ruler';
import { stripsBlock } from './blocks/strips';
import { edgesBlock, gaugesBlock, sectionsBlock } from './blocks/tables';
import { titleBlock } from './blocks/title';
import { inBlack } from './black';
import { FAMILY, named, textAt } from './elements';
import { flow, heightOf } from './flow';
import { fitted } from './letters/fitted';
import { columnsOf, MARGIN, paperSize, roomOn } from './paper';
import type { Page } from './pdf/page';
import type { Strip } from './strip';
import { TYPE } from './type';
import type { Sheet, Work } from './work';

const BLOCKS: Readonly<Record<HandoutBlock, (sheet: Sheet) => Strip[]>> = {
  title: titleBlock,
  diagram: diagramBlock,
  edges: edgesBlock,
  sections: sectionsBlock,
  sum: sumBlock,
  needle: needleBlock,
  instructions: instructionsBlock,
  'first-row': firstRowBlock,
  band: bandBlock,
  gauges: gaugesBlock,
  strips: stripsBlock,
  abbreviations: abbreviationsBlock,
  ruler: rulerBlock,
};

/**
 * The handout of a pick-up as pages of plain data, in mm: the same on the screen, on paper and in a document. A diagram
 * in true size stands on pages of its own after the others.
 *
 * @throws RangeError when there is no such pick-up
 */
export function handoutPages(work: Work): Page[] {
  const chosen = work.plan.pickups[work.pickup];
  if (!chosen) throw new RangeError(`There is no pick-up number ${work.pickup} in this plan.`);
  const size = paperSize(work.handout);
  const { width } = columnsOf(size);
  const sheet: Sheet = { ...work, chosen, size, width, above: 0, voice: voiceOf(work.plan.design) };
  const { blocks, diagram } = work.handout;
  const strips: Strip[] = [];
  for (const block of blocks) strips.push(...BLOCKS[block]({ ...sheet, above: heightOf(strips) }));
  const tiles = diagram === 'true-size' && blocks.includes('diagram') ? diagramTiles(sheet) : [];
  const pages = [...(strips.length > 0 || tiles.length === 0 ? flow(strips, size) : []), ...tiles];
  const base = size.height - MARGIN.foot + 7;
  const room = roomOn(size).width;
  return pages.map((elements, i) => {
    const { left, right } = footText(work.plan.design.name, i + 1, pages.length);
    const foot = [
      textAt(fitted(left, room * 0.75, TYPE.small, 'regular'), MARGIN.side, base, { size: TYPE.small }),
      textAt(right, size.width - MARGIN.side, base, { size: TYPE.small, anchor: 'end' }),
    ].filter(({ text }) => text !== '');
    return {
      ...size,
      elements: [
        {
          name: 'g',
          attributes: { class: 'page', 'font-family': FAMILY },
          children: [...elements, named('foot', foot)].map(
            work.handout.ink === 'black' ? inBlack : (element) => element,
          ),
        },
      ],
    };
  });
}
