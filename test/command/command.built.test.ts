import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { planDesign } from '../../src/pickup';
import { readDesign } from '../../src/piece';
import { fileSvg } from '../../src/renderer';
import { planDocument } from '../../src/text';
import { edgewise } from './runner';

const PULLOVER = fileURLToPath(new URL('../../static/samples/pullover.edgewise.json', import.meta.url));
const STRIP = fileURLToPath(new URL('../../static/samples/strip.edgewise.json', import.meta.url));

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'edgewise-'));
});
afterAll(() => {
  rmSync(folder, { recursive: true });
});

describe('what the command gives', () => {
  test('help goes to standard output', () => {
    const { status, out, err } = edgewise(['--help']);
    expect([status, err]).toEqual([0, '']);
    expect(out).toContain('edgewise measure FILE');
  });

  test('measure has a line for each edge', () => {
    const { design } = readDesign(readFileSync(PULLOVER, 'utf8'));
    const { status, out } = edgewise(['measure', PULLOVER, '--as', 'json']);
    expect(status).toBe(0);
    const document = JSON.parse(out) as { edges: unknown[] };
    expect(document.edges).toHaveLength(design.pieces.flatMap((piece) => piece.outline).length);
  });

  test('plan as json is the plan document in full', () => {
    const { design } = readDesign(readFileSync(STRIP, 'utf8'));
    const { status, out } = edgewise(['plan', STRIP, '--as', 'json']);
    expect(status).toBe(0);
    expect(JSON.parse(out)).toEqual(JSON.parse(JSON.stringify(planDocument(planDesign(design)))));
  });

  test('plan as csv has a line for each opening and one above', () => {
    const { out } = edgewise(['plan', STRIP, '--as', 'csv']);
    expect(out.trimEnd().split(/\r?\n/u)).toHaveLength(88 + 1);
  });

  test('plan as svg is the drawing that the page saves', () => {
    const { design } = readDesign(readFileSync(PULLOVER, 'utf8'));
    expect(edgewise(['plan', PULLOVER, '--as', 'svg']).out).toBe(fileSvg(planDesign(design), 0));
  });

  test('a file from standard input, with a byte-order mark', () => {
    const { status, out } = edgewise(['plan', '-'], `\uFEFF${readFileSync(STRIP, 'utf8')}`);
    expect(status).toBe(0);
    expect(out).toContain('71 stitches');
  });

  test('unknown fields are told on standard error, the plan still comes', () => {
    const document = JSON.parse(readFileSync(STRIP, 'utf8')) as Record<string, unknown>;
    const { status, out, err } = edgewise(['plan', '-'], JSON.stringify({ ...document, yarn: 'wool' }));
    expect(status).toBe(0);
    expect(out).toContain('71 stitches');
    expect(err).toContain('yarn');
    expect(err.trimEnd()).not.toContain('\n');
  });

  test('--out writes a whole file and leaves nothing beside it', () => {
    const file = join(folder, 'strip.svg');
    const { status, out } = edgewise(['plan', STRIP, '--as', 'svg', '--out', file]);
    expect([status, out]).toEqual([0, '']);
    expect(readFileSync(file, 'utf8')).toBe(edgewise(['plan', STRIP, '--as', 'svg']).out);
    expect(readdirSync(folder)).toEqual(['strip.svg']);
  });
});

describe('exit status', () => {
  const stated = (count: number): string => {
    const document = JSON.parse(readFileSync(PULLOVER, 'utf8')) as { pickups: Record<string, unknown>[] };
    const [first] = document.pickups;
    return JSON.stringify({ ...document, pickups: [{ ...first, statedTotal: count }] });
  };

  test('check is 0 where the stated count lies flat and 1 where it does not', () => {
    expect(edgewise(['check', '-'], stated(84)).status).toBe(0);
    const tight = edgewise(['check', '-'], stated(60));
    expect(tight.status).toBe(1);
    expect(tight.out).toContain('will pucker');
  });

  test.each([
    ['words', ['knit', STRIP], ''],
    ['a missing file', ['plan', 'nowhere.edgewise.json'], ''],
    ['a folder', ['plan', '.'], ''],
    ['no JSON', ['plan', '-'], 'knit one, purl one'],
    ['an empty file', ['check', '-'], ''],
    ['an unknown pick-up', ['plan', STRIP, '--pickup', 'collar'], ''],
    ['a place that is not there', ['plan', STRIP, '--out', '/nowhere/at/all.txt'], ''],
  ] as const)('%s: 2, one line, nothing on standard output', (_, words, input) => {
    const { status, out, err } = edgewise(words, input);
    expect([status, out]).toEqual([2, '']);
    expect(err).toMatch(/^edgewise: [^\n]+\n$/u);
    expect(err).not.toContain('    at ');
  });

  test('bytes that are not UTF-8 are refused', () => {
    const { status, out, err } = edgewise(['plan', '-'], new Uint8Array([0x7b, 0xff, 0x7d]));
    expect([status, out]).toEqual([2, '']);
    expect(err).toContain('UTF-8');
  });

  test('a refused file leaves what stood at --out', () => {
    const file = join(folder, 'kept.json');
    writeFileSync(file, 'kept');
    expect(edgewise(['plan', '-', '--as', 'json', '--out', file], '{').status).toBe(2);
    expect(readFileSync(file, 'utf8')).toBe('kept');
  });

  test('a first row that cannot be worked is told with the mend', () => {
    const document = JSON.parse(readFileSync(STRIP, 'utf8')) as { pickups: Record<string, unknown>[] };
    const [first] = document.pickups;
    const { status, out, err } = edgewise(
      ['plan', '-'],
      JSON.stringify({ ...document, pickups: [{ ...first, target: 500 }] }),
    );
    expect([status, out]).toEqual([2, '']);
    expect(err).toMatch(/more increases than stitches/u);
  });
});
