import { bodyElements, drawDiagram, scaleToFit, type Drawing, type DrawOptions } from '../../renderer';
import { handoutHeading, stripAnswer, stripText } from '../../text';
import { inFamily, placedAt, textAt } from '../elements';
import { wrapped } from '../letters/wrapped';
import { baseOf, heading, type Strip } from '../strip';
import { LEADING, ROOM, TYPE } from '../type';
import type { PracticeStrip, Sheet } from '../work';

/** Between two strips that stand side by side, mm. */
const BETWEEN = 8;

interface Shown {
  readonly drawing: Drawing;
  readonly lines: readonly string[];
}

/** Strips at different gauges to try on: the places alone for a class, what is picked up with the answers. */
export function stripsBlock(sheet: Sheet): Strip[] {
  const { strips, voice, width } = sheet;
  const shown = strips.flatMap((one) => drawnStrip(sheet, one));
  if (shown.length === 0) return [];
  const widest = Math.max(...shown.map(({ drawing }) => drawing.width));
  const across = Math.max(1, Math.floor((width + BETWEEN) / (widest + BETWEEN)));
  const share = (width - BETWEEN * (across - 1)) / across;
  const rows = Array.from({ length: Math.ceil(shown.length / across) }, (_, i) =>
    rowOf(shown.slice(i * across, (i + 1) * across), i * across, share),
  );
  return [...heading(handoutHeading('strips', voice), width), ...rows];
}

function drawnStrip({ handout, voice, width }: Sheet, { gauge, plan }: PracticeStrip): Shown[] {
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
  return [
    {
      drawing,
      lines: [stripText(edge.rows, edge.edgeMm, gauge, voice), ...(asks ? [] : [stripAnswer(pickup.picked)])],
    },
  ];
}

function rowOf(shown: readonly Shown[], first: number, share: number): Strip {
  const step = TYPE.small * LEADING;
  const told = shown.map(({ lines }) => lines.flatMap((line) => wrapped(line, share, TYPE.small, 'regular')));
  const head = Math.max(...told.map(({ length }) => length)) * step;
  return {
    gap: ROOM.paragraph * 2,
    height: head + Math.max(...shown.map(({ drawing }) => drawing.height)),
    draw: (x, y) =>
      shown.flatMap(({ drawing }, i) => {
        const left = x + i * (share + BETWEEN);
        const words = told[i]!.map((line, n) =>
          textAt(line, left, y + n * step + baseOf(TYPE.small, step), { size: TYPE.small }),
        );
        const body = bodyElements(drawing, { idPrefix: `strip-${first + i}-` }).map(inFamily);
        return [...words, placedAt(body, left, y + head)];
      }),
  };
}
