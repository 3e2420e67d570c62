// Finds a Chromium for the browser tests; installs one when there is none.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { bin, run, top } from './run.mjs';

const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome'];

function candidates() {
  const { env, platform } = process;
  if (platform === 'darwin') {
    return ['Chromium', 'Google Chrome'].map((name) => `/Applications/${name}.app/Contents/MacOS/${name}`);
  }
  if (platform === 'win32') {
    return [env.PROGRAMFILES, env['PROGRAMFILES(X86)'], env.LOCALAPPDATA]
      .filter(Boolean)
      .map((folder) => join(folder, 'Google', 'Chrome', 'Application', 'chrome.exe'));
  }
  const folders = ['/usr/bin', '/usr/local/bin', ...(env.PATH ?? '').split(delimiter)].filter(Boolean);
  return names.flatMap((name) => folders.map((folder) => join(folder, name)));
}

/** Some systems have a stand-in that only says how to install it. On Windows, asking would open a window. */
const works = (path) =>
  existsSync(path) &&
  (process.platform === 'win32' || spawnSync(path, ['--version'], { timeout: 20_000 }).status === 0);

async function ofPlaywright() {
  const { chromium } = await import(pathToFileURL(join(top, 'node_modules', '@playwright', 'test', 'index.mjs')).href);
  return chromium.executablePath();
}

const find = async () => [...candidates(), await ofPlaywright()].find(works);

/**
 * The path of a Chromium that runs: the one of CHROMIUM_PATH, the system's, Playwright's, or one installed now.
 * @throws Error that says how to get one
 */
export async function chromium({ say = console.log } = {}) {
  const asked = process.env.CHROMIUM_PATH;
  if (asked) {
    if (works(asked)) return asked;
    throw new Error(`CHROMIUM_PATH is ${asked}, which does not run: set it to a Chromium that does, or unset it.`);
  }
  const found = await find();
  if (found) return found;

  if (process.getuid?.() === 0 && spawnSync('apt-get', ['--version']).status === 0) {
    say("Installing the system's Chromium ...");
    const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
    for (const args of [
      ['update', '-q'],
      ['install', '-y', '-q', '--no-install-recommends', 'chromium'],
    ]) {
      const { status } = spawnSync('apt-get', args, { env, stdio: 'inherit' });
      if (status !== 0) say(`apt-get ${args[0]} failed.`);
    }
    const installed = await find();
    if (installed) return installed;
  }

  say('Installing the Chromium of Playwright ...');
  await run(bin('@playwright/test', 'playwright'), ['install', 'chromium']);
  const downloaded = await find();
  if (downloaded) return downloaded;
  throw new Error(
    'There is no Chromium for the browser tests: install one, or set CHROMIUM_PATH to one that is there.',
  );
}
