import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { get } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { fileFor, serve } from '../../.scripts/serve.mjs';

let top: string;
let folder: string;
beforeAll(() => {
  top = mkdtempSync(join(tmpdir(), 'edgewise-serve-'));
  folder = join(top, 'page');
  mkdirSync(join(folder, 'deep'), { recursive: true });
  writeFileSync(join(folder, 'index.html'), '<p>page</p>');
  writeFileSync(join(folder, 'deep', 'a b.js'), 'let a;');
  writeFileSync(join(top, 'secret.txt'), 'secret');
  mkdirSync(join(top, 'page-2'));
  writeFileSync(join(top, 'page-2', 'secret.txt'), 'secret');
});
afterAll(() => {
  rmSync(top, { recursive: true });
});

describe('fileFor', () => {
  it('finds files, and the index of a folder', () => {
    expect(fileFor(folder, '/')).toBe(join(folder, 'index.html'));
    expect(fileFor(folder, '/deep/a%20b.js')).toBe(join(folder, 'deep', 'a b.js'));
  });

  it.each([
    '/../secret.txt',
    '/%2e%2e/secret.txt',
    '/..%2fsecret.txt',
    '/../page-2/secret.txt',
    '/deep',
    '/deep/',
    '/none.js',
    '/%',
    '/index.html%00',
  ])('finds nothing for %s', (path) => {
    expect(fileFor(folder, path)).toBeNull();
  });
});

describe('serve', () => {
  /** Asks with the path as it is written: fetch would tidy it. */
  const ask = (url: string, path: string): Promise<{ status: number | undefined; type: string | undefined }> =>
    new Promise((resolve, reject) => {
      const { hostname, port } = new URL(url);
      get({ hostname, port, path }, (response) => {
        response.resume();
        resolve({ status: response.statusCode, type: response.headers['content-type'] });
      }).on('error', reject);
    });

  it('answers with the file, its type, and a plain 404', async () => {
    const { server, url } = await serve(folder, { port: 0 });
    try {
      expect(await (await fetch(url)).text()).toBe('<p>page</p>');
      expect(await ask(url, '/deep/a%20b.js?v=1')).toEqual({ status: 200, type: 'text/javascript; charset=utf-8' });
      expect((await ask(url, '/../secret.txt')).status).toBe(404);
      expect((await fetch(url, { method: 'POST' })).status).toBe(405);
      expect((await fetch(url, { method: 'HEAD' })).headers.get('content-length')).toBe('11');
    } finally {
      server.close();
    }
  });

  it('goes to the next port when one is taken', async () => {
    const first = await serve(folder, { port: 0 });
    const taken = Number(new URL(first.url).port);
    const second = await serve(folder, { port: taken });
    try {
      expect(Number(new URL(second.url).port)).toBeGreaterThan(taken);
    } finally {
      first.server.close();
      second.server.close();
    }
  });
});
