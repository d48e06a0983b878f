/**
 * Every folder has a README that names each of its files and subfolders, and every name in it exists. The folder map in
 * DEVELOPERS.md is checked against the tree in the same way, so that none of these pages can become outdated unnoticed.
 */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const ROOT = fileURLToPath(new URL('..', import.meta.url));
/** Folders whose pages are checked, with everything below them. */
const TREES = ['src', 'tests/bench', 'tests/browser'];
/** Files that need no line: what they are is known from their name, in every folder alike. */
const NEED_NO_LINE = ['README.md', 'tsconfig.json'];
/** src itself is described by DEVELOPERS.md. */
const WITHOUT_PAGE = ['src'];

const FILE_NAME = /\.(ts|svelte|css|html|mjs|json|sf3|otf|woff2|svg|png|txt|csv|md|py)$/;

const childrenOf = (folder: string) =>
  readdirSync(join(ROOT, folder), { withFileTypes: true })
    .filter(({ name }) => !name.startsWith('.') && !NEED_NO_LINE.includes(name))
    .map((entry) => ({ path: `${folder}/${entry.name}`, isFolder: entry.isDirectory() }));

const foldersIn = (folder: string): readonly string[] => [
  folder,
  ...childrenOf(folder)
    .filter(({ isFolder }) => isFolder)
    .flatMap(({ path }) => foldersIn(path)),
];

const folders = TREES.flatMap(foldersIn).filter((folder) => !WITHOUT_PAGE.includes(folder));

/** A name of a page, written like that of a file or, with a slash at its end, of a folder; null where it leads nowhere. */
interface NamedPath {
  readonly name: string;
  readonly path: string | null;
}

/** Everything between backticks that is written like the name of a file or a folder. */
const namesIn = (text: string): readonly string[] =>
  [...text.matchAll(/`([^`\s*]+)`/g)]
    .map((match) => match[1]!)
    .filter((name) => /^[\w./-]+$/.test(name) && !/^\.\w+$/.test(name))
    .filter((name) => FILE_NAME.test(name) || (name.endsWith('/') && name.length > 1));

/**
 * Where the names of a page lead: from its folder, or from the root of the repository. In a line like "`aims/aim.ts`,
 * `aims.ts`" the second name belongs to the folder of the first.
 */
function pathsIn(text: string, folder: string): readonly NamedPath[] {
  return text.split('\n').flatMap((line) => {
    let latest = folder;
    return namesIn(line).map((name) => {
      const plain = name.replace(/\/$/, '');
      const candidates = [join(latest, plain), join(folder, plain), plain];
      const path = candidates.find((candidate) => existsSync(join(ROOT, candidate))) ?? null;
      if (path !== null && !name.endsWith('/')) latest = dirname(path);
      return { name, path };
    });
  });
}

const hasPage = (folder: string) => existsSync(join(ROOT, folder, 'README.md'));

/** The folder whose page describes this one: its own, or the next one above that has a page. */
function pageFor(folder: string): string | null {
  if (hasPage(folder)) return folder;
  return WITHOUT_PAGE.includes(folder) || folder === '.' ? null : pageFor(dirname(folder));
}

describe('the page of each folder', () => {
  it('exists, or the folder above describes it', () => {
    expect(folders.length).toBeGreaterThan(60);
    const missing = folders.filter((folder) => pageFor(folder) === null);
    expect(missing, 'Write a README.md with a line for each file and subfolder.').toEqual([]);
  });

  const pages = new Map(
    folders
      .filter(hasPage)
      .map((folder) => [folder, pathsIn(readFileSync(join(ROOT, folder, 'README.md'), 'utf8'), folder)]),
  );

  it('names each file, and each subfolder that has a page of its own', () => {
    const missing = folders.flatMap((folder) => {
      const page = pageFor(folder);
      if (page === null) return [];
      const named = new Set(pages.get(page)?.map(({ path }) => path));
      return childrenOf(folder)
        .filter(({ path, isFolder }) => !named.has(path) && (!isFolder || hasPage(path)))
        .map(({ path }) => `${page}/README.md has no \`${relative(page, path)}\``);
    });
    expect(missing, 'Add a line for each of these.').toEqual([]);
  });

  it('names nothing that does not exist', () => {
    const wrong = [...pages].flatMap(([folder, names]) =>
      names.filter(({ path }) => path === null).map(({ name }) => `${folder}/README.md names \`${name}\``),
    );
    expect(wrong, 'Correct these names or remove their lines.').toEqual([]);
  });
});

describe.each(['DEVELOPERS.md', 'README.md'])('%s', (page) => {
  it('names nothing that does not exist', () => {
    const text = readFileSync(join(ROOT, page), 'utf8');
    const inTheTree = namesIn(text).filter((name) => /^(src|tests|fixtures)\//.test(name));
    expect(inTheTree.filter((name) => !existsSync(join(ROOT, name)))).toEqual([]);
  });
});

describe('the folder map in DEVELOPERS.md', () => {
  const rows = [
    ...readFileSync(join(ROOT, 'DEVELOPERS.md'), 'utf8').matchAll(/^\| `((?:src|tests|fixtures)\/\S*)` \|/gm),
  ].map((match) => match[1]!.replace(/\/$/, ''));
  const subfolders = (folder: string) =>
    childrenOf(folder)
      .filter(({ isFolder }) => isFolder)
      .map(({ path }) => path);

  it('has a row for each folder of src and of the core, and no other', () => {
    const wanted = [...subfolders('src'), ...subfolders('src/core'), 'tests', 'fixtures'];
    expect([...rows].sort()).toEqual(wanted.sort());
  });

  it('lists the folders of the core so that each imports only from the rows above it', () => {
    const order = rows.filter((path) => dirname(path) === 'src/core');
    const wrong = order.flatMap((folder, row) =>
      readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' })
        .filter((file) => /\.ts$/.test(file) && !file.endsWith('.d.ts'))
        .flatMap((file) =>
          [...readFileSync(join(ROOT, folder, file), 'utf8').matchAll(/from '(\.[^']+)'/g)]
            .map((match) => join(dirname(join(folder, file)), match[1]!))
            .filter((target) => order.findIndex((other) => target.startsWith(`${other}/`)) > row)
            .map((target) => `${folder}/${file} imports ${target}`),
        ),
    );
    expect(wrong, 'Move what is shared to a folder further up in the map.').toEqual([]);
  });
});
