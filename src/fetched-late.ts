/** How parts of the program are fetched after the first screen. */

/** Acts once the browser has nothing else to do, and after two seconds at the latest. */
export function whenIdle(act: () => Promise<void>): void {
  const go = () => void act();
  // Safari has no such call.
  if ('requestIdleCallback' in window) window.requestIdleCallback(go, { timeout: 2000 });
  else setTimeout(go, 500);
}

/**
 * Imports a part. A module that could not be fetched once is not fetched again as long as the page stands (HTML, "module
 * map"): a later attempt asks whether the server answers, and then loads the page anew.
 */
export function importedLate<Part>(load: () => Promise<Part>): () => Promise<Part> {
  let hasFailed = false;
  return async () => {
    if (hasFailed) {
      await fetch(location.pathname, { cache: 'no-store' });
      location.reload();
      return new Promise<never>(() => undefined);
    }
    try {
      return await load();
    } catch (error) {
      hasFailed = true;
      throw error;
    }
  };
}
