/**
 * Builds the site and the command line into `dist/`. Both are built in a folder beside their place, and moved there file by
 * file when they are whole: a page that is being served never meets an empty folder.
 *
 *   node src/cli/build.mjs                builds
 *   node src/cli/build.mjs --if-changed   builds only where `dist/` is missing or was built from other sources
 *
 * npm runs the second one after `npm ci`, and again at the first `npx landfall`, for which it links this folder as a package.
 */
import { createHash } from 'node:crypto';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmdirSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join, relative, sep } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/** What is built from: the folder of the sources, and the files beside it that decide about the result. */
const SOURCES = [
  'src',
  'package.json',
  'package-lock.json',
  'vite.config.ts',
  'svelte.config.js',
  'LICENSE',
  'NOTICE',
];

/** What is built, by its configuration and its folder in `dist/`. The last files are moved last: they name all others. */
const PARTS = [
  { folder: 'app', configFile: 'vite.config.ts', last: ['index.html', 'service-worker.js'] },
  { folder: 'cli', configFile: 'src/cli/vite.config.ts', last: ['landfall.js'] },
];

/** In `dist/`: the digest of the sources from which all of it was built. It is written last. */
const DIGEST = 'built-from.txt';

/** Every file below a folder, by its path in it, in a fixed order; of a file, the empty path. */
function filesBelow(path) {
  if (statSync(path).isFile()) return [''];
  return readdirSync(path, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(path, join(entry.parentPath, entry.name)).split(sep).join('/'))
    .sort();
}

/** @param {string} root the folder of the project @returns {string} a digest of the names and contents of all sources */
export function digestOfSources(root) {
  const digest = createHash('sha256');
  for (const source of SOURCES.filter((name) => existsSync(join(root, name))))
    for (const file of filesBelow(join(root, source))) {
      const content = readFileSync(join(root, source, file));
      digest.update(`${source}/${file} ${content.length}\n`).update(content);
    }
  return digest.digest('hex');
}

/**
 * Whether `dist/` holds what these sources give. A part that was built by itself since then does not count: it may have been
 * built from other sources.
 *
 * @param {string} root the folder of the project
 */
export function isBuilt(root) {
  const digest = join(root, 'dist', DIGEST);
  const ways = PARTS.map(({ folder, last }) => join(root, 'dist', folder, last[0]));
  if (![digest, ...ways].every((path) => existsSync(path))) return false;
  const written = statSync(digest).mtimeMs;
  return (
    ways.every((path) => statSync(path).mtimeMs <= written) &&
    readFileSync(digest, 'utf8').trim() === digestOfSources(root)
  );
}

/**
 * Moves every file of a folder into another one on the same disk, over the file that has its name there, and then removes
 * what was there and is not in the first.
 *
 * @param {string} from is empty afterwards, and removed
 * @param {string} to
 * @param {readonly string[]} last names of files that are moved after all others
 */
export function moveOver(from, to, last) {
  mkdirSync(to, { recursive: true });
  const files = filesBelow(from);
  const inOrder = [
    ...files.filter((file) => !last.includes(file)),
    ...last.filter((file) => files.includes(file)),
  ];
  for (const file of inOrder) {
    mkdirSync(dirname(join(to, file)), { recursive: true });
    renameSync(join(from, file), join(to, file));
  }
  for (const file of filesBelow(to).filter((name) => !files.includes(name))) rmSync(join(to, file));
  removeEmptyFolders(to);
  rmSync(from, { recursive: true });
}

function removeEmptyFolders(folder) {
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    if (!entry.isDirectory()) continue;
    const below = join(folder, entry.name);
    removeEmptyFolders(below);
    if (readdirSync(below).length === 0) rmdirSync(below);
  }
}

async function build() {
  const { build: buildPart } = await import('vite');
  // Told before the build: sources that change while it runs make the next one necessary.
  const digest = digestOfSources(ROOT);
  const dist = join(ROOT, 'dist');
  mkdirSync(dist, { recursive: true });
  const beside = mkdtempSync(join(dist, 'unfinished-'));
  try {
    for (const { folder, configFile } of PARTS)
      await buildPart({
        configFile: join(ROOT, configFile),
        build: { outDir: join(beside, folder) },
        logLevel: 'warn',
      });
    for (const { folder, last } of PARTS) moveOver(join(beside, folder), join(dist, folder), last);
    writeFileSync(join(dist, DIGEST), `${digest}\n`);
  } finally {
    rmSync(beside, { recursive: true, force: true });
  }
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  if (!process.argv.includes('--if-changed') || !isBuilt(ROOT)) {
    console.log('Building the site and the command line into dist/ …');
    await build();
    console.log('Built. npm start serves the site.');
  }
}
