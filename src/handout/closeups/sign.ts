import { LIGHT, type DrawnElement } from '../../renderer';
import { at, number } from './paint';
import type { SceneLabel, SceneMark, Spot } from './scene';

/** Measures of the signs, mm: the diagram's own at its most. */
const DOT = 0.9;
const RING = 0.62;
const DIAMOND = 1.3;
const STEM = 0.3;
const LINE = 0.25;
const LEADER = 0.18;
/** Paper round a sign, so that it stands clear of the yarn under it. */
const HALO = 0.3;
const STEM_HALO = 0.16;

const TYPE = 2.5;

/** The elements of a sign: its stem first, all on a rim of paper. */
export function drawMark(mark: SceneMark): DrawnElement[] {
  const radius = mark.used ? DOT : DOT * RING;
  const shape = mark.second ? diamond(mark, radius * DIAMOND) : circle(mark, radius);
  if (mark.live)
    return [
      line(mark, mark.tip, LIGHT.picked, STEM),
      path(loopSign(mark), { fill: 'none', stroke: LIGHT.picked, 'stroke-width': number(STEM) }),
    ];
  const rim: DrawnElement[] = [];
  if (mark.used)
    rim.push(line(mark, mark.tip, '#ffffff', STEM + 2 * STEM_HALO), line(mark, mark.tip, LIGHT.picked, STEM));
  return [
    ...rim,
    path(shape, { fill: '#ffffff', stroke: '#ffffff', 'stroke-width': number(2 * HALO) }),
    path(
      shape,
      mark.used ? { fill: LIGHT.picked } : { fill: '#ffffff', stroke: LIGHT.ink, 'stroke-width': number(LINE) },
    ),
  ];
}

/** A word and the line to what it names. */
export function drawLabel({ text, x, y, anchor, from, to }: SceneLabel): DrawnElement[] {
  return [
    line({ x: from, y: y + 0.9 }, to, LIGHT.ink, LEADER),
    {
      name: 'text',
      attributes: {
        x: number(x),
        y: number(y),
        'font-size': number(TYPE),
        'font-style': 'italic',
        'text-anchor': anchor,
        fill: LIGHT.ink,
      },
      children: [],
      text,
    },
  ];
}

function line(from: Spot, to: Spot, stroke: string, width: number): DrawnElement {
  return path(`M${at(from)}L${at(to)}`, {
    fill: 'none',
    stroke,
    'stroke-width': number(width),
    'stroke-linecap': 'butt',
  });
}

function path(d: string, attributes: Record<string, string>): DrawnElement {
  return { name: 'path', attributes: { d, ...attributes }, children: [] };
}

function circle({ x, y }: Spot, radius: number): string {
  const r = number(radius);
  return `M${at({ x: x - radius, y })}A${r},${r} 0 1 0 ${at({ x: x + radius, y })}A${r},${r} 0 1 0 ${at({ x: x - radius, y })}Z`;
}

function diamond({ x, y }: Spot, radius: number): string {
  return `M${at({ x: x - radius, y })}L${at({ x, y: y - radius })}L${at({ x: x + radius, y })}L${at({ x, y: y + radius })}Z`;
}

/** An open loop with its feet on the needle's stitch. */
function loopSign({ x, y }: Spot): string {
  const [half, high] = [1, 2.6];
  return `M${at({ x: x - half, y })}C${at({ x: x - half, y: y - high * 1.33 })} ${at({ x: x + half, y: y - high * 1.33 })} ${at({ x: x + half, y })}`;
}
