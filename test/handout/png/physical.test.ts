import { decode, encode } from 'fast-png';
import { describe, expect, it } from 'vitest';
import { withDots } from '../../../src/handout';

const PIXELS = Uint8Array.from({ length: 7 * 5 * 4 }, (_, i) => (i * 37) % 256);
const PICTURE = { width: 7, height: 5, data: PIXELS, channels: 4, depth: 8 } as const;
const read = (png: Uint8Array) => decode(png, { checkCrc: true });

describe('a picture that tells its size', () => {
  it.each([
    [300, 11811],
    [150, 5906],
    [36, 1417],
  ])('at %d dots to the inch has %d to the metre, and the same dots', (inch, metre) => {
    const { data, width, height, resolution } = read(withDots(encode(PICTURE), inch));
    expect([width, height, [...data]]).toEqual([7, 5, [...PIXELS]]);
    // The unit 1 is the metre.
    expect(resolution).toEqual({ x: metre, y: metre, unit: 1 });
  });

  it('tells it once, whatever it told before', () => {
    const once = withDots(encode(PICTURE), 300);
    const again = withDots(withDots(encode(PICTURE), 72), 300);
    expect([...again]).toEqual([...once]);
  });
});
