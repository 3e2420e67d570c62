import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { builtinModules } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { importsOf } from './graph';

const folder = fileURLToPath(new URL('../../dist/command', import.meta.url));
const command = join(folder, 'edgewise.js');

it('is one file, with its letters and what draws pictures beside it', () => {
  expect(readdirSync(folder).sort()).toEqual(['edgewise.js', 'letters', 'pictures']);
});

it("imports nothing but Node's own modules", () => {
  const names = importsOf('edgewise.js', readFileSync(command, 'utf8')).map(({ specifier }) => specifier);
  expect(names.filter((name) => !builtinModules.includes(name.replace(/^node:/, '')))).toEqual([]);
});

it('runs from a folder that has no packages', () => {
  const elsewhere = mkdtempSync(join(tmpdir(), 'edgewise-command-'));
  try {
    // The ending makes it a module where no package.json says so.
    const copy = join(elsewhere, 'edgewise.mjs');
    copyFileSync(command, copy);
    const { status, stderr } = spawnSync(process.execPath, [copy, '--no-such-word'], { encoding: 'utf8' });
    expect(stderr).not.toMatch(/Cannot find|SyntaxError|ReferenceError/);
    expect(status).toBe(2);
  } finally {
    rmSync(elsewhere, { recursive: true });
  }
});
