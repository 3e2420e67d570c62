import { describe, expect, it } from 'vitest';
import { around, dataOf, draw, marksOf, planOf, square, startsOf, strokesIn, textsOf } from './designs';

const band = (edge: string, fields = {}) =>
  planOf(square(30, 112), around({ buttonholes: { holes: 5, stitches: 3, from: 4, to: 4 }, ...fields }, [edge]));

describe('buttonholes on a drawing', () => {
  it('are a slot each in one path, and none where there are none', () => {
    const drawing = draw(band('right'));
    expect(marksOf(drawing).filter((mark) => mark.kind === 'path' && mark.role === 'buttonhole')).toMatchObject([
      { count: 5 },
    ]);
    expect(strokesIn(dataOf(drawing, 'buttonhole'))).toBe(5);
    expect(dataOf(draw(planOf(square(30, 112), around({}, ['right']))), 'buttonhole')).toBe('');
  });

  it.each([
    ['right', 1],
    ['left', -1],
  ])('lie outside the fabric on the %s edge, in working order', (edge, side) => {
    const drawing = draw(band(edge));
    const place = drawing.places[0]!;
    const edgeX = side > 0 ? place.box.x + place.box.width : place.box.x;
    const starts = startsOf(dataOf(drawing, 'buttonhole'));
    expect(starts).toHaveLength(5);
    for (const [x] of starts) expect((x - edgeX) * side).toBeGreaterThan(1);
    // Up the right edge, down the left one: y falls as the work goes up.
    const ys = starts.map(([, y]) => y * side);
    expect(ys).toEqual([...ys].sort((a, b) => b - a));
  });

  it('stand in one line, the arrow of the start beyond one that lies beside it', () => {
    const near = draw(band('right', { buttonholes: { holes: 5, stitches: 3, from: 1, to: 1 } }));
    const far = draw(band('right', { buttonholes: { holes: 5, stitches: 3, from: 20, to: 1 } }));
    const lines = startsOf(dataOf(near, 'buttonhole')).map(([x]) => x);
    for (const x of lines) expect(x).toBeCloseTo(lines[0]!, 2);
    const outmost = (d: string) => Math.max(...[...d.matchAll(/(-?[\d.]+),/g)].map(([, x]) => Number(x)));
    // The line goes out of the edge to its second spot, where the shaft begins.
    const shaft = (d: string) => Number(d.split(/[ML]/)[2]!.split(',')[0]);
    expect(shaft(dataOf(near, 'arrow'))).toBeGreaterThan(lines[0]! + 0.9 + 0.6);
    expect(shaft(dataOf(far, 'arrow'))).toBeLessThan(shaft(dataOf(near, 'arrow')));
    expect(outmost(dataOf(far, 'arrow'))).toBeLessThan(outmost(dataOf(near, 'arrow')));
  });

  it('mirror each other about the middle of the edge', () => {
    const drawing = draw(band('right'));
    const place = drawing.places[0]!;
    const middle = place.box.y + place.box.height / 2;
    const numbers = dataOf(drawing, 'buttonhole')
      .split('M')
      .filter((one) => one !== '');
    const middles = numbers.map((d) => {
      const [first, second] = [...d.matchAll(/(-?[\d.]+),(-?[\d.]+)/g)].map(([, , y]) => Number(y));
      return (first! + second!) / 2;
    });
    // Points lie on whole rows, so a hole may lie a row beside its mirror image.
    const row = (place.box.height / 112) * 1.01;
    expect(Math.abs(middles[2]! - middle)).toBeLessThan(row);
    expect(Math.abs((middles[0]! + middles[4]!) / 2 - middle)).toBeLessThan(row);
  });

  it('keep labels off, and let the ends have their numbers', () => {
    expect(textsOf(draw(band('right')), 'end-number')).toEqual(['1', '80']);
  });
});
