// Installs what package-lock.json asks for, when something of it is missing.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { runQuietly, top } from './run.mjs';

const read = (path) => {
  try {
    return JSON.parse(readFileSync(join(top, path), 'utf8'));
  } catch (error) {
    if (error.code === 'ENOENT') return null;
    throw error;
  }
};

/** True when node_modules holds every package that the lock file demands, in the locked version. */
export function isInstalled(locked, installed) {
  if (!installed) return false;
  return Object.entries(locked.packages).every(
    ([path, { version, optional, extraneous }]) =>
      path === '' || optional || extraneous || installed.packages[path]?.version === version,
  );
}

/** @throws Error with npm's own words when the installation fails */
export function installWhatIsMissing({ say = console.log } = {}) {
  if (isInstalled(read('package-lock.json'), read('node_modules/.package-lock.json'))) return;
  const npm = process.env.npm_execpath;
  if (!npm) throw new Error('Packages are missing, and npm is not at hand: run "npm ci" first.');
  say('Installing packages ...');
  const { code, output } = runQuietly(npm, ['ci', '--include=dev', '--no-audit', '--no-fund']);
  if (code !== 0) throw new Error(`npm could not install the packages:\n${output}`);
}
