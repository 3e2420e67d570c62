import type { Workbench } from './workbench.svelte';

/** Why an edge under the pointer gets its count, in a line; the words for it come after the first drawing. */
class Reason {
  words: ((bench: Workbench) => string | null) | null = $state.raw(null);
}

export const reason = new Reason();
