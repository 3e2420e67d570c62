// Runs the tools of node_modules by Node itself: no shell, so that every system takes the same way.
import { spawn, spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The top of the repository. */
export const top = fileURLToPath(new URL('../', import.meta.url));

/** The script that a package's command starts with, e.g. bin('vite') or bin('@playwright/test', 'playwright'). */
export function bin(packageName, command = packageName) {
  const folder = join(top, 'node_modules', packageName);
  const { bin: entry } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  return join(folder, typeof entry === 'string' ? entry : entry[command]);
}

/** Runs a script to its end, with its output where ours goes. Resolves to its exit code. */
export function run(script, args, { env = {}, cwd = top } = {}) {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [script, ...args], {
      cwd,
      env: { ...process.env, ...env },
      stdio: 'inherit',
    });
    child.on('error', reject);
    child.on('close', (code) => resolve(code ?? 1));
  });
}

/** Runs a script to its end as `run` does, but gives what it says to `say`, whole, once it has ended. */
export function runHeld(script, args, { say, env = {} }) {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [script, ...args], {
      cwd: top,
      env: { ...process.env, ...env },
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    const said = [];
    for (const stream of [child.stdout, child.stderr]) stream.on('data', (part) => said.push(part));
    child.on('error', reject);
    child.on('close', (code) => {
      if (said.length > 0) say(Buffer.concat(said).toString('utf8').trimEnd());
      resolve(code ?? 1);
    });
  });
}

/** Runs a script in silence. Gives its exit code and all that it said. */
export function runQuietly(script, args, { env = {} } = {}) {
  const done = spawnSync(process.execPath, [script, ...args], {
    cwd: top,
    env: { ...process.env, ...env },
    encoding: 'utf8',
    maxBuffer: 1 << 28,
  });
  if (done.error) throw done.error;
  return { code: done.status ?? 1, output: done.stdout + done.stderr };
}
