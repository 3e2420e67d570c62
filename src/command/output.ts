import { extname } from 'node:path';
import { writeOutput, writeOutputs } from './files';
import { CommandError } from './problem';

/** An answer: text, bytes, or files of bytes that belong together. */
export type Content = string | Uint8Array | readonly Uint8Array[];

/** Where what has no file of its own goes. */
interface Stream {
  readonly isTTY?: boolean;
  write(content: string | Uint8Array): unknown;
}

/**
 * Gives the whole of an answer to a file (or to numbered files), or to standard output where none is named.
 *
 * @throws CommandError when a file can't be written, or bytes would be poured over a terminal
 */
export function give(content: Content, out: string | null, stream: Stream = process.stdout): void {
  if (typeof content !== 'string' && !(content instanceof Uint8Array)) {
    if (out === null) throw new RangeError('Several files need a name.');
    writeOutputs(content.map((bytes, i) => [numbered(out, i + 1, content.length), bytes]));
  } else if (out !== null) writeOutput(out, content);
  else if (typeof content !== 'string' && stream.isTTY === true) throw new CommandError({ kind: 'terminal' });
  else stream.write(content);
}

/** The name of one file of several: `handout-1.png`, or `handout-01.png` where they are ten or more. */
function numbered(out: string, n: number, all: number): string {
  const ending = extname(out);
  const stem = ending === '' ? out : out.slice(0, -ending.length);
  return `${stem}-${String(n).padStart(String(all).length, '0')}${ending}`;
}
