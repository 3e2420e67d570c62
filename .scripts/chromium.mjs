// Finds a Chromium for the browser tests; installs one when there is none.
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { askedFor, installByApt, pathsOf, programFolders, works } from './browsers.mjs';
import { bin, run, top } from './run.mjs';

const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome'];

function candidates() {
  if (process.platform === 'darwin') {
    return ['Chromium', 'Google Chrome'].map((name) => `/Applications/${name}.app/Contents/MacOS/${name}`);
  }
  if (process.platform === 'win32') {
    return programFolders().map((folder) => join(folder, 'Google', 'Chrome', 'Application', 'chrome.exe'));
  }
  return pathsOf(names);
}

async function ofPlaywright() {
  const { chromium } = await import(pathToFileURL(join(top, 'node_modules', '@playwright', 'test', 'index.mjs')).href);
  return chromium.executablePath();
}

const find = async () => [...candidates(), await ofPlaywright()].find(works);

/** Debian's package of the same browser without its windows, which has much less to do for each page. */
const shell = 'chromium-headless-shell';

/**
 * The path of a Chromium that runs: the one of CHROMIUM_PATH, the system's, Playwright's, or one installed now.
 * @throws Error that says how to get one
 */
export async function chromium({ say = console.log } = {}) {
  const found = askedFor('CHROMIUM_PATH', 'Chromium') ?? (await find());
  if (found) return found;
  installByApt('chromium', { say });
  const installed = await find();
  if (installed) return installed;

  say('Installing the Chromium of Playwright ...');
  await run(bin('@playwright/test', 'playwright'), ['install', 'chromium']);
  const downloaded = await find();
  if (downloaded) return downloaded;
  throw new Error(
    'There is no Chromium for the browser tests: install one, or set CHROMIUM_PATH to one that is there.',
  );
}

/**
 * As `chromium`, for work that opens no window: one without windows is taken where the system has it, and installed
 * where there is no Chromium yet.
 * @throws Error that says how to get one
 */
export async function headless({ say = console.log } = {}) {
  const windowless = () => (process.platform === 'linux' ? pathsOf([shell]).find(works) : undefined);
  if (process.env.CHROMIUM_PATH) return chromium({ say });
  const found = windowless() ?? (await find());
  if (found) return found;
  installByApt(shell, { say });
  return windowless() ?? chromium({ say });
}
