import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { FACE_FILES, FACES, type Face } from '../handout';
import { CommandError } from './problem';

/**
 * The letters of PDF documents, from the files that the build puts beside the command.
 *
 * @throws CommandError when they are not there
 */
export function readLetters(): Record<Face, Uint8Array> {
  const folder = new URL('./letters/', import.meta.url);
  const read = (face: Face) => {
    try {
      return new Uint8Array(readFileSync(new URL(FACE_FILES[face], folder)));
    } catch {
      throw new CommandError({ kind: 'no-letters', folder: fileURLToPath(folder) });
    }
  };
  return Object.fromEntries(FACES.map((face) => [face, read(face)])) as Record<Face, Uint8Array>;
}
