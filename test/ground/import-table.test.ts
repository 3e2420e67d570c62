import { Linter } from 'eslint';
import { describe, expect, it } from 'vitest';
import { rule, table } from '../../.config/import-table.js';
import { findCycle } from './graph';

/** What the lint rule says of one file, a sentence per report. */
function lint(filename: string, text: string): string[] {
  const linter = new Linter({ cwd: '/somewhere' });
  const config = { plugins: { edgewise: { rules: { table: rule } } }, rules: { 'edgewise/table': 'error' } } as const;
  return linter.verify(text, config, { filename: `/somewhere/${filename}` }).map(({ message }) => message);
}

describe('the import table', () => {
  it('has no cycle, types included', () => {
    const pairs = Object.entries(table).flatMap(([from, { folders, types }]) =>
      [...folders, ...types].map((to) => [from, to] as const),
    );
    expect(findCycle(pairs)).toBeNull();
  });

  it('names only folders that it has, and none twice', () => {
    for (const { folders, types } of Object.values(table)) {
      const named = [...folders, ...types];
      expect(Object.keys(table)).toEqual(expect.arrayContaining(named));
      expect(new Set(named).size).toBe(named.length);
    }
  });

  it('lets nobody import the two entries', () => {
    const named = new Set(Object.values(table).flatMap(({ folders, types }) => [...folders, ...types]));
    expect(named).not.toContain('app');
    expect(named).not.toContain('command');
  });
});

describe('the lint rule', () => {
  it('reports a forbidden import, and says why', () => {
    expect(lint('src/units/a.js', "import { plan } from '../pickup';")).toEqual([
      expect.stringMatching(/units may not import pickup\. The layout shows/),
    ]);
  });

  it.each(["export { a } from '../ui';", "export * from '../ui';", "const a = import('../ui');"])('sees %s', (text) => {
    expect(lint('src/units/a.js', text)).toHaveLength(1);
  });

  it('is silent about what the table allows, and outside src', () => {
    expect(lint('src/geometry/a.js', "import { mm } from '../units'; import './b';")).toEqual([]);
    expect(lint('test/units/a.js', "import { plan } from '../../src/pickup';")).toEqual([]);
  });
});
