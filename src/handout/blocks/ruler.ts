import { digits, type DrawnElement } from '../../renderer';
import { RULER_WORDS } from '../../text';
import { stroked, textAt } from '../elements';
import { paragraph, type Strip } from '../strip';
import { LINE, ROOM, TYPE } from '../type';
import type { Sheet } from '../work';

const BARS = [
  { word: RULER_WORDS.mm, length: 100, step: 5, large: 10 },
  { word: RULER_WORDS.inch, length: 101.6, step: 6.35, large: 25.4 },
] as const;
const HEIGHT = 6;

/** Two bars by which the print is checked: 100 mm in parts of 5, 4 inches in quarters. */
export function rulerBlock({ width }: Sheet): Strip[] {
  const bars = BARS.map((bar, i): Strip => ({
    gap: i === 0 ? ROOM.block : 1,
    height: HEIGHT,
    withNext: true,
    draw: (x, y) => drawBar(bar, x, y),
  }));
  return [...bars, ...paragraph(RULER_WORDS.check, width, { size: TYPE.small, gap: 1 })];
}

function drawBar({ word, length, step, large }: (typeof BARS)[number], x: number, y: number): DrawnElement[] {
  const base = y + HEIGHT - 1;
  const ticks = Array.from({ length: Math.round(length / step) + 1 }, (_, i) => {
    const at = i * step;
    const isLarge = Math.abs(at / large - Math.round(at / large)) < 1e-6;
    return `M${digits(x + at)},${digits(base)}v${isLarge ? -3.2 : -1.8}`;
  });
  return [
    stroked(`M${digits(x)},${digits(base)}h${digits(length)}`, LINE.bar),
    stroked(ticks.join(''), LINE.rule),
    textAt(word, x + length + 2.5, base, { size: TYPE.small }),
  ];
}
