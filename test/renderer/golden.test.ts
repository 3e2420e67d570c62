import { describe, it } from 'vitest';
import type { DesignPlan } from '../../src/pickup';
import { describeDrawing, fileSvg, renderSvg, type DrawOptions } from '../../src/renderer';
import { expectGolden } from '../golden';
import { planSample } from '../samples/sample';
import { around, draw, neckband, planOf, square, steppedFront } from './designs';

/** Drawings to be opened and looked at: a change in any of them is a change that people see. */
const drawings: Record<string, () => string> = {
  'strip-88-rows': () => fileSvg(planSample('strip'), 0),
  'heel-flap': () => fileSvg(planSample('heel-flap'), 0),
  'v-neck': () => svg(planSample('vest'), { scale: 0.4, fabric: 'none' }),
  'round-neck': () => svg(planSample('pullover'), { scale: 0.4, fabric: 'none' }),
  'blanket-all-round': () => svg(planSample('blanket'), { scale: 0.3, fabric: 'none' }),
  'stepped-neck-in-stitches': () =>
    svg(planOf(steppedFront('slipped'), neckband(['neck-left', 'neck-front', 'neck-right'], { stepHoles: true })), {
      scale: 1,
      detail: 'stitches',
    }),
  'edges-in-stitches': () =>
    svg(
      planOf(
        square(12, 16, { top: { finish: 'live' }, left: { selvage: 'garter' }, right: { selvage: 'slipped' } }),
        around({ joined: true }),
      ),
      { scale: 1.5, detail: 'stitches', words: { units: 'in' } },
    ),
  buttonholes: () =>
    svg(
      planOf(
        square(30, 112, { right: {} }),
        around({ target: 82, buttonholes: { holes: 6, stitches: 3, from: 4, to: 4 } }, ['right']),
      ),
      { scale: 0.5, fabric: 'none' },
    ),
  'left-handed': () => {
    const edges = ['neck-left', 'neck-front', 'neck-right'];
    return svg(planOf(steppedFront(), neckband(edges), { hand: 'left' }), { fabric: 'none', scale: 0.8 });
  },
};

function svg(plan: DesignPlan, options: Partial<DrawOptions>): string {
  return renderSvg(draw(plan, options), describeDrawing(plan, 0));
}

describe('drawings stay as they are', () => {
  it.each(Object.keys(drawings))('%s', (name) => {
    expectGolden(`${name}.svg`, drawings[name]!());
  });
});
