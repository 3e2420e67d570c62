import { bodyElements, drawDiagram, scaleToFit, type Drawing, type DrawOptions } from '../../renderer';
import { handoutHeading, stripAnswer, stripText } from '../../text';
import { inFamily, placedAt } from '../elements';
import { heading, paragraph, type Strip } from '../strip';
import { ROOM } from '../type';
import type { PracticeStrip, Sheet } from '../work';

/** Strips at different gauges to try on: the places alone for a class, what is picked up with the answers. */
export function stripsBlock(sheet: Sheet): Strip[] {
  const { strips, voice, width } = sheet;
  if (strips.length === 0) return [];
  return [...heading(handoutHeading('strips', voice), width), ...strips.flatMap((one, i) => stripOf(sheet, one, i))];
}

function stripOf({ handout, voice, width }: Sheet, { gauge, plan }: PracticeStrip, i: number): Strip[] {
  const [pickup] = plan.pickups;
  const edge = pickup?.edges[0];
  if (!pickup || !edge) return [];
  const asks = handout.version === 'exercise';
  const options: Omit<DrawOptions, 'scale'> = {
    pickup: 0,
    detail: 'shape',
    words: { units: voice.units },
    rulers: false,
    dimensions: false,
    names: false,
    fabric: 'none',
    ...(asks ? { blank: true } : {}),
  };
  const scale = Math.min(1, scaleToFit(plan, options, { width, height: Number.MAX_SAFE_INTEGER }));
  const drawing = drawDiagram(plan, { ...options, scale });
  const told = [stripText(edge.rows, edge.edgeMm, gauge, voice), ...(asks ? [] : [stripAnswer(pickup.picked)])];
  return [...paragraph(told.join(' '), width, { withNext: true }), pictureOf(drawing, i)];
}

function pictureOf(drawing: Drawing, i: number): Strip {
  return {
    gap: ROOM.paragraph,
    height: drawing.height,
    draw: (x, y) => [placedAt(bodyElements(drawing, { idPrefix: `strip-${i}-` }).map(inFamily), x, y)],
  };
}
