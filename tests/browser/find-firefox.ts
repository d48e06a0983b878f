/** A Firefox where one is installed: the one named by FIREFOX_PATH, else Debian's or the usual one on the PATH. */
import { onThePath } from './on-the-path.ts';

/** Its path, or null where there is none. */
export const findFirefox = (): string | null =>
  process.env.FIREFOX_PATH ? process.env.FIREFOX_PATH : onThePath(['firefox-esr', 'firefox']);
