/** Whose a plain recording is: the folder that it lies in, or the beginning of its name. */
import { basename, dirname, extname, resolve } from 'node:path';

/**
 * @example studentOfPath('lesson 3/mira 2.wav') // "mira": a number behind a name counts tries
 */
export function studentOfPath(file: string): string {
  const name = basename(file, extname(file));
  const bare = name.replace(/[\s_-]*\d*$/, '').trim();
  return bare || name || basename(dirname(resolve(file)));
}

/** The number behind the name; null without. @example tryOfPath('mira 2.wav') // 2 */
export function tryOfPath(file: string): number | null {
  const digits = /(\d{1,4})$/.exec(basename(file, extname(file)));
  return digits ? Number(digits[1]) : null;
}
