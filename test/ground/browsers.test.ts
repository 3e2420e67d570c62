import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { askedFor, pathsOf, works } from '../../.scripts/browsers.mjs';

let folder: string;
let broken: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'edgewise-browsers-'));
  broken = join(folder, 'firefox');
  writeFileSync(broken, 'no program', { mode: 0o644 });
});
afterAll(() => rmSync(folder, { recursive: true }));

describe('askedFor', () => {
  it('gives the path of a browser that runs, and nothing where none was asked for', () => {
    expect(askedFor('FIREFOX_PATH', 'Firefox', { env: { FIREFOX_PATH: process.execPath } })).toBe(process.execPath);
    expect(askedFor('FIREFOX_PATH', 'Firefox', { env: {} })).toBeUndefined();
    expect(askedFor('FIREFOX_PATH', 'Firefox', { env: { FIREFOX_PATH: '' } })).toBeUndefined();
  });

  it('refuses one that does not run in a sentence that says how to mend it', () => {
    const path = join(folder, 'nowhere');
    expect(() => askedFor('FIREFOX_PATH', 'Firefox', { env: { FIREFOX_PATH: path } })).toThrow(
      `FIREFOX_PATH is ${path}, which does not run: set it to a Firefox that does, or unset it.`,
    );
  });
});

describe('works', () => {
  it('holds of a program that tells its version, not of one that is missing', () => {
    expect(works(process.execPath)).toBe(true);
    expect(works(join(folder, 'nowhere'))).toBe(false);
  });

  it('does not hold of a file that can not be run, where asking it opens no window', () => {
    expect(works(broken)).toBe(process.platform === 'win32');
  });
});

describe('pathsOf', () => {
  it('looks for the first name everywhere before it looks for the second', () => {
    const env = { PATH: ['/a', '/b'].join(delimiter) };
    const paths = pathsOf(['firefox', 'firefox-esr'], { env }).map((path) => path.replaceAll('\\', '/'));
    expect(paths).toEqual(
      ['firefox', 'firefox-esr'].flatMap((name) =>
        ['/usr/bin', '/usr/local/bin', '/a', '/b'].map((at) => `${at}/${name}`),
      ),
    );
  });
});
