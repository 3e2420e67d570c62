import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { FACE_FILES, FACES, type Face } from '../../../src/handout/letters/face';

/** The file of a face, from its package. */
export function faceBytes(face: Face): Uint8Array {
  const path = new URL(`../../../node_modules/dejavu-fonts-ttf/ttf/${FACE_FILES[face]}`, import.meta.url);
  return new Uint8Array(readFileSync(fileURLToPath(path)));
}

export function allFaces(): Record<Face, Uint8Array> {
  return Object.fromEntries(FACES.map((face) => [face, faceBytes(face)])) as Record<Face, Uint8Array>;
}
