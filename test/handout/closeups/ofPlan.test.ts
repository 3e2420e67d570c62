import { describe, expect, it } from 'vitest';
import { closeUpsOf } from '../../../src/handout';
import { around, neckband, planOf, square, steppedFront } from '../../renderer/designs';
import { SAMPLES, planSample } from '../../samples/sample';

/** Close-ups for one edge of a square, or all round it. */
function ofSquare(edges: Parameters<typeof square>[2], options: Parameters<typeof around>[0], ids?: string[]) {
  return closeUpsOf(planOf(square(12, 16, edges), around(options, ids)).pickups[0]!);
}

describe('the close-ups of a plan', () => {
  it('follow the finish of a level edge', () => {
    expect(ofSquare({ top: { finish: 'bound-off' } }, {}, ['top'])).toEqual(['bound-off']);
    expect(ofSquare({ top: { finish: 'live' } }, {}, ['top'])).toEqual(['live']);
    expect(ofSquare({ bottom: { finish: 'provisional' } }, {}, ['bottom'])).toEqual(['provisional']);
  });

  it('follow how far in the needle goes', () => {
    const kinds = ([1, 0.5, 0] as const).map((inset) => ofSquare({}, { inset }, ['right']));
    expect(kinds).toEqual([['selvage'], ['selvage-half'], ['selvage-strand']]);
    const garter = { right: { selvage: 'garter' } };
    expect(ofSquare(garter, { garterAt: 'inside' }, ['right'])).toEqual(['garter-between']);
    expect(ofSquare(garter, { garterAt: 'bump' }, ['right'])).toEqual(['garter-bump']);
  });

  it('show second places where they are used', () => {
    const slipped = { right: { selvage: 'slipped' } };
    expect(ofSquare(slipped, { target: 7 }, ['right'])).toEqual(['chain']);
    expect(ofSquare(slipped, { target: 14 }, ['right'])).toEqual(['chain', 'chain-gap']);
  });

  it('show the foot of a step as the knitter chose to work it', () => {
    const neck = (stepHoles: boolean) =>
      closeUpsOf(planOf(steppedFront(), neckband(['neck-left'], { stepHoles })).pickups[0]!);
    expect(neck(false)).toEqual(['bound-off', 'selvage', 'slope', 'step']);
    expect(neck(true)).toEqual(['bound-off', 'selvage', 'slope', 'step-hole']);
  });

  it('are those of the edges of each sample, each once', () => {
    const found = Object.fromEntries(
      SAMPLES.map((name) => [name, planSample(name).pickups.map((pickup) => closeUpsOf(pickup))]),
    );
    expect(found).toEqual({
      blanket: [['bound-off', 'garter-bump', 'cast-on']],
      'cardigan-front': [['selvage']],
      'heel-flap': [['chain'], ['chain']],
      pullover: [['selvage', 'bound-off', 'slope', 'step', 'live']],
      strip: [['selvage']],
      vest: [
        ['selvage', 'slope', 'bound-off', 'step'],
        ['bound-off', 'selvage', 'slope', 'step'],
        ['bound-off', 'selvage', 'slope', 'step'],
      ],
    });
  });
});
