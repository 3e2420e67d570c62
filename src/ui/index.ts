export { default as Canvas } from './Canvas.svelte';
export { default as Designs } from './Designs.svelte';
export { default as Settings } from './Settings.svelte';
export { default as Side } from './Side.svelte';
export { default as Toolbar } from './Toolbar.svelte';
export type { ShelfDesk, ShelfWork } from './shelfDesk';
export { Sheet, SHEET_PX } from './sheet.svelte';
export { loadEditing, refused, Workbench, type Outcome, type Work } from './workbench.svelte';
export { Tools } from './tools.svelte';
