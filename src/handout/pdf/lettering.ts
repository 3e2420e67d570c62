import type { Face } from '../letters/face';
import { refuseForeign } from './foreign';
import { readFontFile } from './fontFile';
import { faceOf } from './style';
import { subsetFont, type Subset } from './subset';
import type { Item } from './walk';

/** The PostScript names; the six letters before the sign say that only some of the letters are there. */
const NAMES: Readonly<Record<Face, string>> = {
  regular: 'EDGEWR+DejaVuSerif',
  bold: 'EDGEWB+DejaVuSerif-Bold',
  italic: 'EDGEWI+DejaVuSerif-Italic',
};

export interface Lettering extends Subset {
  readonly face: Face;
  readonly name: string;
}

/**
 * A font for each face that some pages use, with the letters that they use.
 *
 * @throws ForeignLettersError when a text has a letter that the faces lack
 */
export function letteringOf(items: readonly Item[], fonts: Readonly<Record<Face, Uint8Array>>): Map<Face, Lettering> {
  const used = new Map<Face, Set<number>>();
  const texts: string[] = [];
  for (const item of items) {
    if (item.kind !== 'text') continue;
    texts.push(item.text);
    const face = faceOf(item.style);
    const codes = used.get(face) ?? new Set();
    used.set(face, codes);
    for (const letter of item.text) codes.add(letter.codePointAt(0)!);
  }
  refuseForeign(texts);
  return new Map(
    [...used].map(([face, codes]) => {
      const name = NAMES[face];
      return [face, { face, name, ...subsetFont(readFontFile(fonts[face]), codes, name) }];
    }),
  );
}
