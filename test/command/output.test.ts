import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { give } from '../../src/command/output';

function pretend(isTTY: boolean) {
  const given: (string | Uint8Array)[] = [];
  return { given, isTTY, write: (content: string | Uint8Array) => given.push(content) };
}

const BYTES = new Uint8Array([0x25, 0x50, 0x44, 0x46]);

it('pours no bytes over a terminal, but says to name a file', () => {
  const terminal = pretend(true);
  expect(() => give(BYTES, null, terminal)).toThrow(/can't be shown on a terminal: add --out/);
  expect(terminal.given).toEqual([]);
});

it('gives text to a terminal, and bytes to whatever else reads them', () => {
  const [terminal, pipe] = [pretend(true), pretend(false)];
  give('a plan', null, terminal);
  give(BYTES, null, pipe);
  expect([terminal.given, pipe.given]).toEqual([['a plan'], [BYTES]]);
});

describe('files that belong together', () => {
  let folder = '';
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'edgewise-output-'));
  });
  afterAll(() => {
    rmSync(folder, { recursive: true });
  });

  const pages = (count: number) => Array.from({ length: count }, (_, i) => new Uint8Array([i + 1]));

  it.each([
    ['handout.png', 1, ['handout-1.png']],
    ['a.b.png', 2, ['a.b-1.png', 'a.b-2.png']],
    ['handout', 2, ['handout-1', 'handout-2']],
  ])('are numbered after the name that is given: %s, %d', (name, count, wanted) => {
    const place = mkdtempSync(join(folder, 'some-'));
    give(pages(count), join(place, name));
    expect(readdirSync(place).sort()).toEqual(wanted);
    expect(wanted.map((one) => readFileSync(join(place, one))[0])).toEqual(wanted.map((_, i) => i + 1));
  });

  it('stand in their order in a list of names, however many', () => {
    const place = mkdtempSync(join(folder, 'many-'));
    give(pages(12), join(place, 'handout.png'));
    const names = readdirSync(place).sort();
    expect([names[0], names[9], names.length]).toEqual(['handout-01.png', 'handout-10.png', 12]);
    expect(names.map((name) => readFileSync(join(place, name))[0])).toEqual(pages(12).map(([n]) => n));
  });

  it('come whole or not at all', () => {
    const place = mkdtempSync(join(folder, 'none-'));
    writeFileSync(join(place, 'handout-1.png'), 'before');
    mkdirSync(join(place, 'handout-2.png'));
    expect(() => give(pages(2), join(place, 'handout.png'))).toThrow(/handout-2\.png can't be written: it is a folder/);
    expect(readdirSync(place).sort()).toEqual(['handout-1.png', 'handout-2.png']);
    expect(readFileSync(join(place, 'handout-1.png'), 'utf8')).toBe('before');
  });
});
