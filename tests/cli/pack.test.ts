/** The package: what it holds, and that it is installed into an empty folder and grades from there, without a network. */
import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { build, fixture, scratch } from './built.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const files = scratch();
afterAll(files.dispose);

interface Packed {
  readonly filename: string;
  readonly files: readonly { readonly path: string }[];
}
let packed: Packed;

/** Of `npm` or `npx`: with a cache of its own, so that nothing comes from elsewhere. */
const run = (program: 'npm' | 'npx', args: readonly string[], cwd: string): string =>
  execFileSync(program, args, {
    cwd,
    encoding: 'utf8',
    shell: process.platform === 'win32',
    env: { ...process.env, npm_config_cache: join(files.folder, 'cache'), npm_config_offline: 'true' },
  });

beforeAll(() => {
  build();
  // Without scripts: what is packed is built already.
  [packed] = JSON.parse(
    run('npm', ['pack', '--ignore-scripts', '--json', '--pack-destination', files.folder], ROOT),
  ) as [Packed];
});

it('holds the build, its licences and the pages about it, and nothing else', () => {
  const paths = packed.files.map(({ path }) => path);
  for (const path of ['landfall.js', 'landfall-kit.sf3', 'LICENSE-kit.txt', 'licences.txt'])
    expect(paths).toContain(`dist/cli/${path}`);
  expect(paths.includes('dist/app/index.html')).toBe(existsSync(join(ROOT, 'dist/app/index.html')));
  const pages = readdirSync(join(ROOT, 'src/pages'), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(ROOT, join(entry.parentPath, entry.name)).split(sep).join('/'));
  expect(paths.filter((path) => !path.startsWith('dist/')).sort()).toEqual(
    ['LICENSE', 'NOTICE', 'README.md', 'package.json', ...pages].sort(),
  );
});

it('is installed into an empty folder and grades a recording from there', () => {
  const folder = join(files.folder, 'empty');
  mkdirSync(folder);
  run(
    'npm',
    ['install', '--ignore-scripts', '--no-audit', '--no-fund', join(files.folder, packed.filename)],
    folder,
  );
  const words = ['grade', fixture('pluck.flac'), '--chart', '| A7 | D7 |', '--tempo', '120', '--json'];
  const report = JSON.parse(run('npx', ['--no', 'landfall', ...words], folder)) as { notes: unknown[] };
  expect(report.notes.length).toBeGreaterThan(0);
  expect(run('npx', ['--no', 'landfall', '--version'], folder)).toMatch(/^\D*\d+\.\d+\.\d+\n$/);
});
