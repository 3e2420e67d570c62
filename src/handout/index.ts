export { FACE_FILES, FACES, type Face } from './letters/face';
export { fitted } from './letters/fitted';
export { foreignLetters, textWidth } from './letters/width';
export { wrapped } from './letters/wrapped';
