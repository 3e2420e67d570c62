// npm run bench: how long planning takes, bundled as it is shipped, and then the benches that vitest runs.
// npm run bench -- drawing: only the benches of vitest whose file matches.
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'vite';
import { installWhatIsMissing } from './install.mjs';
import { bin, run, top } from './run.mjs';

/** Bundles a module of test/bench for Node, as the command is bundled, and loads it. */
async function bundled(name) {
  const outDir = join(top, '.cache', 'bench');
  await build({
    configFile: false,
    root: top,
    publicDir: false,
    logLevel: 'error',
    ssr: { noExternal: true },
    build: {
      ssr: join(top, 'test', 'bench', `${name}.ts`),
      outDir,
      target: 'node20',
      minify: true,
      rolldownOptions: { output: { entryFileNames: `${name}.js`, codeSplitting: false } },
    },
  });
  return import(pathToFileURL(join(outDir, `${name}.js`)).href);
}

async function benchPlan() {
  const { planRounds } = await bundled('plan');
  console.log('   median     90 %  rounds   ms');
  for (const { what, median, most, rounds } of planRounds()) {
    console.log(
      `${median.toFixed(2).padStart(9)}${most.toFixed(2).padStart(9)}${String(rounds).padStart(8)}   ${what}`,
    );
  }
}

try {
  installWhatIsMissing();
  const filters = process.argv.slice(2);
  if (filters.length === 0 || filters.includes('plan')) await benchPlan();
  const others = filters.filter((filter) => filter !== 'plan');
  if (filters.length === 0 || others.length > 0) {
    process.exitCode = await run(bin('vitest'), ['bench', '--run', ...others]);
  }
} catch (error) {
  console.error(error.message);
  process.exitCode = 1;
}
