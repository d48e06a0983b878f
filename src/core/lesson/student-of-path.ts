/** Whose a plain recording is: the beginning of its name, or the folder that it lies in. */

/** The folder and the name without its ending. */
function partsOf(path: string): { readonly folder: string; readonly stem: string } {
  const parts = path.split(/[/\\]/).filter((part) => part !== '' && part !== '.');
  const name = parts.at(-1) ?? path;
  const dot = name.lastIndexOf('.');
  return { folder: parts.at(-2) ?? '', stem: dot > 0 ? name.slice(0, dot) : name };
}

/**
 * A name that is only a number says nothing of the student: the folder does.
 * @example studentOfPath('lesson 3/alto 2.wav') // "alto": a number behind a name counts tries
 * @example studentOfPath('lesson 3/alto/2.wav') // "alto"
 * @example studentOfPath('lesson 3/alto (1).wav') // "alto": a browser numbers files of one name so
 */
export function studentOfPath(path: string): string {
  const { folder, stem } = partsOf(path);
  const bare = stem.replace(/[\s_-]*(\(\d{1,4}\)|\d*)$/, '').trim();
  return bare || folder || stem;
}

/** The number behind the name; null without. @example tryOfPath('alto 2.wav') // 2 */
export function tryOfPath(path: string): number | null {
  const digits = /(\d{1,4})$/.exec(partsOf(path).stem);
  return digits ? Number(digits[1]) : null;
}
