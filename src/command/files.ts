import { randomBytes } from 'node:crypto';
import { readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import type { FileTrouble } from '../text';
import { CommandError } from './problem';

const TROUBLES: Readonly<Record<string, FileTrouble>> = {
  ENOENT: 'missing',
  ENOTDIR: 'missing',
  EISDIR: 'folder',
  EACCES: 'forbidden',
  EPERM: 'forbidden',
  EROFS: 'forbidden',
  ENOSPC: 'full',
};

/** @throws CommandError when the file can't be read or is not UTF-8 */
export function readInput(file: string): string {
  let bytes: Buffer;
  try {
    bytes = readFileSync(file === '-' ? 0 : file);
  } catch (error) {
    throw new CommandError({ kind: 'cannot-read', file, why: troubleOf(error) });
  }
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch (error) {
    if (error instanceof TypeError) throw new CommandError({ kind: 'cannot-read', file, why: 'not-text' });
    throw error;
  }
}

/**
 * Writes a file whole or not at all: beside it first, then in its place.
 *
 * @throws CommandError when it can't be written; what stood there stays
 */
export function writeOutput(file: string, content: string | Uint8Array): void {
  writeOutputs([[file, content]]);
}

/**
 * Writes files that belong together: all beside their places first, then in them.
 *
 * @throws CommandError when one can't be written, naming it; what stood there stays
 */
export function writeOutputs(files: readonly (readonly [file: string, content: string | Uint8Array])[]): void {
  const mark = randomBytes(4).toString('hex');
  const besides = files.map(([file]) => join(dirname(file), `.${basename(file)}.${mark}`));
  let at = '';
  try {
    for (const [i, [file, content]] of files.entries()) {
      at = file;
      if (isFolder(file)) throw Object.assign(new Error(file), { code: 'EISDIR' });
      writeFileSync(besides[i]!, content, { flag: 'wx' });
    }
    for (const [i, [file]] of files.entries()) {
      at = file;
      renameSync(besides[i]!, file);
    }
  } catch (error) {
    for (const beside of besides) rmSync(beside, { force: true });
    throw new CommandError({ kind: 'cannot-write', file: at, why: troubleOf(error) });
  }
}

function isFolder(file: string): boolean {
  return statSync(file, { throwIfNoEntry: false })?.isDirectory() ?? false;
}

function troubleOf(error: unknown): FileTrouble {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  return TROUBLES[code] ?? 'other';
}
