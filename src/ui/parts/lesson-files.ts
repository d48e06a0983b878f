/** Small files of lessons among those that are dropped on a page: a sheet, or a teacher's answer. */

/** A single JSON file. Whether it is a sheet or an answer is told by its content. */
export function lessonFileIn(files: readonly File[]): File | null {
  const [file] = files;
  if (file === undefined || files.length > 1) return null;
  return /\.json$/i.test(file.name) || file.type === 'application/json' ? file : null;
}
