import { bench, describe } from 'vitest';
import { writePdf } from '../../src/handout/pdf/writePdf';
import { allFaces } from '../handout/letters/fonts';
import { a4, path, text } from '../handout/pdf/elements';

const fonts = allFaces();
const write = async (page: ReturnType<typeof a4>): Promise<void> => {
  await writePdf([page], { title: '', language: 'en', fonts });
};

const dots = Array.from({ length: 10_000 }, (_, i) => {
  const [x, y] = [(i % 100) * 2, Math.floor(i / 100) * 2];
  return `M${x},${y}a0.5,0.5 0 1 0 1,0a0.5,0.5 0 1 0 -1,0z`;
}).join('');
const lines = Array.from({ length: 60 }, (_, i) => text('Pick up 2 of 3, then ½ – 4×5 → 108', 20, 20 + 4 * i));

describe('a PDF document', () => {
  bench('a page with 10,000 dots in one path', () => write(a4(path(dots))), { iterations: 3 });
  bench('a page with 60 lines of text', () => write(a4(...lines)), { iterations: 3 });
});
