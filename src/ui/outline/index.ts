export { default as Bar } from './Bar.svelte';
export { default as Beside } from './Beside.svelte';
export { default as Marks } from './Marks.svelte';
export { OutlineTool } from './tool.svelte';
