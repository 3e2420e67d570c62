/** As the system has it, or what the knitter chose. */
export type Theme = 'auto' | 'light' | 'dark';

const KEY = 'edgewise.theme';

/** The colours chosen on an earlier visit. */
export function keptTheme(): Theme {
  try {
    const kept = localStorage.getItem(KEY);
    return kept === 'light' || kept === 'dark' ? kept : 'auto';
  } catch (error) {
    if (error instanceof DOMException) return 'auto';
    throw error;
  }
}

/** Puts colours on the page and keeps the choice where the browser lets it. */
export function wear(theme: Theme): void {
  if (theme === 'auto') delete document.documentElement.dataset.theme;
  else document.documentElement.dataset.theme = theme;
  try {
    localStorage.setItem(KEY, theme);
  } catch (error) {
    // Without a store the choice holds for this visit.
    if (!(error instanceof DOMException)) throw error;
  }
}
