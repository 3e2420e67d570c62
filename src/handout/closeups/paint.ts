import { LIGHT, type DrawnElement } from '../../renderer';
import type { Spot } from './scene';
import type { Run } from './stack';
import type { Piece, Place, Strand, StrandKind } from './strand';
import { NEW_YARN, YARN } from './view';

/** Widths of lines and bodies in mm. */
export const INK = 0.25;
const HALO = 0.3;

/** Strokes reach this much into their neighbours, so that no seam shows where a strand is cut. */
const LAP = 0.07;

const PAPER = '#ffffff';

/** The elements that draw a layer: yarn as a wide stroke under a narrower one, the needle as a shape and two lines. */
export function paint(layer: readonly Run[], strands: readonly Strand[]): DrawnElement[] {
  const of = (kind: StrandKind) => layer.filter(({ strand }) => strands[strand]!.kind === kind);
  return [
    ...strokes(of('fabric'), LIGHT.ink, YARN, PAPER, YARN - 2 * INK),
    ...strokes(of('new'), PAPER, NEW_YARN + 2 * HALO, LIGHT.picked, NEW_YARN),
    ...of('needle').flatMap((run) => paintNeedle(run, strands[run.strand]!)),
  ];
}

function strokes(runs: readonly Run[], below: string, wide: number, above: string, narrow: number): DrawnElement[] {
  if (runs.length === 0) return [];
  const d = (more: number) => runs.map(({ pieces }) => centre(pieces, more)).join('');
  return [stroke(d(LAP), below, wide), stroke(d(2 * LAP), above, narrow)];
}

function stroke(d: string, colour: string, width: number): DrawnElement {
  return {
    name: 'path',
    attributes: { d, fill: 'none', stroke: colour, 'stroke-width': number(width), 'stroke-linecap': 'butt' },
    children: [],
  };
}

/** Path data of a run's centre-line, a little longer at both ends. */
function centre(pieces: readonly Piece[], more: number): string {
  const [first, last] = [pieces[0]!, pieces.at(-1)!];
  const start = hundredths(beyond(first.from, first.c1, more));
  const end = hundredths(beyond(last.to, last.c2, more));
  let pen = start;
  const to = (place: { readonly x: number; readonly y: number }, from = pen) => {
    const { x, y } = hundredths(place);
    return `${number(x - from.x)},${number(y - from.y)}`;
  };
  const line = (place: { readonly x: number; readonly y: number }) => {
    const step = `l${to(place)}`;
    pen = hundredths(place);
    return step;
  };
  const curves = () =>
    pieces.map(({ c1, c2, to: next }) => {
      const step = `c${to(c1)} ${to(c2)} ${to(next)}`;
      pen = hundredths(next);
      return step;
    });
  return `M${at(start)}${line(first.from)}${curves().join('')}${line(end)}`;
}

/** What the pen has drawn so far is rounded, so that steps from there do not add up their errors. */
function hundredths({ x, y }: { readonly x: number; readonly y: number }): { x: number; y: number } {
  return { x: Math.round(x * 100) / 100, y: Math.round(y * 100) / 100 };
}

/** The point `more` mm on from `p`, away from `q`. */
function beyond(p: Place, q: Place, more: number): Pick<Place, 'x' | 'y'> {
  const length = Math.hypot(p.x - q.x, p.y - q.y) || 1;
  return { x: p.x + ((p.x - q.x) / length) * more, y: p.y + ((p.y - q.y) / length) * more };
}

function paintNeedle({ pieces }: Run, { places, widths }: Strand): DrawnElement[] {
  const first = pieces[0]!.index;
  const last = pieces.at(-1)!.index + 1;
  const tip = last === places.length - 1;
  const side = (sign: number, lap: number): Spot[] => {
    const spots: Spot[] = [];
    for (let i = first; i <= last; i++) {
      const [p, a, b] = [places[i]!, places[Math.max(0, i - 1)]!, places[Math.min(places.length - 1, i + 1)]!];
      const length = Math.hypot(b.x - a.x, b.y - a.y);
      const [dx, dy] = [(b.x - a.x) / length, (b.y - a.y) / length];
      const half = (sign * Math.max(0, widths[i]! - INK)) / 2;
      const on = i === first ? -lap : i === last && !tip ? lap : 0;
      spots.push({ x: p.x - dy * half + dx * on, y: p.y + dx * half + dy * on });
    }
    return spots;
  };
  const line = (spots: readonly Spot[]) => spots.map((spot, i) => `${i === 0 ? 'M' : 'L'}${at(spot)}`).join('');
  const body = line([...side(1, 2 * LAP), ...side(-1, 2 * LAP).reverse()]);
  const [left, right] = [side(1, 2 * LAP), side(-1, 2 * LAP).reverse()];
  return [
    { name: 'path', attributes: { d: `${body}Z`, fill: PAPER }, children: [] },
    stroke(tip ? line([...left, ...right]) : line(left) + line(right), LIGHT.ink, INK),
  ];
}

export function at({ x, y }: { readonly x: number; readonly y: number }): string {
  return `${number(x)},${number(y)}`;
}

/** Hundredths of a mm are finer than any press. */
export function number(value: number): string {
  const rounded = Math.round(value * 100) / 100;
  return String(rounded === 0 ? 0 : rounded);
}
