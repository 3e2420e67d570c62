import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

export const COMMAND = fileURLToPath(new URL('../../dist/command/edgewise.js', import.meta.url));

export interface Ran {
  readonly status: number | null;
  readonly out: string;
  readonly err: string;
}

/** The same where what comes out are bytes. */
export function edgewiseBytes(words: readonly string[], input = ''): Omit<Ran, 'out'> & { readonly out: Uint8Array } {
  const { status, stdout, stderr } = spawnSync(process.execPath, [COMMAND, ...words], { input });
  return { status, out: new Uint8Array(stdout), err: stderr.toString() };
}

/** Runs the built command as a person would, with `input` on its standard input. */
export function edgewise(words: readonly string[], input: string | Uint8Array = ''): Ran {
  const { status, stdout, stderr } = spawnSync(process.execPath, [COMMAND, ...words], { input, encoding: 'utf8' });
  return { status, out: stdout, err: stderr };
}
