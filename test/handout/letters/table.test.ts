import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { readFaces, tableSource } from '../../../.scripts/widths.mjs';

it('is what `npm run letters` writes', async () => {
  const path = new URL('../../../src/handout/letters/widths.ts', import.meta.url);
  expect(readFileSync(path, 'utf8')).toBe(tableSource(await readFaces()));
});
