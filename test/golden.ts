import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

const folder = join(process.cwd(), 'test', 'golden');

/**
 * Compares `text` with the golden file test/golden/NAME, character by character (line ends are read as `\n`).
 * With UPDATE_GOLDEN=1 in the environment (`npm run golden`) it writes the file instead.
 * @throws Error that names the file and the first line that differs, or says that the file is missing.
 */
export function expectGolden(name: string, text: string, within: string = folder): void {
  const path = join(within, name);
  const shown = `test/golden/${name}`;
  if (process.env.UPDATE_GOLDEN === '1') {
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, text);
    return;
  }
  if (!existsSync(path)) throw new Error(`${shown} is missing: run "npm run golden" and read what it wrote.`);
  const difference = firstDifference(readFileSync(path, 'utf8').replaceAll('\r\n', '\n'), text);
  if (difference) throw new Error(`${shown} differs at ${difference}`);
}

/** Where `actual` first leaves `expected`, in words; null when they are equal. */
export function firstDifference(expected: string, actual: string): string | null {
  if (expected === actual) return null;
  const wanted = expected.split('\n');
  const got = actual.split('\n');
  let i = 0;
  while (i < wanted.length && i < got.length && wanted[i] === got[i]) i++;
  const say = (line: string | undefined): string => (line === undefined ? 'the end of the text' : JSON.stringify(line));
  return `line ${i + 1}:\n  golden: ${say(wanted[i])}\n  now:    ${say(got[i])}`;
}
