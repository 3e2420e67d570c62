import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readDesign, writeDesign } from '../../src/piece';
import { arbitraryDesign, arbitraryDocument } from './arbitrary';
import { GOOD } from './good';

const RUNS = { numRuns: 150 };

describe('writeDesign', () => {
  it('writes what reads as the same design, whatever it holds', () => {
    fc.assert(
      fc.property(arbitraryDesign, (design) => {
        const text = writeDesign(design);
        const again = readDesign(text).design;
        expect(again).toStrictEqual(design);
        expect(writeDesign(again)).toBe(text);
      }),
      RUNS,
    );
  });

  it('keeps every field of the file, unknown ones too, with its value', () => {
    fc.assert(
      fc.property(arbitraryDocument, (document) => {
        const file = JSON.parse(JSON.stringify(document)) as object;
        const written: unknown = JSON.parse(writeDesign(readDesign(JSON.stringify(document)).design));
        expect(written).toMatchObject(file);
      }),
      RUNS,
    );
  });

  it('writes an edge to a line, and long lists one entry to a line', () => {
    const outline = [
      { id: 'foot', from: [0, 0], path: 'straight' },
      { id: 'side', from: [6, 0], path: 'stepped', steps: [{ stitches: 0, every: 44, times: 2 }] },
      { id: 'head', from: [6, 88], path: 'straight', finish: 'live' },
      { id: 'far', from: [0, 88], path: 'curve', handles: [[-1.5, 60], [0, 20]] },
    ]; // prettier-ignore
    const piece = { id: 'strip', name: 'Strip', gauge: { stitches: 5.25, rows: 7, over: 25.4 }, outline };
    const { design } = readDesign(JSON.stringify({ format: 'edgewise', version: 1, name: 'É "1"', pieces: [piece] }));
    expect(writeDesign(design)).toBe(`{
  "format": "edgewise",
  "version": 1,
  "name": "É \\"1\\"",
  "pieces": [
    {
      "id": "strip",
      "name": "Strip",
      "gauge": { "stitches": 5.25, "rows": 7, "over": 25.4 },
      "outline": [
        { "id": "foot", "from": [0, 0], "path": "straight" },
        {
          "id": "side",
          "from": [6, 0],
          "path": "stepped",
          "steps": [{ "stitches": 0, "every": 44, "times": 2 }]
        },
        { "id": "head", "from": [6, 88], "path": "straight", "finish": "live" },
        { "id": "far", "from": [0, 88], "path": "curve", "handles": [[-1.5, 60], [0, 20]] }
      ],
      "fabric": "stockinette",
      "symmetric": false
    }
  ],
  "units": "cm",
  "terms": "US",
  "hand": "right",
  "pickups": []
}
`);
  });

  it('leaves out what is undefined and keeps the sign of -0', () => {
    const { design } = readDesign(
      JSON.stringify(GOOD).replace('[4,48]', '[4,48.0]').replace('"statedTotal":32', '"x":-0'),
    );
    const text = writeDesign({ ...design, later: undefined } as typeof design);
    expect(text).not.toContain('later');
    expect(text).toContain('"x": -0');
    expect(readDesign(text).design).toStrictEqual(design);
  });
});
