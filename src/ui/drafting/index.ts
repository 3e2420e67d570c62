export { default as Bar } from './Bar.svelte';
export { default as Marks } from './Marks.svelte';
export { DraftingTool } from './tool.svelte';
