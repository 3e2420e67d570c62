import { readFileSync } from 'node:fs';
import { FACE_FILES, FACES, type Face } from '../handout';

/**
 * The letters of PDF documents, from the files that the build puts beside the command.
 *
 * @throws Error when they are not there
 */
export function readLetters(): Record<Face, Uint8Array> {
  const read = (face: Face) => new Uint8Array(readFileSync(new URL(`./letters/${FACE_FILES[face]}`, import.meta.url)));
  return Object.fromEntries(FACES.map((face) => [face, read(face)])) as Record<Face, Uint8Array>;
}
