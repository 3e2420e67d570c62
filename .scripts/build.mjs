// Builds the page to dist/ and the command to dist/command/edgewise.js.
import { existsSync, mkdirSync, readdirSync, renameSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { installWhatIsMissing } from './install.mjs';
import { bin, runQuietly, top } from './run.mjs';

const dist = join(top, 'dist');
export const command = join(dist, 'command', 'edgewise.js');
const sources = ['src', 'static', 'vite.config.ts', 'svelte.config.js', 'package-lock.json', '.config/offline.js'];

/** The time, in ms, of the newest file or folder in `path`. */
function newest(path) {
  const info = statSync(path, { throwIfNoEntry: false });
  if (!info) return 0;
  if (!info.isDirectory()) return info.mtimeMs;
  return readdirSync(path).reduce((latest, name) => Math.max(latest, newest(join(path, name))), info.mtimeMs);
}

/** True when dist/ is there and no source is newer. */
export function isBuilt() {
  const made = [command, join(dist, 'index.html')].map((path) => statSync(path, { throwIfNoEntry: false })?.mtimeMs);
  if (made.includes(undefined)) return false;
  return sources.every((source) => newest(join(top, source)) <= Math.min(...made));
}

/**
 * Builds beside dist/ and then puts the whole in its place, so that nobody meets half a build.
 * @throws Error with the builder's own words when something does not build
 */
export function build({ say = console.log } = {}) {
  const fresh = join(top, '.cache', `build-${process.pid}`);
  const old = join(top, '.cache', `old-${process.pid}`);
  const vite = bin('vite');
  try {
    for (const args of [
      ['--outDir', fresh],
      ['--mode', 'command', '--outDir', join(fresh, 'command')],
    ]) {
      const { code, output } = runQuietly(vite, ['build', '--config', join(top, 'vite.config.ts'), ...args]);
      if (code !== 0) throw new Error(`The build failed:\n${output}`);
      say(output.trimEnd().replaceAll(`.cache/build-${process.pid}/`, 'dist/'));
    }
    mkdirSync(join(top, '.cache'), { recursive: true });
    if (existsSync(dist)) renameSync(dist, old);
    renameSync(fresh, dist);
  } finally {
    rmSync(fresh, { recursive: true, force: true });
    rmSync(old, { recursive: true, force: true });
  }
}

export function buildWhenOld(options) {
  if (!isBuilt()) build(options);
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  try {
    installWhatIsMissing();
    build();
  } catch (error) {
    console.error(error.message);
    process.exit(1);
  }
}
