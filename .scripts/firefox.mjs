// Finds a Firefox for its tests; installs Debian's when there is none.
import { join } from 'node:path';
import { askedFor, installByApt, pathsOf, programFolders, works } from './browsers.mjs';

function candidates() {
  if (process.platform === 'darwin') return ['/Applications/Firefox.app/Contents/MacOS/firefox'];
  if (process.platform === 'win32') {
    return programFolders().map((folder) => join(folder, 'Mozilla Firefox', 'firefox.exe'));
  }
  return pathsOf(['firefox', 'firefox-esr']);
}

/**
 * The path of a Firefox that runs: the one of FIREFOX_PATH, the system's, or Debian's firefox-esr installed now.
 * @throws Error that says how to get one
 */
export function firefox({ say = console.log } = {}) {
  const found = askedFor('FIREFOX_PATH', 'Firefox') ?? candidates().find(works);
  if (found) return found;
  installByApt('firefox-esr', { say });
  const installed = candidates().find(works);
  if (installed) return installed;
  throw new Error('There is no Firefox for its tests: install one, or set FIREFOX_PATH to one that is there.');
}
