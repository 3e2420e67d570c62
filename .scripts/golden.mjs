// npm run golden: runs the tests that compare with golden files, and lets them write the files instead.
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { installWhatIsMissing } from './install.mjs';
import { bin, run, top } from './run.mjs';

function* testFiles(folder) {
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) yield* testFiles(path);
    else if (entry.name.endsWith('.test.ts')) yield path;
  }
}

try {
  installWhatIsMissing();
  const files = [...testFiles(join(top, 'test'))]
    // The helper's own test compares with invented files of its own.
    .filter((path) => !path.startsWith(join(top, 'test', 'ground')))
    .filter((path) => readFileSync(path, 'utf8').includes('expectGolden('))
    .map((path) => relative(top, path).replaceAll('\\', '/'));
  if (files.length === 0) throw new Error('No test compares with a golden file.');
  process.exitCode = await run(bin('vitest'), ['run', ...files], { env: { UPDATE_GOLDEN: '1' } });
} catch (error) {
  console.error(error.message);
  process.exitCode = 1;
}
