import { expect, it } from 'vitest';
import { firstLoad } from './first-load';

const files: Record<string, string> = {
  'index.html': `<link rel="icon" href="./icon.svg"><link rel="modulepreload" crossorigin href="./assets/b.js">
    <script type="module" crossorigin src="./assets/a.js"></script><script>let inline;</script>`,
  'assets/a.js':
    'import{x}from"./b.js";export*from"./c.js";const later=()=>import("./later.js");"import \'./text.js\'"',
  'assets/b.js': 'import"../d.js"',
  'assets/c.js': 'import "./a.js"',
  'd.js': '',
};

it('follows scripts, preloads and outright imports, and leaves out what is loaded on demand', () => {
  const read = (path: string): string => {
    const text = files[path];
    if (text === undefined) throw new Error(`${path} is not there`);
    return text;
  };
  expect(firstLoad(read).sort()).toEqual(['assets/a.js', 'assets/b.js', 'assets/c.js', 'd.js']);
});
