export { Kept, type KeptWork } from './kept';
export { openFile, readText, type Opened } from './openFile';
export { fileName, saveFile } from './saveFile';
