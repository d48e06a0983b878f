/** The palette of `tokens.css` for what is drawn on a canvas, which can't read CSS variables by itself. */

/** For each ink its variable in `tokens.css`. */
const VARIABLES = {
  paper: '--paper',
  deep: '--paper-deep',
  ink: '--ink',
  soft: '--ink-soft',
  rule: '--rule',
  accent: '--accent',
  wash: '--accent-wash',
} as const;

/** Each ink as a colour that a canvas understands. */
export type Inks = Readonly<Record<keyof typeof VARIABLES, string>>;

let known: Inks | null = null;
let watching = false;

/**
 * The palette as it stands now. It is read once, and again when the theme changes: to read it in every frame would make
 * the browser compute all styles anew. The same palette is the same object.
 */
export function inksNow(): Inks {
  if (!watching) {
    watching = true;
    const forget = () => (known = null);
    for (const asked of ['(prefers-color-scheme: dark)', '(forced-colors: active)'])
      matchMedia(asked).addEventListener('change', forget);
    new MutationObserver(forget).observe(document.documentElement, { attributeFilter: ['data-theme'] });
  }
  return (known ??= readInks());
}

/** An element has to wear each colour: the variable itself still holds both, the one by day and the one by night. */
function readInks(): Inks {
  const probe = document.createElement('span');
  document.documentElement.append(probe);
  const inks = Object.fromEntries(
    Object.entries(VARIABLES).map(([name, variable]) => {
      probe.style.color = `var(${variable})`;
      return [name, getComputedStyle(probe).color];
    }),
  ) as Inks;
  probe.remove();
  return inks;
}
