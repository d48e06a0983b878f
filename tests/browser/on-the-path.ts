/** Programs of this machine. */
import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';

/** The path of the first of these programs that stands on the PATH, or null where none does. */
export function onThePath(names: readonly string[]): string | null {
  for (const name of names)
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
