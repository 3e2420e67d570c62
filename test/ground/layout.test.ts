import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { table } from '../../.config/import-table.js';

const top = fileURLToPath(new URL('../../', import.meta.url));
const longest = 320;

const mayStandAtTheTop = [
  /^\./,
  /^(package|package-lock)\.json$/,
  /^tsconfig(\.[a-z]+)?\.json$/,
  /^(svelte\.config\.js|vite\.config\.ts)$/,
  /^(README\.md|DEVELOPERS\.md|LICENSE)$/,
  /^(src|test|static)$/,
  // Made by npm and by the build; never stored.
  /^(node_modules|dist)$/,
];

const strangers = (names: readonly string[]): string[] =>
  names.filter((name) => !mayStandAtTheTop.some((pattern) => pattern.test(name)));

const countLines = (text: string): number => text.split('\n').length - (text.endsWith('\n') ? 1 : 0);

/** The scripts, components and style sheets in `folder` that have more lines than a file may. */
const tooLong = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((path) => /\.(ts|js|svelte|css)$/.test(path))
    .map((path) => ({ path, lines: countLines(readFileSync(join(folder, path), 'utf8')) }))
    .filter(({ lines }) => lines > longest)
    .map(({ path, lines }) => `${path}: ${lines} lines`);

describe('the layout', () => {
  it('keeps the top level to what belongs there', () => {
    expect(strangers(readdirSync(top))).toEqual([]);
  });

  it('would see a stranger', () => {
    expect(strangers(['src', 'notes.txt', 'eslint.config.js', 'tsconfig.pure.json'])).toEqual([
      'notes.txt',
      'eslint.config.js',
    ]);
  });

  it(`has no file in src of more than ${longest} lines`, () => {
    expect(tooLong(join(top, 'src'))).toEqual([]);
  });

  it('would see a file that is too long', () => {
    const folder = mkdtempSync(join(tmpdir(), 'edgewise-layout-'));
    try {
      writeFileSync(join(folder, 'fits.ts'), 'x\n'.repeat(longest));
      writeFileSync(join(folder, 'long.ts'), 'x\n'.repeat(longest + 1));
      expect(tooLong(folder)).toEqual([`long.ts: ${longest + 1} lines`]);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });

  it('has only the folders of the import table in src, each with an index for the others', () => {
    const folders = readdirSync(join(top, 'src'), { withFileTypes: true })
      .filter((entry) => entry.isDirectory())
      .map(({ name }) => name);
    expect(Object.keys(table)).toEqual(expect.arrayContaining(folders));
    const imported = folders.filter((name) => name !== 'app' && name !== 'command');
    expect(imported.filter((name) => !existsSync(join(top, 'src', name, 'index.ts')))).toEqual([]);
  });
});

describe('the lock file', () => {
  it('names no place to fetch from, so that it installs anywhere', () => {
    const lock = JSON.parse(readFileSync(join(top, 'package-lock.json'), 'utf8')) as {
      packages: Record<string, { resolved?: string }>;
    };
    const resolved = Object.values(lock.packages).flatMap(({ resolved }) => (resolved ? [resolved] : []));
    expect(resolved).toEqual([]);
  });

  it('pins what package.json asks for', () => {
    const { dependencies, devDependencies } = JSON.parse(readFileSync(join(top, 'package.json'), 'utf8')) as {
      dependencies: Record<string, string>;
      devDependencies: Record<string, string>;
    };
    const loose = Object.entries({ ...dependencies, ...devDependencies }).filter(([, v]) => !/^\d+\.\d+\.\d+$/.test(v));
    expect(loose).toEqual([]);
  });
});
