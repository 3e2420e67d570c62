// npm test: everything, one stage after the other, whatever fails on the way.
// npm test -- --only units,browser [FILTER ...]: only these stages, and in them only the files that match.
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { build, buildWhenOld } from './build.mjs';
import { chromium } from './chromium.mjs';
import { countPlaywright, countVitest, settle } from './count.mjs';
import { firefox } from './firefox.mjs';
import { installWhatIsMissing } from './install.mjs';
import { bin, run, top } from './run.mjs';
import { serve } from './serve.mjs';

const cache = join(top, '.cache');

const tool = async (script, args) =>
  (await run(script, args)) === 0 ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 };

/** Runs a test runner that writes its report to .cache/NAME.json, and counts the tests in it. */
async function counted(name, count, script, args, env = {}) {
  const path = join(cache, `${name}.json`);
  rmSync(path, { force: true });
  const code = await run(script, args(path), { env });
  let report;
  try {
    report = JSON.parse(readFileSync(path, 'utf8'));
  } catch (error) {
    console.error(`The tests left no report: ${error.message}`);
    return { passed: 0, failed: 1 };
  }
  return settle(count(report), code);
}

const vitest = (name, projects, filters, env) =>
  counted(
    name,
    countVitest,
    bin('vitest'),
    (path) => [
      'run',
      ...projects.flatMap((project) => ['--project', project]),
      '--reporter=default',
      '--reporter=json',
      `--outputFile.json=${path}`,
      ...filters,
    ],
    env,
  );

/** Does something with the address of the built page. */
async function served(work) {
  buildWhenOld();
  const { server, url } = await serve(join(top, 'dist'), { port: 0 });
  try {
    return await work(url);
  } finally {
    server.closeAllConnections();
    server.close();
  }
}

const inChromium = (filters) =>
  served(async (url) =>
    counted(
      'browser',
      countPlaywright,
      bin('@playwright/test', 'playwright'),
      () => ['test', '--config', 'test/browser/playwright.config.ts', ...filters],
      { CHROMIUM_PATH: await chromium(), EDGEWISE_URL: url, EDGEWISE_REPORT: join(cache, 'browser.json') },
    ),
  );

const inFirefox = (filters) =>
  served((url) => vitest('firefox', ['firefox'], filters, { FIREFOX_PATH: firefox(), EDGEWISE_URL: url }));

/** [name for --only, heading, what to do]. Each resolves to { passed, failed }. */
const stages = [
  ['format', 'Format', () => tool(bin('prettier'), ['--check', '--log-level', 'warn', '.'])],
  ['lint', 'Lint', () => tool(bin('eslint'), ['--config', '.config/eslint.config.js', '--max-warnings', '0', '.'])],
  ['types', 'Types without the DOM', () => tool(bin('typescript', 'tsc'), ['-p', 'tsconfig.pure.json'])],
  ['types', 'Types of the command', () => tool(bin('typescript', 'tsc'), ['-p', 'tsconfig.command.json'])],
  [
    'types',
    'Types of all',
    () => tool(bin('svelte-check'), ['--tsconfig', './tsconfig.json', '--fail-on-warnings', '--output', 'human']),
  ],
  ['units', 'Unit and component tests', (filters) => vitest('units', ['node', 'components'], filters)],
  [
    'build',
    'Build',
    () => {
      build();
      return { passed: 1, failed: 0 };
    },
  ],
  [
    'built',
    'Tests of what was built',
    (filters) => {
      buildWhenOld();
      return vitest('built', ['built'], filters);
    },
  ],
  ['browser', 'Browser tests', inChromium],
  ['firefox', 'Tests in Firefox', inFirefox],
];

function readWords(words) {
  const at = words.indexOf('--only');
  if (at < 0) return { only: null, filters: words };
  const only = (words[at + 1] ?? '').split(',').filter(Boolean);
  const names = [...new Set(stages.map(([name]) => name))];
  const unknown = only.filter((name) => !names.includes(name));
  if (only.length === 0 || unknown.length > 0) throw new Error(`--only takes one or more of: ${names.join(',')}`);
  return { only, filters: words.toSpliced(at, 2) };
}

const seconds = (ms) => `${(ms / 1000).toFixed(1)} s`;

const results = [];
try {
  const { only, filters } = readWords(process.argv.slice(2));
  installWhatIsMissing();
  mkdirSync(cache, { recursive: true });
  for (const [name, heading, work] of stages) {
    if (only && !only.includes(name)) continue;
    console.log(`\n=== ${heading} ===`);
    const start = performance.now();
    let outcome;
    try {
      outcome = await work(filters);
    } catch (error) {
      console.error(error.message);
      outcome = { passed: 0, failed: 1 };
    }
    results.push({ heading, time: performance.now() - start, ...outcome });
    console.log(`--- ${heading}: ${outcome.passed} passed, ${outcome.failed} failed, ${seconds(results.at(-1).time)}`);
  }
} catch (error) {
  console.error(error.message);
  results.push({ heading: 'Preparation', time: 0, passed: 0, failed: 1 });
}

console.log('\n=== Summary ===');
for (const { heading, time, passed, failed } of results) {
  console.log(`${failed === 0 ? 'ok    ' : 'FAILED'} ${heading}: ${passed} passed, ${failed} failed, ${seconds(time)}`);
}
const sum = (key) => results.reduce((total, result) => total + result[key], 0);
process.exitCode = sum('failed') === 0 ? 0 : 1;
console.log(`\n${sum('passed')} passed, ${sum('failed')} failed`);
