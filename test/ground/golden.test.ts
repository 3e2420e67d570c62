import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { expectGolden, firstDifference } from '../golden';

describe('firstDifference', () => {
  it('is null for equal texts', () => {
    expect(firstDifference('a\nb\n', 'a\nb\n')).toBeNull();
  });

  it('names the first line that differs, and both sides of it', () => {
    expect(firstDifference('a\nb\nc', 'a\nx\ny')).toBe('line 2:\n  golden: "b"\n  now:    "x"');
  });

  it('sees a text that stops early, and one that goes on', () => {
    expect(firstDifference('a\nb', 'a')).toContain('line 2:\n  golden: "b"\n  now:    the end of the text');
    expect(firstDifference('a', 'a\n')).toContain('line 2:\n  golden: the end of the text\n  now:    ""');
  });
});

describe('expectGolden', () => {
  let folder: string;
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'edgewise-golden-'));
    vi.stubEnv('UPDATE_GOLDEN', '');
  });
  afterEach(() => {
    vi.unstubAllEnvs();
    rmSync(folder, { recursive: true });
  });

  it('accepts an equal text, whatever the line ends on disk', () => {
    writeFileSync(join(folder, 'a.txt'), 'one\r\ntwo\r\n');
    expect(() => expectGolden('a.txt', 'one\ntwo\n', folder)).not.toThrow();
  });

  it('names the file and the line of a difference', () => {
    writeFileSync(join(folder, 'a.txt'), 'one\ntwo\n');
    expect(() => expectGolden('a.txt', 'one\n2\n', folder)).toThrow(/test\/golden\/a\.txt differs at line 2/);
  });

  it('refuses a missing file, and leaves none behind', () => {
    expect(() => expectGolden('none.txt', 'x', folder)).toThrow(/none\.txt is missing: run "npm run golden"/);
    expect(() => readFileSync(join(folder, 'none.txt'))).toThrow();
  });

  it('writes the file when asked to', () => {
    vi.stubEnv('UPDATE_GOLDEN', '1');
    expectGolden('deep/a.txt', 'one\n', folder);
    expect(readFileSync(join(folder, 'deep', 'a.txt'), 'utf8')).toBe('one\n');
  });
});
