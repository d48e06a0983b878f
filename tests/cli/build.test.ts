/** The build: what counts as built, and how it takes the place of the one before. In folders of its own; nothing is compiled. */
import { cpSync, existsSync, mkdirSync, readFileSync, utimesSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeEach, expect, it } from 'vitest';
import { scratch } from './built.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const { digestOfSources, isBuilt, moveOver } = (await import(`${ROOT}/src/cli/build.mjs`)) as {
  digestOfSources: (root: string) => string;
  isBuilt: (root: string) => boolean;
  moveOver: (from: string, to: string, last: readonly string[]) => void;
};

const files = scratch();
afterAll(files.dispose);

let project: string;
let count = 0;
const put = (path: string, content: string) => {
  mkdirSync(dirname(join(project, path)), { recursive: true });
  writeFileSync(join(project, path), content);
};
const at = (path: string) => join(project, path);

beforeEach(() => {
  project = join(files.folder, `project-${count++}`);
  put('src/core/one.ts', 'export const one = 1;\n');
  put('package.json', '{}\n');
  put('dist/app/index.html', 'page');
  put('dist/cli/landfall.js', 'program');
  put('dist/built-from.txt', `${digestOfSources(project)}\n`);
});

it('is called by npm once the packages are there, and builds only what has changed', () => {
  const { scripts } = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8')) as {
    scripts: Record<string, string>;
  };
  expect(scripts.prepare).toBe('node src/cli/build.mjs --if-changed');
});

it('is not repeated where nothing has changed', () => {
  expect(isBuilt(project)).toBe(true);
});

it('is not repeated where only the times of the sources have changed, as after a copy', () => {
  cpSync(at('src'), at('copy'), { recursive: true });
  cpSync(at('copy'), at('src'), { recursive: true });
  expect(isBuilt(project)).toBe(true);
});

it.each([
  ['a source has another content, though it is older', 'src/core/one.ts', 'export const one = 2;\n'],
  ['a source has come', 'src/core/two.ts', ''],
  ['other packages are asked for', 'package.json', '{"name":"other"}\n'],
  ['the build comes from other sources', 'dist/built-from.txt', 'other\n'],
])('is repeated where %s', (_, path, content) => {
  put(path, content);
  utimesSync(at(path), new Date(0), new Date(0));
  expect(isBuilt(project)).toBe(false);
});

it('is repeated where a part was built by itself since then', () => {
  const later = new Date(Date.now() + 60_000);
  utimesSync(at('dist/app/index.html'), later, later);
  expect(isBuilt(project)).toBe(false);
});

it('is made where there is none', () => {
  project = join(files.folder, 'nothing-built');
  put('src/core/one.ts', '');
  expect(isBuilt(project)).toBe(false);
});

it('takes the place of the one before file by file, and leaves nothing of it', () => {
  put('dist/app/assets/old-1.js', 'old');
  put('dist/app/guide/old/page.html', 'old');
  put('new/index.html', 'new page');
  put('new/assets/new-2.js', 'new');
  moveOver(at('new'), at('dist/app'), ['index.html']);
  expect(readFileSync(at('dist/app/index.html'), 'utf8')).toBe('new page');
  expect(readFileSync(at('dist/app/assets/new-2.js'), 'utf8')).toBe('new');
  for (const gone of ['dist/app/assets/old-1.js', 'dist/app/guide', 'new'])
    expect(existsSync(at(gone)), gone).toBe(false);
});
