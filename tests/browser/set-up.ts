/** Before all browser tests: the site is built if it is missing or older than its sources, served, a browser found. */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { preview } from 'vite';
import { findBrowser } from './find-browser.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

const newest = (folder: string) =>
  readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .map((path) => statSync(join(root, folder, path)).mtimeMs)
    .reduce((a, b) => Math.max(a, b), 0);

function isBuilt(): boolean {
  const outputs = ['dist/app/index.html', 'dist/cli/landfall.js'].map((path) => join(root, path));
  if (!outputs.every((path) => existsSync(path))) return false;
  return newest('src') < Math.min(...outputs.map((path) => statSync(path).mtimeMs));
}

export default async function setUp(): Promise<() => Promise<void>> {
  // LANDFALL_APP names a site that is built already, to be tested as it stands.
  const outDir = process.env.LANDFALL_APP ?? join(root, 'dist/app');
  if (process.env.LANDFALL_APP === undefined && !isBuilt()) {
    const { status } = spawnSync('npm', ['run', '--silent', 'build'], { cwd: root, stdio: 'inherit' });
    if (status !== 0) throw new Error('the site could not be built');
  }
  const server = await preview({
    root: join(root, 'src'),
    configFile: join(root, 'vite.config.ts'),
    build: { outDir },
    preview: { port: 0, host: '127.0.0.1' },
    logLevel: 'warn',
  });
  const browser = findBrowser();
  const lines = mkdtempSync(join(tmpdir(), 'landfall-lines-'));
  // The test processes inherit this environment.
  process.env.LANDFALL_URL = server.resolvedUrls?.local[0] ?? '';
  process.env.LANDFALL_SITE = outDir;
  process.env.LANDFALL_LINES = lines;
  process.env.LANDFALL_EXECUTABLE = browser.executable;
  process.env.LANDFALL_EXECUTABLE_ENV = JSON.stringify(browser.env);
  return async () => {
    await server.close();
    browser.dispose();
    rmSync(lines, { recursive: true, force: true });
  };
}
