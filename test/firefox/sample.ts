import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** Where the file of a sample design is. */
export const samplePath = (name: string): string =>
  fileURLToPath(new URL(`../../static/samples/${name}.edgewise.json`, import.meta.url));

/** The text of a sample design. */
export const sampleText = (name: string): string => readFileSync(samplePath(name), 'utf8');
