import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { forbidden } from '../../.config/import-table.js';
import { edgesOf, fileCycle, folderCycle, importsOf, readSources, type Sources } from './graph';

const sources = readSources(fileURLToPath(new URL('../../src', import.meta.url)));

const offences = (files: Sources): string[] =>
  edgesOf(files).flatMap(({ from, specifier, kind }) => {
    const message = forbidden(from, specifier, kind);
    return message ? [`src/${from}: ${message}`] : [];
  });

describe('the import graph of src', () => {
  it('is not empty', () => {
    expect(edgesOf(sources).length).toBeGreaterThan(10);
  });

  it('holds to the import table', () => {
    expect(offences(sources)).toEqual([]);
  });

  it('has no cycle of files', () => {
    expect(fileCycle(edgesOf(sources))).toBeNull();
  });

  it('has no cycle of folders', () => {
    expect(folderCycle(edgesOf(sources))).toBeNull();
  });
});

describe('reading the imports of a file', () => {
  it('finds every way to import in a script', () => {
    const text = `
      import a, { type B } from './a';
      import type { C } from './c';
      export { d } from './d';
      export type { E } from './e';
      export * from './f';
      import './g';
      const h = () => import('./h');
      let i: import('./i').I;
      // import './comment';
      const text = "import './text'";`;
    expect(importsOf('x.ts', text)).toEqual([
      { specifier: './a', kind: 'value' },
      { specifier: './c', kind: 'type' },
      { specifier: './d', kind: 'value' },
      { specifier: './e', kind: 'type' },
      { specifier: './f', kind: 'value' },
      { specifier: './g', kind: 'value' },
      { specifier: './h', kind: 'dynamic' },
      { specifier: './i', kind: 'type' },
    ]);
  });

  it('finds them in both scripts and in the markup of a component', () => {
    const text = `
      <script module lang="ts">export { a } from './a'; export type { T } from './t';</script>
      <script lang="ts">import B from './B.svelte'; import type { C } from './c'; let d: import('./d').D;</script>
      {#await import('./e') then e}<B {e} />{/await}`;
    const found = importsOf('X.svelte', text).map(({ specifier, kind }) => `${kind} ${specifier}`);
    expect(found.sort()).toEqual(['dynamic ./e', 'type ./c', 'type ./d', 'type ./t', 'value ./B.svelte', 'value ./a']);
  });
});

describe('an invented graph that is wrong', () => {
  const graph = (files: Record<string, string>): Sources => new Map(Object.entries(files));
  const base = {
    'units/index.ts': "export * from './length';",
    'units/length.ts': 'export type Mm = number; export const mm = 1;',
    'pickup/index.ts': 'export type Plan = number; export const plan = 1;',
  };

  it('passes while nothing is wrong with it', () => {
    const good = graph({
      ...base,
      'text/index.ts': "import type { Plan } from '../pickup'; import { mm } from '../units';",
    });
    expect(offences(good)).toEqual([]);
    expect(fileCycle(edgesOf(good))).toBeNull();
  });

  it.each([
    ['an edge that goes up', { 'units/a.ts': "import type { Plan } from '../pickup';" }, /units may not import pickup/],
    ['a value where only types may go', { 'text/a.ts': "import { plan } from '../pickup';" }, /only types from pickup/],
    ['a type among values', { 'text/a.ts': "import { type Plan } from '../pickup';" }, /only types from pickup/],
    ['a way past the index', { 'geometry/a.ts': "import { mm } from '../units/length';" }, /the index of units/],
    ["a folder's own index", { 'units/a.ts': "import { mm } from './index';" }, /import the file itself/],
    ['a package', { 'units/a.ts': "import { line } from 'd3-shape';" }, /units may not use the package d3-shape/],
    ['a module of Node', { 'ui/a.ts': "import { join } from 'node:path';" }, /ui may not use the package node/],
    ['a scoped package', { 'ui/a.ts': "import '@scope/name/deep';" }, /the package @scope\/name/],
    ['a folder that is not in the table', { 'misc/a.ts': "import { mm } from '../units';" }, /in no folder of the/],
    [
      'a component',
      { 'ui/X.svelte': "<script>import '../storage';</script>", 'storage/index.ts': '' },
      /import storage/,
    ],
    ['an import on demand', { 'ui/a.ts': "await import('../app/main');", 'app/main.ts': '' }, /ui may not import app/],
  ])('is caught: %s', (_, files: Record<string, string>, message) => {
    expect(offences(graph({ ...base, ...files })).join()).toMatch(message);
  });

  it('is caught: a way out of src', () => {
    expect(forbidden('ui/a.ts', '../../test/golden', 'value')).toMatch(/lies outside src/);
  });

  it('is caught: a file that is not there', () => {
    expect(() => edgesOf(graph({ 'units/a.ts': "import './none';" }))).toThrow(/src\/units\/a\.ts imports \.\/none/);
  });

  it('is caught: a cycle of files', () => {
    const cyclic = graph({
      'units/a.ts': "import './b';",
      'units/b.ts': "import './c';",
      'units/c.ts': "import './b';",
    });
    expect(fileCycle(edgesOf(cyclic))).toEqual(['units/b.ts', 'units/c.ts', 'units/b.ts']);
  });

  it('may have a component that nests itself, but no other file that imports itself', () => {
    const nested = graph({ 'ui/Tree.svelte': "<script>import Tree from './Tree.svelte';</script>" });
    expect(fileCycle(edgesOf(nested))).toBeNull();
    expect(fileCycle(edgesOf(graph({ 'units/a.ts': "import './a';" })))).toEqual(['units/a.ts', 'units/a.ts']);
  });

  it('may have files that know each other by type', () => {
    const typed = graph({ 'units/a.ts': "import './b';", 'units/b.ts': "import type { A } from './a';" });
    expect(fileCycle(edgesOf(typed))).toBeNull();
  });

  it('is caught: a cycle of folders, even by types', () => {
    const cyclic = graph({
      'units/index.ts': "import type { Plan } from '../pickup';",
      'pickup/index.ts': "import { mm } from '../units';",
    });
    expect(folderCycle(edgesOf(cyclic))).toEqual(['units', 'pickup', 'units']);
  });
});
