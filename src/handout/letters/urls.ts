import bold from 'dejavu-fonts-ttf/ttf/DejaVuSerif-Bold.ttf?url';
import italic from 'dejavu-fonts-ttf/ttf/DejaVuSerif-Italic.ttf?url';
import regular from 'dejavu-fonts-ttf/ttf/DejaVuSerif.ttf?url';
import type { Face } from './face';

/** Where the page fetches the handout's letters from. For the page alone, and to be loaded only when it shows one. */
export const FACE_URLS: Readonly<Record<Face, string>> = { regular, bold, italic };
