import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';

const dist = fileURLToPath(new URL('../../dist/', import.meta.url));
const worker = readFileSync(`${dist}sw.js`, 'utf8');

it('the service worker is one script that asks for no other', () => {
  expect(worker).not.toMatch(/\bimport\b|BUILD_OF_EDGEWISE/);
});

it('names every file that the page may ask for, with a hash of what is in it', () => {
  const [, list] = /"files":(\{[^}]*\})/.exec(worker)!;
  const files = JSON.parse(list!) as Record<string, string>;
  const apart = ['sw.js', 'page.png'];
  const there = readdirSync(dist, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map(({ name, parentPath }) => `${parentPath}/${name}`.slice(dist.length).replace(/^\//, ''))
    .filter((path) => !apart.includes(path) && !path.startsWith('command/'));
  expect(Object.keys(files).sort()).toEqual(there.sort());
  expect(there).toEqual(expect.arrayContaining(['index.html', 'manifest.webmanifest', 'icon.svg']));
  for (const [path, hash] of Object.entries(files)) {
    const sum = createHash('sha256')
      .update(readFileSync(dist + path))
      .digest('hex');
    expect(sum.startsWith(hash), path).toBe(true);
  }
});
