import { FACES, type Face } from '../../handout';

/** What the letters are called in the style of the pages (handout's FAMILY begins with it). */
const NAME = 'Edgewise Serif';

const STYLE: Readonly<Record<Face, FontFaceDescriptors>> = {
  regular: {},
  bold: { weight: 'bold' },
  italic: { style: 'italic' },
};

let files: Promise<Record<Face, Uint8Array>> | null = null;
let shown: Promise<void> | null = null;

/**
 * The files of the handout's letters, fetched once.
 *
 * @throws TypeError when they can't be fetched; the next call tries again
 */
export function letterFiles(): Promise<Record<Face, Uint8Array>> {
  files ??= fetchFiles().catch((error: unknown) => {
    files = null;
    throw error;
  });
  return files;
}

async function fetchFiles(): Promise<Record<Face, Uint8Array>> {
  const { FACE_URLS } = await import('../../handout/letters/urls');
  const fetched = await Promise.all(
    FACES.map(async (face) => {
      const answer = await fetch(FACE_URLS[face]);
      if (!answer.ok) throw new TypeError(`${FACE_URLS[face]}: ${answer.status}`);
      return [face, new Uint8Array(await answer.arrayBuffer())] as const;
    }),
  );
  return Object.fromEntries(fetched) as Record<Face, Uint8Array>;
}

/** Has the pages on the screen and on paper drawn in these letters, the same as in the document. */
export function showLetters(): Promise<void> {
  shown ??= letterFiles()
    .then(async (known) => {
      const faces = FACES.map((face) => new FontFace(NAME, known[face].slice().buffer, STYLE[face]));
      await Promise.all(faces.map((face) => face.load()));
      for (const face of faces) document.fonts.add(face);
    })
    .catch((error: unknown) => {
      shown = null;
      throw error;
    });
  return shown;
}
