import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
export const LANDFALL = join(ROOT, 'dist/cli/landfall.js');
export const fixture = (name: string) => join(ROOT, 'fixtures/audio', name);

const { isBuilt } = (await import(`${ROOT}/src/cli/build.mjs`)) as { isBuilt: (root: string) => boolean };

/** Builds the command line where it is missing, or older than what it is made of and was made of something else. */
export function build(): void {
  const made = statSync(LANDFALL, { throwIfNoEntry: false })?.mtimeMs ?? 0;
  const newest = ['src/cli', 'src/core'].flatMap((folder) =>
    readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' }).map(
      (path) => statSync(join(ROOT, folder, path)).mtimeMs,
    ),
  );
  if (made > Math.max(...newest) || isBuilt(ROOT)) return;
  const { status, stderr } = spawnSync('npx', ['vite', 'build', '--config', 'src/cli/vite.config.ts'], {
    cwd: ROOT,
    encoding: 'utf8',
  });
  if (status !== 0) throw new Error(`The command line could not be built: ${stderr}`);
}

/** Runs `landfall` in a process of its own. */
export function landfall(...args: readonly string[]) {
  const { status, stdout, stderr, error } = spawnSync(process.execPath, [LANDFALL, ...args], {
    encoding: 'utf8',
    maxBuffer: 1 << 26,
  });
  if (error) throw error;
  return { status, stdout, stderr };
}

/** A folder that is thrown away, and files in it. */
export function scratch() {
  const folder = mkdtempSync(join(tmpdir(), 'landfall-cli-'));
  return {
    folder,
    file(name: string, content: string | Uint8Array): string {
      const path = join(folder, name);
      writeFileSync(path, content);
      return path;
    },
    dispose: () => {
      rmSync(folder, { recursive: true });
    },
  };
}
