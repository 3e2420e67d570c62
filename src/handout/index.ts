export { FACE_FILES, FACES, type Face } from './letters/face';
export { fitted } from './letters/fitted';
export { foreignLetters, textWidth } from './letters/width';
export { wrapped } from './letters/wrapped';
export { ForeignLettersError, type ForeignLetters } from './pdf/foreign';
export type { Page } from './pdf/page';
export type { PdfOptions } from './pdf/writePdf';
