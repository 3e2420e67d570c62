// npm test: everything, whatever fails on the way. The first stages need one core each: two of them go side by side,
// and what they say is held back and told whole. Each of the others keeps both cores busy.
// npm test -- --only units,browser [FILTER ...]: only these stages, and in them only the files that match.
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { build, buildWhenOld } from './build.mjs';
import { headless } from './chromium.mjs';
import { countPlaywright, countVitest, settle } from './count.mjs';
import { firefox } from './firefox.mjs';
import { installWhatIsMissing } from './install.mjs';
import { bin, run, runHeld, top } from './run.mjs';
import { serve } from './serve.mjs';

const cache = join(top, '.cache');

/** Runs a script to its end. With `say`, what comes out is held back and given to it. */
const start = (script, args, { env, say }) => (say ? runHeld(script, args, { env, say }) : run(script, args, { env }));

const tool =
  (script, ...args) =>
  async (_, say) =>
    (await start(bin(...script), args, { say })) === 0 ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 };

/** Runs a test runner that writes its report to .cache/NAME.json, and counts the tests in it. */
async function counted(name, count, script, args, { env, say }) {
  const path = join(cache, `${name}.json`);
  rmSync(path, { force: true });
  const code = await start(script, args(path), { env, say });
  let report;
  try {
    report = JSON.parse(readFileSync(path, 'utf8'));
  } catch (error) {
    console.error(`The tests left no report: ${error.message}`);
    return { passed: 0, failed: 1 };
  }
  return settle(count(report), code);
}

/** What two runs at once would otherwise meet on: a core, and the times of earlier runs. */
const besides = ['--maxWorkers=1', '--no-cache'];

/** With `say`, on one core only, and what comes out is held back. */
const vitest = (name, projects, filters, { env, say } = {}) =>
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
      ...(say ? besides : []),
      ...filters,
    ],
    { env, say },
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
      {
        env: { CHROMIUM_PATH: await headless(), EDGEWISE_URL: url, EDGEWISE_REPORT: join(cache, 'browser.json') },
      },
    ),
  );

const inFirefox = (filters, say) =>
  served((url) => {
    const env = { FIREFOX_PATH: firefox({ say }), EDGEWISE_URL: url };
    return vitest('firefox', ['firefox'], filters, { env, say });
  });

/**
 * [name for --only, heading, what to do]: what to do resolves to { passed, failed }, and says what there is by `say`
 * where it is given one. These go two at a time, in this order: the longest first, and the build before all that needs
 * it. Nothing else goes on while it builds.
 */
const oneCore = [
  ['lint', 'Lint', tool(['eslint'], '--config', '.config/eslint.config.js', '--max-warnings', '0', '.')],
  [
    'build',
    'Build',
    (_, say) => {
      build({ say });
      return { passed: 1, failed: 0 };
    },
  ],
  [
    'types',
    'Types of all',
    tool(['svelte-check'], '--tsconfig', './tsconfig.json', '--fail-on-warnings', '--output', 'human'),
  ],
  ['types', 'Types without the DOM', tool(['typescript', 'tsc'], '-p', 'tsconfig.pure.json')],
  ['types', 'Types of the command', tool(['typescript', 'tsc'], '-p', 'tsconfig.command.json')],
  ['format', 'Format', tool(['prettier'], '--check', '--log-level', 'warn', '.')],
  [
    'built',
    'Tests of what was built',
    (filters, say) => {
      buildWhenOld({ say });
      return vitest('built', ['built'], filters, { say });
    },
  ],
  ['firefox', 'Tests in Firefox', inFirefox],
];
const bothCores = [
  ['units', 'Unit and component tests', (filters) => vitest('units', ['node', 'components'], filters)],
  ['browser', 'Browser tests', inChromium],
];
const stages = [...oneCore, ...bothCores];

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
  const began = performance.now();
  let outcome;
  try {
    outcome = await work(filters, held ? say : undefined);
  } catch (error) {
    say(error.message);
    outcome = { passed: 0, failed: 1 };
  }
  const time = performance.now() - began;
  results.push({ heading, time, ...outcome });
  say(`--- ${heading}: ${outcome.passed} passed, ${outcome.failed} failed, ${seconds(time)}`);
  if (held) console.log(said.join('\n'));
}

try {
  const { only, filters } = readWords(process.argv.slice(2));
  const asked = (list) => list.filter(([name]) => !only || only.includes(name));
  installWhatIsMissing();
  mkdirSync(cache, { recursive: true });
  const waiting = asked(oneCore);
  const held = waiting.length > 1;
  const inTurn = async () => {
    for (let stage = waiting.shift(); stage; stage = waiting.shift()) await perform(stage, filters, held);
  };
  await Promise.all([inTurn(), inTurn()]);
  for (const stage of asked(bothCores)) await perform(stage, filters, false);
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
