import { gzipSync } from 'node:zlib';
import { expect, it } from 'vitest';
import { firstLoad, readBuilt } from './first-load';

/** Bytes of script, compressed, that may come before the page works: a second or two on a slow telephone. */
const budget = 90_000;

it(`starts with less than ${budget / 1000} kB of compressed script`, () => {
  const read = readBuilt(new URL('../../dist/', import.meta.url));
  const sizes = firstLoad(read).map((path) => ({ path, bytes: gzipSync(read(path), { level: 9 }).length }));
  const total = sizes.reduce((sum, { bytes }) => sum + bytes, 0);
  const list = sizes.map(({ path, bytes }) => `${path}: ${bytes}`).join('\n');
  expect(total, list).toBeGreaterThan(0);
  expect(total, list).toBeLessThan(budget);
});
