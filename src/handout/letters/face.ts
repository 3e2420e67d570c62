/** The handout's own letters: DejaVu Serif, and its bold and italic. */
export type Face = 'regular' | 'bold' | 'italic';

export const FACES: readonly Face[] = ['regular', 'bold', 'italic'];

/** The files of the faces in the package dejavu-fonts-ttf (folder ttf), and as they lie beside the command. */
export const FACE_FILES: Readonly<Record<Face, string>> = {
  regular: 'DejaVuSerif.ttf',
  bold: 'DejaVuSerif-Bold.ttf',
  italic: 'DejaVuSerif-Italic.ttf',
};
