import { writeOutput } from './files';
import { CommandError } from './problem';

/** Where what has no file of its own goes. */
interface Stream {
  readonly isTTY?: boolean;
  write(content: string | Uint8Array): unknown;
}

/**
 * Gives the whole of an answer to a file, or to standard output where none is named.
 *
 * @throws CommandError when the file can't be written, or bytes would be poured over a terminal
 */
export function give(content: string | Uint8Array, out: string | null, stream: Stream = process.stdout): void {
  if (out !== null) writeOutput(out, content);
  else if (typeof content !== 'string' && stream.isTTY === true) throw new CommandError({ kind: 'terminal' });
  else stream.write(content);
}
