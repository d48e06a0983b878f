/** How far the listening has come, on one line that is erased at the end; only where the output is a terminal. */
import type { Words } from '../core/words/words.ts';
import { clockWords } from '../core/base/clock-words.ts';

export interface Progress {
  /** @param share 0 to 1, or null where the end is not known. */
  at(seconds: number, share: number | null): void;
  dispose(): void;
}

/** Redraws at most every so many milliseconds: a terminal over a wire is slow. */
const REDRAW_MS = 100;
const WIPE = '\r\x1b[K';

export function showProgress(stream: NodeJS.WriteStream, words: Words): Progress {
  if (!stream.isTTY) return { at: () => undefined, dispose: () => undefined };
  let last = 0;
  return {
    at(seconds, share) {
      const now = Date.now();
      if (now - last < REDRAW_MS) return;
      last = now;
      stream.write(`${WIPE}${words.cli.listening({ time: clockWords(seconds), share })}`);
    },
    dispose() {
      if (last > 0) stream.write(WIPE);
    },
  };
}

/** How far a batch has come. */
export interface BatchProgress {
  done(files: number, of: number, failed: number): void;
  dispose(): void;
}

export function showBatchProgress(stream: NodeJS.WriteStream, words: Words): BatchProgress {
  if (!stream.isTTY) return { done: () => undefined, dispose: () => undefined };
  return {
    done(files, of, failed) {
      const filled = Math.round((BAR_COLUMNS * files) / of);
      const bar = '#'.repeat(filled).padEnd(BAR_COLUMNS, '.');
      stream.write(`${WIPE}[${bar}] ${words.cli.graded({ files, of, failed })}`);
    },
    dispose() {
      stream.write(WIPE);
    },
  };
}

const BAR_COLUMNS = 30;
