// What finding a Chromium and finding a Firefox have in common.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';

/**
 * The places on Windows where programs are installed.
 * @param {{ env: NodeJS.ProcessEnv }} machine
 */
export const programFolders = ({ env } = process) =>
  [env.PROGRAMFILES, env['PROGRAMFILES(X86)'], env.LOCALAPPDATA].filter(Boolean);

/**
 * The paths that such names may have where Linux keeps its programs, name by name.
 * @param {readonly string[]} names
 * @param {{ env: NodeJS.ProcessEnv }} machine
 * @returns {string[]}
 */
export function pathsOf(names, { env } = process) {
  const folders = ['/usr/bin', '/usr/local/bin', ...(env.PATH ?? '').split(delimiter)].filter(Boolean);
  return names.flatMap((name) => folders.map((folder) => join(folder, name)));
}

/** Some systems have a stand-in that only says how to install it. On Windows, asking would open a window. */
export const works = (path) =>
  existsSync(path) &&
  (process.platform === 'win32' || spawnSync(path, ['--version'], { timeout: 60_000 }).status === 0);

/**
 * The path in the variable `name`, or undefined when it is not set.
 * @param {string} name
 * @param {string} what
 * @param {{ env: NodeJS.ProcessEnv }} machine
 * @throws Error that says how to mend it, when nothing that runs is there
 */
export function askedFor(name, what, { env } = process) {
  const path = env[name];
  if (!path || works(path)) return path || undefined;
  throw new Error(`${name} is ${path}, which does not run: set it to a ${what} that does, or unset it.`);
}

/** Installs one of Debian's packages, if we may: as root, where there is apt-get. */
export function installByApt(packageName, { say }) {
  if (process.getuid?.() !== 0 || spawnSync('apt-get', ['--version']).status !== 0) return;
  say(`Installing the system's ${packageName} ...`);
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  for (const args of [
    ['update', '-q'],
    ['install', '-y', '-q', '--no-install-recommends', packageName],
  ]) {
    const { status } = spawnSync('apt-get', args, { env, stdio: 'inherit' });
    if (status !== 0) say(`apt-get ${args[0]} failed.`);
  }
}
