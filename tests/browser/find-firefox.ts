/** A Firefox where one is installed: the one named by FIREFOX_PATH, else Debian's or the usual one on the PATH. */
import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';

const NAMES = ['firefox-esr', 'firefox'];

/** Its path, or null where there is none. */
export function findFirefox(): string | null {
  if (process.env.FIREFOX_PATH) return process.env.FIREFOX_PATH;
  for (const name of NAMES)
    for (const folder of (process.env.PATH ?? '').split(delimiter)) {
      const path = join(folder, name);
      try {
        accessSync(path, constants.X_OK);
        return path;
      } catch {
        // Not here: look on.
      }
    }
  return null;
}
