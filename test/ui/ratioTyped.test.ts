import { describe, expect, it } from 'vitest';
import { readRatio } from '../../src/ui/ratioTyped';

describe('a ratio as typed', () => {
  it.each(['3 of 4', '3 of every 4', '3/4', ' 3 : 4 ', '3 in 4', '3 from 4', '3 From Every 4', '3of4'])(
    '%s',
    (typed) => {
      expect(readRatio(typed)).toEqual({ pick: 3, of: 4 });
    },
  );

  it.each(['3', '3 4', 'three of four', '0 of 4', '3 of 0', '-3 of 4', '3.5 of 4', '3 of 4 of 5'])(
    '%s is none',
    (typed) => {
      expect(readRatio(typed)).toBe('unread');
    },
  );

  it('may be left out, and may be more than one from each', () => {
    expect(readRatio(' ')).toBeNull();
    expect(readRatio('4 from 3')).toEqual({ pick: 4, of: 3 });
  });
});
