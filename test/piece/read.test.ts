import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BOUNDS, DesignError, readDesign, type Problem } from '../../src/piece';
import { problemSentence } from '../../src/text/problems';
import { arbitraryDocument } from './arbitrary';
import { BAD_FILES } from './badFiles';
import { GOOD } from './good';

const TEXT = JSON.stringify(GOOD);

/** The problem a text is refused for, or null when it is taken; any other error is thrown on. */
function problemOf(text: string): Problem | null {
  try {
    readDesign(text);
    return null;
  } catch (error) {
    if (error instanceof DesignError) return error.problem;
    throw error;
  }
}

/** Every way to a value inside `value`, its own not among them. */
function waysInto(value: unknown, way: string[] = []): string[][] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => [[...way, key], ...waysInto(inner, [...way, key])]);
}

function replaced(value: unknown, [key, ...rest]: string[], by: unknown): unknown {
  if (key === undefined) return by;
  const inner = (value as Record<string, unknown>)[key];
  const change = replaced(inner, rest, by);
  if (Array.isArray(value)) return value.map((entry: unknown, i) => (String(i) === key ? change : entry));
  return { ...(value as object), [key]: change };
}

describe('readDesign', () => {
  it('reads the good document, with nothing to tell', () => {
    expect(readDesign(TEXT).notices).toEqual([]);
  });

  it.each(BAD_FILES)('refuses $title', ({ text, kind, at }) => {
    expect(problemOf(text)).toMatchObject({ kind, at });
  });

  it('knows more than 45 ways to be bad', () => {
    expect(BAD_FILES.length).toBeGreaterThan(45);
    expect(new Set(BAD_FILES.map(({ title }) => title)).size).toBe(BAD_FILES.length);
  });

  it('passes over a byte-order mark, and only one at the start', () => {
    expect(readDesign(`\uFEFF${TEXT}`).design).toEqual(readDesign(TEXT).design);
    expect(problemOf(`\uFEFF\uFEFF${TEXT}`)).toMatchObject({ kind: 'not-json', line: 1, column: 1 });
  });

  it('takes 4 MiB of UTF-8 and not a byte more', () => {
    const filled = (bytes: number) => {
      const bare = JSON.stringify({ ...GOOD, note: '😀' });
      return bare.replace('😀', `😀${'x'.repeat(bytes - Buffer.byteLength(bare))}`);
    };
    const limit = 4 * 1024 * 1024;
    expect(Buffer.byteLength(filled(limit))).toBe(limit);
    expect(problemOf(filled(limit))).toBeNull();
    expect(problemOf(filled(limit + 1))).toEqual({ kind: 'too-large', at: '', bytes: limit + 1, limit });
    expect(BOUNDS.fileBytes).toBe(limit);
  });

  it('counts lines however they end', () => {
    expect(problemOf('{\r\n"a": 1,\r"b": 2,\n\n  x}')).toMatchObject({ kind: 'not-json', line: 5, column: 3 });
  });

  it('names the newest version it reads when a file comes from the future', () => {
    const problem = problemOf(JSON.stringify({ format: 'edgewise', version: 7, pieces: 'other by then' }));
    expect(problem).toEqual({ kind: 'future-version', at: 'version', found: 7, newest: 1 });
  });

  it('takes whatever is at the bounds', () => {
    const strip = (width: number, height: number) => [
      { id: 'a', from: [0, 0], path: 'straight' },
      { id: 'b', from: [width, 0], path: 'straight' },
      { id: 'c', from: [width, height], path: 'straight' },
      { id: 'd', from: [0, height], path: 'straight' },
    ];
    const least = { id: 'least', gauge: { stitches: 4, rows: 4 }, outline: strip(1, 1) };
    const most = { id: 'most', gauge: { stitches: 200, rows: 300 }, outline: strip(2000, 5000) };
    // 0.144 * 100 / 3.6 comes out a hair below 4, and 17.1 * 100 / 5.7 a hair above 300.
    const hair = { id: 'hair', gauge: { stitches: 0.144, rows: 0.144, over: 3.6 }, outline: strip(1, 1) };
    const dense = { id: 'dense', gauge: { stitches: 5.7, rows: 17.1, over: 5.7 }, outline: strip(1, 1) };
    const inches = { id: 'inches', gauge: { stitches: 1.016, rows: 1.016, over: 25.4 }, outline: strip(1, 1) };
    const document = { format: 'edgewise', version: 1, pieces: [least, most, inches, hair, dense] };
    expect(problemOf(JSON.stringify(document))).toBeNull();
  });

  it('takes a rate by length on a strip without a gauge, once its length by tape and a band gauge are given', () => {
    const ref = { piece: 'strip', edge: 'side' };
    const border = {
      id: 'border',
      along: [ref],
      measured: [{ ...ref, mm: 300 }],
      rates: [{ ...ref, rate: { kind: 'length' } }],
      band: { gauge: { stitches: 22, rows: 30 } },
    };
    expect(problemOf(JSON.stringify({ ...GOOD, pickups: [border] }))).toBeNull();
  });

  it('reads an outline of 400 edges, and of 2 where one is curved', () => {
    const saw = Array.from({ length: 398 }, (_, i) => ({
      id: `e${i}`,
      from: [398 - i, 50 + (i % 2)],
      path: 'straight',
    }));
    const base = [
      { id: 'foot', from: [0, 0], path: 'straight' },
      { id: 'side', from: [398, 0], path: 'straight' },
    ];
    const lens = [
      { id: 'foot', from: [0, 0], path: 'straight' },
      {
        id: 'bow',
        from: [20, 0],
        path: 'curve',
        handles: [
          [20, 15],
          [0, 15],
        ],
      }, // a half moon
    ];
    const pieces = [
      { id: 'saw', outline: [...base, ...saw] },
      { id: 'lens', outline: lens },
    ];
    expect(problemOf(JSON.stringify({ format: 'edgewise', version: 1, pieces }))).toBeNull();
  });

  it('throws nothing but a DesignError, whose sentence can be said, for any JSON', () => {
    fc.assert(
      fc.property(fc.json(), (text) => {
        const problem = problemOf(text);
        expect(problem).not.toBeNull();
        expect(problemSentence(problem!)).toMatch(/^.+[.?]$/);
      }),
      { numRuns: 300 },
    );
  });

  it('throws nothing but a DesignError for any one value of a document put wrong', () => {
    let refused = 0;
    fc.assert(
      fc.property(arbitraryDocument, fc.nat(), fc.jsonValue({ maxDepth: 2 }), (document, n, value) => {
        const ways = waysInto(document);
        const problem = problemOf(JSON.stringify(replaced(document, ways[n % ways.length]!, value)));
        if (!problem) return;
        refused++;
        expect(problemSentence(problem)).toMatch(/^.+[.?]$/);
      }),
      { numRuns: 400 },
    );
    expect(refused).toBeGreaterThan(100);
  });

  it('says that a document cut anywhere ends early, and where', () => {
    for (let length = 1; length < TEXT.length; length++) {
      const problem = problemOf(TEXT.slice(0, length));
      expect(problem).toMatchObject({
        kind: 'not-json',
        reason: 'ends-early',
        line: 1,
        column: length + 1,
        found: null,
      });
    }
  });
});
