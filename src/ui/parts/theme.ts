/** Day, night, or what the system has chosen. Kept by the browser; nothing else of the page depends on it. */

export type Theme = 'day' | 'night' | 'auto';
export const THEMES: readonly Theme[] = ['auto', 'day', 'night'];

const KEPT_AS = 'landfall-light';

export function keptTheme(): Theme {
  try {
    const kept = localStorage.getItem(KEPT_AS);
    return THEMES.find((theme) => theme === kept) ?? 'auto';
  } catch {
    // Some browsers refuse storage to private windows; the machine's own setting is good enough then.
    return 'auto';
  }
}

/** Shows the theme at once and keeps it where the browser lets us. */
export function showTheme(theme: Theme): void {
  if (theme === 'auto') delete document.documentElement.dataset.theme;
  else document.documentElement.dataset.theme = theme;
  try {
    localStorage.setItem(KEPT_AS, theme);
  } catch {
    // Shown for this visit all the same.
  }
}
