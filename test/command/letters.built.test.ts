import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { FACE_FILES, FACES } from '../../src/handout';

const read = (path: string): Buffer => readFileSync(new URL(`../../${path}`, import.meta.url));

it.each(FACES)('the letters of PDF documents lie beside the command: %s', (face) => {
  const file = FACE_FILES[face];
  expect(read(`dist/command/letters/${file}`).equals(read(`node_modules/dejavu-fonts-ttf/ttf/${file}`))).toBe(true);
});

it('with their licence', () => {
  expect(read('dist/command/letters/LICENSE').toString()).toContain('Bitstream Vera');
});
