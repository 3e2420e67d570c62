/** Writes the service worker: the page's own script for it, with the list of all built files and their hashes. */
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** Stands in the worker's script where the list goes. */
const PLACE = 'BUILD_OF_EDGEWISE';
const WORKER = 'sw.js';

/** In the folder of the page, but no part of it: the worker itself, the picture of the page, the command. */
const APART = /^(sw\.js|page\.png|command\/.*)$/;

const hashOf = (/** @type {string | Buffer} */ what) => createHash('sha256').update(what).digest('hex').slice(0, 16);

/**
 * All files of a built page, by their paths from its top, and a version that changes with any of them.
 * @param {string} folder
 * @returns {{ version: string, files: Record<string, string> }}
 */
export function listBuild(folder) {
  const paths = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .map((path) => path.replaceAll('\\', '/'))
    .filter((path) => !APART.test(path) && statSync(join(folder, path)).isFile())
    .sort();
  const files = Object.fromEntries(paths.map((path) => [path, hashOf(readFileSync(join(folder, path)))]));
  return { version: hashOf(JSON.stringify([files, readFileSync(join(folder, WORKER), 'utf8')])), files };
}

/**
 * @param {string} worker the script of the service worker
 * @returns {import('vite').Plugin}
 */
export function offline(worker) {
  return {
    name: 'offline',
    apply: 'build',
    buildStart() {
      this.emitFile({ type: 'chunk', id: worker, fileName: WORKER });
    },
    writeBundle({ dir }) {
      if (dir === undefined) return;
      const path = join(dir, WORKER);
      const list = JSON.stringify(listBuild(dir));
      writeFileSync(
        path,
        readFileSync(path, 'utf8').replace(PLACE, () => list),
      );
    },
  };
}
