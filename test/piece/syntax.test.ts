import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findSyntaxSlip } from '../../src/piece/syntax';

function isJson(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

describe('findSyntaxSlip', () => {
  it('agrees with the engine on what is JSON', () => {
    const pieces = ['{', '}', '[', ']', ',', ':', '"a"', '"', '\\', '\\u00e9', '\\u0', '1', '-', '0', '.5', 'e+3', 'true', 'nul', ' ', '\n', '\u0001']; // prettier-ignore
    const text = fc.array(fc.constantFrom(...pieces), { maxLength: 9 }).map((parts) => parts.join(''));
    fc.assert(
      fc.property(fc.oneof(text, fc.json(), fc.string()), (candidate) => {
        expect(findSyntaxSlip(candidate) === null).toBe(isJson(candidate));
      }),
      { numRuns: 4000 },
    );
  });

  it('agrees on JSON with one character changed, and finds the slip no later than it can be', () => {
    fc.assert(
      fc.property(
        fc.json(),
        fc.nat(),
        fc.constantFrom('{', '}', '[', ']', ',', ':', '"', '1', 'x', '\\', ' ', '/'),
        (json, n, c) => {
          const at = n % json.length;
          const text = json.slice(0, at) + c + json.slice(at + 1);
          const slip = findSyntaxSlip(text);
          expect(slip === null).toBe(isJson(text));
          // What stands before it is the beginning of some JSON.
          if (slip)
            expect([undefined, 'empty', 'ends-early']).toContain(findSyntaxSlip(text.slice(0, slip.offset))?.reason);
        },
      ),
      { numRuns: 1500 },
    );
  });

  it.each([
    ['', 0, 'empty'],
    ['  ', 2, 'empty'],
    ['[1, 2', 5, 'ends-early'],
    ['{"a": "b', 8, 'ends-early'],
    ['[tru', 4, 'ends-early'],
    ['-', 1, 'ends-early'],
    ['[1.', 3, 'ends-early'],
    ['[1.5e+', 6, 'ends-early'],
    ['["a\\', 4, 'ends-early'],
    ['["a\\u00', 7, 'ends-early'],
    ['[1, ]', 2, 'trailing-comma'],
    ['{"a": 1,}', 7, 'trailing-comma'],
    ['[,]', 1, 'other'],
    ['[1 2]', 3, 'other'],
    ['{"a" 1}', 5, 'other'],
    ['[1}', 2, 'other'],
    ['// x', 0, 'comment'],
    ['{a: 1}', 1, 'quotes'],
    ["['a']", 1, 'quotes'],
    ['[“a”]', 1, 'quotes'],
    ['[+1]', 1, 'number'],
    ['[.5]', 1, 'number'],
    ['[01]', 2, 'number'],
    ['[1.]', 2, 'number'],
    ['[1e]', 2, 'number'],
    ['["\t"]', 2, 'text'],
    ['["\\x"]', 2, 'text'],
    ['[truer]', 5, 'other'],
    ['[NaN]', 1, 'other'],
  ])('finds in %j at %i: %s', (text, offset, reason) => {
    expect(findSyntaxSlip(text)).toEqual({ offset, reason });
  });

  it('reads a text of millions of characters and any depth', () => {
    expect(findSyntaxSlip(`["${'x\\n'.repeat(1_000_000)}"]`)).toBeNull();
    expect(findSyntaxSlip('['.repeat(1_000_000))).toEqual({ offset: 1_000_000, reason: 'ends-early' });
  });
});
