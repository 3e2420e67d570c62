import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { svelteTesting } from '@testing-library/svelte/vite';
import { minify } from 'terser';
import { runnerImport, type Plugin } from 'vite';
import { defineConfig, type ViteUserConfig } from 'vitest/config';
import { offline } from './.config/offline.js';
import type * as Reader from './src/piece/read';

const at = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

/** Tests that mount components in a pretended browser; all others run in plain Node. */
const componentTests = ['test/ui/**/*.test.ts', 'test/app/**/*.test.ts', 'test/**/*.svelte.test.ts'];

/** Tests of what the build left in dist/: they need a build, and run after it. */
const builtTests = ['test/**/*.built.test.ts'];

/** Tests of the built page in Firefox: they need its address, and a Firefox. */
const firefoxTests = ['test/firefox/**/*.test.ts'];

const FIRST_SAMPLE = 'virtual:first-sample';

/** Gives the page its first sample as a whole design, so that the first visit need not fetch and read a file. */
const firstSample: Plugin = {
  name: 'first-sample',
  resolveId: (id) => (id === FIRST_SAMPLE ? `\0${FIRST_SAMPLE}` : null),
  async load(id) {
    if (id !== `\0${FIRST_SAMPLE}`) return null;
    const file = at('./static/samples/pullover.edgewise.json');
    this.addWatchFile(file);
    const { module } = await runnerImport<typeof Reader>(at('./src/piece/read.ts'));
    const { design } = module.readDesign(readFileSync(file, 'utf8'));
    return `export default ${JSON.stringify(design)};`;
  },
};

const TICK_FORMATS = 'd3-format';

/**
 * The scales bring in formats for their ticks, which nothing here asks for: the strings on rulers are written by text/.
 * Left out, they save 2 kB of the first load. One that is called all the same says so.
 */
const noTickFormats: Plugin = {
  name: 'no-tick-formats',
  apply: 'build',
  enforce: 'pre',
  resolveId: (id) => (id === TICK_FORMATS ? `\0${TICK_FORMATS}` : null),
  load(id) {
    if (id !== `\0${TICK_FORMATS}`) return null;
    const names = ['format', 'formatPrefix', 'formatSpecifier', 'precisionFixed', 'precisionPrefix', 'precisionRound'];
    return `const none = () => { throw new Error('Tick formats are not in this build.'); };\n${names.map((name) => `export const ${name} = none;`).join('\n')}`;
  },
};

/** What the writer of PDF documents could draw HTML, pictures and SVG files with: nothing here asks for it. */
const PICTURES = ['html2canvas', 'dompurify', 'canvg', 'fast-png'];
const NO_PICTURES = '\0no-pictures';

/** Leaves all that out, and takes the same writer for the page and for the command. */
const plainPdf: Plugin = {
  name: 'plain-pdf',
  apply: 'build',
  enforce: 'pre',
  resolveId(id) {
    if (id === 'jspdf') return this.resolve('jspdf/dist/jspdf.es.min.js');
    return PICTURES.includes(id) ? NO_PICTURES : null;
  },
  load(id) {
    if (id !== NO_PICTURES) return null;
    const none = "() => { throw new Error('Pictures in PDF documents are not in this build.'); }";
    return `export default ${none};\nexport const decode = ${none};`;
  },
};

/** Puts the letters of PDF documents and their licence beside the command, which reads them from there. */
const lettersBeside: Plugin = {
  name: 'letters-beside',
  apply: (_, { mode }) => mode === 'command',
  generateBundle() {
    for (const name of ['DejaVuSerif.ttf', 'DejaVuSerif-Bold.ttf', 'DejaVuSerif-Italic.ttf', 'LICENSE']) {
      const path = `./node_modules/dejavu-fonts-ttf/${name === 'LICENSE' ? '' : 'ttf/'}${name}`;
      this.emitFile({ type: 'asset', fileName: `letters/${name}`, source: readFileSync(at(path)) });
    }
  },
};

/** Puts what draws pictures beside the command, with a word on its licence, which wants to be told with it. */
const painterBeside: Plugin = {
  name: 'painter-beside',
  apply: (_, { mode }) => mode === 'command',
  generateBundle() {
    const name = '@resvg/resvg-wasm';
    const about = JSON.parse(readFileSync(at(`./node_modules/${name}/package.json`), 'utf8')) as Record<string, string>;
    const notice = `resvg.wasm is the file index_bg.wasm of ${name} ${about.version}, unchanged.
Its licence is the Mozilla Public License 2.0: https://www.mozilla.org/MPL/2.0/
Its source is at https://github.com/yisibl/resvg-js (tag v${about.version}) and, for what it draws with,
https://github.com/RazrFalcon/resvg.
`;
    const source = readFileSync(at(`./node_modules/${name}/index_bg.wasm`));
    this.emitFile({ type: 'asset', fileName: 'pictures/resvg.wasm', source });
    this.emitFile({ type: 'asset', fileName: 'pictures/LICENSE', source: notice });
  },
};

/** Goes over what the bundler has made small once more, which saves another 2 kB of the first load. */
const smaller: Plugin = {
  name: 'smaller',
  apply: (_, { mode }) => mode === 'production',
  enforce: 'post',
  async generateBundle(_, bundle) {
    for (const chunk of Object.values(bundle)) {
      if (chunk.type !== 'chunk') continue;
      const { code } = await minify(chunk.code, { module: true, ecma: 2020, compress: { passes: 1 } });
      if (code === undefined) throw new Error(`${chunk.fileName} came out empty.`);
      chunk.code = code;
    }
  },
};

const shared: ViteUserConfig = {
  base: './',
  plugins: [
    svelte({ configFile: at('./svelte.config.js') }),
    firstSample,
    noTickFormats,
    plainPdf,
    lettersBeside,
    painterBeside,
    smaller,
  ],
};

const page: ViteUserConfig = {
  root: at('./src'),
  publicDir: at('./static'),
  plugins: [...(shared.plugins ?? []), offline(at('./src/app/offline/worker.ts'))],
  build: {
    outDir: at('./dist'),
    emptyOutDir: true,
    reportCompressedSize: false,
    // A browser that can't preload fetches what it needs a little later, which costs less than a script for all.
    modulePreload: { polyfill: false },
    rolldownOptions: {
      // All that the first load needs in one file: it is smaller than in many. The service worker is a file of its own.
      output: {
        codeSplitting: {
          groups: [
            { name: 'first', tags: ['$initial'], test: (id) => !/\/src\/app\/offline\/(worker|serve)\.ts/.test(id) },
          ],
        },
      },
      treeshake: {
        // Modules of the lower folders only define things, so a barrel brings in no more than what is used of it.
        moduleSideEffects: [
          {
            test: /\/src\/(units|geometry|piece|shaping|pickup|text|renderer|handout|editor|storage|ui)\/[^?]*\.ts$/,
            sideEffects: false,
          },
        ],
      },
    },
  },
};

/** `vite build --mode command`: the command as one file that needs no node_modules to run. */
const command: ViteUserConfig = {
  root: at('./src'),
  publicDir: false,
  ssr: { noExternal: true },
  build: {
    ssr: at('./src/command/main.ts'),
    outDir: at('./dist/command'),
    emptyOutDir: true,
    target: 'node20',
    rolldownOptions: {
      output: { entryFileNames: 'edgewise.js', codeSplitting: false, banner: '#!/usr/bin/env node' },
    },
  },
};

const tests: ViteUserConfig = {
  root: at('./'),
  publicDir: at('./static'),
  test: {
    root: at('./'),
    maxWorkers: 2,
    // Property tests may be slow on a busy machine; a test that waits for ever is still caught.
    testTimeout: 30_000,
    allowOnly: false,
    projects: [
      {
        extends: true,
        test: {
          name: 'node',
          environment: 'node',
          setupFiles: [at('./test/setup.ts')],
          isolate: false,
          include: ['test/**/*.test.ts'],
          exclude: [...componentTests, ...builtTests, ...firefoxTests, 'test/browser/**'],
          benchmark: { include: ['test/bench/**/*.bench.ts'] },
        },
      },
      {
        extends: true,
        plugins: [svelteTesting()],
        test: {
          name: 'components',
          environment: 'happy-dom',
          isolate: false,
          include: componentTests,
          exclude: [...builtTests, 'test/browser/**'],
          setupFiles: ['@testing-library/jest-dom/vitest', at('./test/setup.ts')],
          benchmark: { include: [] },
        },
      },
      {
        extends: true,
        test: {
          name: 'firefox',
          environment: 'node',
          include: firefoxTests,
          testTimeout: 120_000,
          hookTimeout: 180_000,
          benchmark: { include: [] },
        },
      },
      {
        extends: true,
        test: { name: 'built', environment: 'node', include: builtTests, benchmark: { include: [] } },
      },
    ],
  },
};

export default defineConfig(({ mode }) => ({
  ...shared,
  ...(mode === 'command' ? command : mode === 'test' || mode === 'benchmark' ? tests : page),
}));
