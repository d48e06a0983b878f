/** How parts of the program are fetched after the first screen. */

/** Acts once the browser has nothing else to do, and after two seconds at the latest. */
export function whenIdle(act: () => Promise<void>): void {
  const go = () => void act();
  // Safari has no such call.
  if ('requestIdleCallback' in window) window.requestIdleCallback(go, { timeout: 2000 });
  else setTimeout(go, 500);
}

/**
 * Imports a part, and before it again each style sheet that failed to come at an earlier attempt: the bundler asks for a
 * style sheet only once.
 */
export async function withStyles<Part>(load: () => Promise<Part>): Promise<Part> {
  const links = document.querySelectorAll<HTMLLinkElement>('link[rel=stylesheet]');
  await Promise.all([...links].filter(({ sheet }) => sheet === null).map(loadAgain));
  return load();
}

function loadAgain(link: HTMLLinkElement): Promise<void> {
  const again = link.cloneNode() as HTMLLinkElement;
  const loaded = new Promise<void>((done, failed) => {
    again.addEventListener('load', () => done());
    again.addEventListener('error', () => failed(new Error(`${link.href} can't be loaded`)));
  });
  link.replaceWith(again);
  return loaded;
}
