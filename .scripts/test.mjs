// npm test: everything, whatever fails on the way. The first stages need one core each and go side by side in two
// lanes; what they say is held back and told whole.
// npm test -- --only units,browser [FILTER ...]: only these stages, and in them only the files that match.
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { build, buildWhenOld } from './build.mjs';
import { chromium } from './chromium.mjs';
import { countPlaywright, countVitest, settle } from './count.mjs';
import { firefox } from './firefox.mjs';
import { installWhatIsMissing } from './install.mjs';
import { bin, run, runHeld, top } from './run.mjs';
import { serve } from './serve.mjs';

const cache = join(top, '.cache');

const tool =
  (script, ...args) =>
  async (_, say) =>
    (await runHeld(bin(...script), args, { say })) === 0 ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 };

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

/** [name for --only, heading, what to do]. Each resolves to { passed, failed } and says what there is by `say`. */
const lanes = [
  [['lint', 'Lint', tool(['eslint'], '--config', '.config/eslint.config.js', '--max-warnings', '0', '.')]],
  [
    ['format', 'Format', tool(['prettier'], '--check', '--log-level', 'warn', '.')],
    ['types', 'Types without the DOM', tool(['typescript', 'tsc'], '-p', 'tsconfig.pure.json')],
    ['types', 'Types of the command', tool(['typescript', 'tsc'], '-p', 'tsconfig.command.json')],
    [
      'types',
      'Types of all',
      tool(['svelte-check'], '--tsconfig', './tsconfig.json', '--fail-on-warnings', '--output', 'human'),
    ],
    [
      'build',
      'Build',
      (_, say) => {
        build({ say });
        return { passed: 1, failed: 0 };
      },
    ],
  ],
];
const after = [
  ['units', 'Unit and component tests', (filters) => vitest('units', ['node', 'components'], filters)],
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
const stages = [...lanes.flat(), ...after];

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

/** Does a stage. With `held`, its heading comes with all that it said once it has ended. */
async function perform([, heading, work], filters, held) {
  const said = [];
  const say = held ? (words) => said.push(words) : console.log;
  say(`\n=== ${heading} ===`);
  const start = performance.now();
  let outcome;
  try {
    outcome = await work(filters, say);
  } catch (error) {
    say(error.message);
    outcome = { passed: 0, failed: 1 };
  }
  const time = performance.now() - start;
  results.push({ heading, time, ...outcome });
  say(`--- ${heading}: ${outcome.passed} passed, ${outcome.failed} failed, ${seconds(time)}`);
  if (held) console.log(said.join('\n'));
}

try {
  const { only, filters } = readWords(process.argv.slice(2));
  installWhatIsMissing();
  mkdirSync(cache, { recursive: true });
  const each = async (list, held) => {
    for (const stage of list) if (!only || only.includes(stage[0])) await perform(stage, filters, held);
  };
  await Promise.all(lanes.map((lane) => each(lane, true)));
  await each(after, false);
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
