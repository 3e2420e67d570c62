import fc from 'fast-check';
import { svgPathProperties } from 'svg-path-properties';
import { describe, expect, it } from 'vitest';
import { clippedArea, clippedPath, holds, type Frame } from '../../src/handout/clip';
import { croppedTo, pickedFrame } from '../../src/handout/crop';
import { filled, stroked, textAt } from '../../src/handout/elements';
import { drawDiagram, type Drawing } from '../../src/renderer';
import { planSample } from '../samples/sample';
import type { Spot } from './onPage';

/** At how many places of a stroke it is looked. */
const LOOKS = 300;

const FRAME: Frame = { x: 20, y: 30, width: 60, height: 40 };

const inside = ({ x, y, width, height }: Frame, [px, py]: Spot, slack = 0) =>
  px >= x - slack && px <= x + width + slack && py >= y - slack && py <= y + height + slack;

/** The strokes of path data that begins every stroke with M, measured by others. */
const strokes = (d: string) =>
  d
    .split(/(?=M)/)
    .filter((one) => one !== '')
    .map((one) => new svgPathProperties(one));

function spotsOf(stroke: InstanceType<typeof svgPathProperties>, count: number): Spot[] {
  const length = stroke.getTotalLength();
  return Array.from({ length: count }, (_, i): Spot => {
    const { x, y } = stroke.getPointAtLength((length * (i + 0.5)) / count);
    return [x, y];
  });
}

/** How much of a path lies in a frame, mm, by looking at many places of it. */
function lengthInside(d: string, frame: Frame): number {
  return strokes(d).reduce((sum, stroke) => {
    const held = spotsOf(stroke, LOOKS).filter((spot) => inside(frame, spot)).length;
    return sum + (stroke.getTotalLength() * held) / LOOKS;
  }, 0);
}

const total = (d: string) => strokes(d).reduce((sum, stroke) => sum + stroke.getTotalLength(), 0);

const number = fc.double({ min: 0, max: 100, noNaN: true }).map((one) => Math.round(one * 100) / 100);
const spot = fc.tuple(number, number);
const written = ([x, y]: Spot) => `${x},${y}`;

/** Strokes of some size, of lines and curves, open and closed. */
const longStroke = fc
  .tuple(
    spot,
    fc.array(
      fc.oneof(
        spot.map((to) => `L${written(to)}`),
        fc.tuple(spot, spot, spot).map((to) => `C${to.map(written).join(' ')}`),
      ),
      {
        minLength: 1,
        maxLength: 4,
      },
    ),
    fc.boolean(),
  )
  .map(([from, steps, closed]) => `M${written(from)}${steps.join('')}${closed ? 'Z' : ''}`)
  // Small ones are marks, which are kept whole.
  .filter((d) => reachOf(d) > 10);

/** How far the ends of a stroke's lines and curves lie apart at most, from left to right. */
function reachOf(d: string): number {
  const ends = [...d.matchAll(/(-?[\d.]+),-?[\d.]+(?=[LCMZ]|$)/g)].map(([, x]) => Number(x));
  return Math.max(...ends) - Math.min(...ends);
}

/** Corners of a polygon that does not cross itself: by their angles about a middle. */
const polygon = fc
  .tuple(
    spot,
    fc.array(fc.tuple(fc.double({ min: 12, max: 70, noNaN: true }), fc.double({ min: 0.2, max: 1, noNaN: true })), {
      minLength: 3,
      maxLength: 9,
    }),
  )
  .map(([[mx, my], arms]) => {
    const all = arms.reduce((sum, [, share]) => sum + share, 0);
    let turned = 0;
    return arms.map(([arm, share]): Spot => {
      turned += (share / all) * 2 * Math.PI;
      return [mx + arm * Math.cos(turned), my + arm * Math.sin(turned)];
    });
  });

/** Area of a polygon by the coordinates of its corners (shoelace formula; common practice). */
const shoelace = (corners: readonly Spot[]) =>
  Math.abs(
    corners.reduce((sum, [x, y], i) => {
      const [nextX, nextY] = corners[(i + 1) % corners.length]!;
      return sum + x * nextY - nextX * y;
    }, 0),
  ) / 2;

/** Whether a place lies in a polygon: a ray from it crosses the border an odd number of times. */
const within = (corners: readonly Spot[], [px, py]: Spot) =>
  corners.reduce((odd, [x, y], i) => {
    const [nextX, nextY] = corners[(i + 1) % corners.length]!;
    return y > py !== nextY > py && px < x + ((py - y) / (nextY - y)) * (nextX - x) ? !odd : odd;
  }, false);

const cornersOf = (d: string): Spot[] =>
  [...d.matchAll(/[ML](-?[\d.]+),(-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)]);

describe('a line cut at a frame', () => {
  it('is as long as what of it lies in the frame', () => {
    fc.assert(
      fc.property(longStroke, (d) => {
        const cut = clippedPath(d, FRAME);
        const [before, after] = [lengthInside(d, FRAME), total(cut)];
        // Every place where the border is crossed may be missed by half of the way to the next look.
        const crossings = 2 * strokes(cut).length + 1;
        expect(Math.abs(before - after)).toBeLessThan((crossings * total(d)) / LOOKS / 2 + 0.02);
      }),
      { numRuns: 30 },
    );
  });

  it('has nothing outside', () => {
    fc.assert(
      fc.property(fc.array(longStroke, { minLength: 1, maxLength: 3 }), (all) => {
        const cut = clippedPath(all.join(''), FRAME);
        expect(
          strokes(cut)
            .flatMap((one) => spotsOf(one, 20))
            .filter((at) => !inside(FRAME, at, 0.01)),
        ).toEqual([]);
      }),
      { numRuns: 30 },
    );
  });

  it('stays as it is where it lies inside, and is nothing where it lies outside', () => {
    const line = 'M25,35L75,65';
    const curve = 'M25,65C30,35 70,35 75,65Z';
    expect(clippedPath(line + curve, FRAME)).toBe(line + curve);
    expect(clippedArea(curve, FRAME)).toBe(curve);
    expect(clippedPath('M0,0L100,20M90,30V80', FRAME)).toBe('');
    expect(clippedArea('M0,0L100,0L100,20Z', FRAME)).toBe('');
  });

  it.each([
    ['M0,50H100', 'M20,50L80,50'],
    ['M50,0V100', 'M50,30L50,70'],
    ['M0,10L100,90', 'M25,30L75,70'],
    ['M50,50L100,50L100,0', 'M50,50L80,50'],
    ['M10,40H90V60H10Z', 'M20,40L80,40M80,60L20,60'],
    ['M40,20V50H60V20', 'M40,30L40,50L60,50L60,30'],
  ])('%s is %s', (d, cut) => {
    expect(clippedPath(d, FRAME)).toBe(cut);
  });

  it('keeps a small mark whole in the one frame that holds its middle', () => {
    const beside: Frame = { ...FRAME, x: FRAME.x + FRAME.width };
    fc.assert(
      fc.property(
        fc.double({ min: 70, max: 90, noNaN: true }),
        fc.double({ min: 1, max: 4, noNaN: true }),
        (x, half) => {
          const mark = `M${(x - half).toFixed(3)},48L${(x + half).toFixed(3)},52`;
          const kept = [FRAME, beside].map((frame) => clippedPath(mark, frame));
          expect(kept.filter((d) => d !== '')).toHaveLength(1);
          expect(total(kept.join(''))).toBeCloseTo(total(mark), 3);
          expect(kept[x < 80 ? 0 : 1]).not.toBe('');
        },
      ),
    );
  });

  it('lets its left and upper border belong to it, the others to its neighbours', () => {
    expect(holds(FRAME, [20, 30])).toBe(true);
    expect(holds(FRAME, [80, 50])).toBe(false);
    expect(holds(FRAME, [50, 70])).toBe(false);
  });
});

describe('an area cut at a frame', () => {
  it('is as large as what of it lies in the frame', () => {
    fc.assert(
      fc.property(polygon, (corners) => {
        const d = `${corners.map((at, i) => `${i === 0 ? 'M' : 'L'}${written(at)}`).join('')}Z`;
        const cut = clippedArea(d, FRAME);
        const steps = 120;
        let held = 0;
        for (let i = 0; i < steps * steps; i++) {
          const at: Spot = [
            FRAME.x + (FRAME.width * ((i % steps) + 0.5)) / steps,
            FRAME.y + (FRAME.height * (Math.floor(i / steps) + 0.5)) / steps,
          ];
          if (within(corners, at)) held += 1;
        }
        const sampled = (held / (steps * steps)) * FRAME.width * FRAME.height;
        // A part of a polygon that is left in two may be joined along the border, where it has no area.
        expect(Math.abs(shoelace(cornersOf(cut)) - sampled)).toBeLessThan(12);
        expect(cornersOf(cut).filter((at) => !inside(FRAME, at, 0.001))).toEqual([]);
      }),
      { numRuns: 100 },
    );
  });

  it('is the frame itself where it goes all round it', () => {
    expect(shoelace(cornersOf(clippedArea('M0,0H100V100H0Z', FRAME)))).toBeCloseTo(2400, 6);
    expect(clippedArea('M10,20H90V80H10Z', FRAME)).toMatch(/^M.*Z$/);
  });
});

describe('a drawing cut at a frame', () => {
  it('keeps texts whole or leaves them out, and leaves no empty groups', () => {
    const group = (...children: ReturnType<typeof textAt>[]) => ({
      name: 'g' as const,
      attributes: { id: 'a' },
      children,
    });
    const far = textAt('far', 5, 5, { size: 3 });
    const near = textAt('near', 50, 50, { size: 3 });
    expect(croppedTo([group(far), group(near, far)], FRAME)).toEqual([group(near)]);
  });

  it('closes what is filled, and leaves lines open', () => {
    const d = 'M0,40H100V60H0Z';
    const [area, line] = croppedTo([filled(d), stroked(d, 0.3)], FRAME);
    expect(area!.attributes.d).toMatch(/Z$/);
    expect(line!.attributes.d).toBe('M20,40L80,40M80,60L20,60');
    expect(area!.attributes.fill).toBe(filled(d).attributes.fill);
  });

  it('shows all that is picked up, with room round it, and never more than the drawing', () => {
    const plan = planSample('pullover');
    const drawing: Drawing = drawDiagram(plan, {
      pickup: 0,
      detail: 'shape',
      words: { units: 'cm' },
      rulers: false,
      dimensions: false,
      fabric: 'none',
      scale: 0.5,
    });
    const frame = pickedFrame(drawing);
    expect(drawing.points.length).toBeGreaterThan(84);
    expect(drawing.points.filter(({ x, y }) => !inside(frame, [x, y], -2))).toEqual([]);
    expect(inside({ x: 0, y: 0, ...drawing }, [frame.x, frame.y])).toBe(true);
    expect(inside({ x: 0, y: 0, ...drawing }, [frame.x + frame.width, frame.y + frame.height], 1e-9)).toBe(true);
    expect(frame.height).toBeLessThan(drawing.height);
  });
});
