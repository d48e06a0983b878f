/**
 * Imports go in one direction: main → {ui, audio-port} → state → {audio, analysis, storage} → core, and cli → core;
 * within src no two folders import each other. Type imports count too. The core may import a few pure libraries only.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const SRC = fileURLToPath(new URL('../src', import.meta.url));

/** For each layer, the layers it may import from besides itself. */
const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  main: ['ui', 'audio-port', 'state', 'audio', 'analysis', 'storage', 'core'],
  ui: ['state', 'core'],
  'audio-port': ['state', 'audio', 'core'],
  state: ['audio', 'analysis', 'storage', 'core'],
  audio: ['core'],
  analysis: ['core'],
  storage: ['core'],
  cli: ['core'],
  core: [],
};

/** Libraries that the core may import: all of them pure. The two decoders are WebAssembly that imports nothing. */
const CORE_LIBRARIES = [
  'pitchy',
  'tonal',
  'valibot',
  '@valibot/to-json-schema',
  'midi-file',
  'spessasynth_core',
  '@rgrove/parse-xml',
  'fflate',
  'music-tempo',
  'stb-vorbis',
  'minimp3-wasm/dist/decoder.opt.wasm?url&inline',
];

const LIMIT_LINES = 300;
/** Longer files and the reason each has. */
const LONG_FILES: Readonly<Record<string, string>> = {
  'src/state/backing-desk.svelte.ts':
    'one recording with every verb of its screen; what each does lies in the files around it',
};

const sources = readdirSync(SRC, { recursive: true, encoding: 'utf8' })
  .filter((path) => /\.(ts|svelte)$/.test(path) && !path.endsWith('.d.ts'))
  .map((path) => path.split(sep).join('/'));

const layerOf = (path: string) => (path.includes('/') ? path.slice(0, path.indexOf('/')) : 'main');

function importsOf(path: string): string[] {
  const text = readFileSync(join(SRC, path), 'utf8');
  const found = [
    ...text.matchAll(/(?:^|\s)(?:import|export)\s[^'"`;]*?from\s*['"]([^'"]+)['"]/g),
    ...text.matchAll(/(?:^|\s)import\s*['"]([^'"]+)['"]/g),
    ...text.matchAll(/import\(\s*['"]([^'"]+)['"]\s*\)/g),
    ...text.matchAll(/new URL\(\s*['"](\.[^'"]+)['"]\s*,\s*import\.meta\.url\s*\)/g),
  ];
  return found.map((match) => match[1]!);
}

function resolved(from: string, specifier: string): string {
  const target = normalize(join(SRC, dirname(from), specifier.replace(/\?.*$/, '')));
  return relative(SRC, target).split(sep).join('/');
}

const folderOf = (path: string) => dirname(path).split(sep).join('/');

/** Every circle of a graph of names, as "a → b → a". */
function circlesIn(graph: ReadonlyMap<string, Iterable<string>>): string[] {
  const state = new Map<string, 'open' | 'done'>();
  const circles: string[] = [];
  const visit = (name: string, trail: string[]): void => {
    if (state.get(name) === 'done') return;
    if (state.get(name) === 'open') {
      circles.push([...trail.slice(trail.indexOf(name)), name].join(' → '));
      return;
    }
    state.set(name, 'open');
    for (const next of graph.get(name) ?? []) if (graph.has(next)) visit(next, [...trail, name]);
    state.set(name, 'done');
  };
  for (const name of graph.keys()) visit(name, []);
  return circles;
}

describe('layers', () => {
  it('finds the sources and their layers', () => {
    expect(sources.length).toBeGreaterThan(20);
    expect(new Set(sources.map(layerOf)).size).toBeGreaterThanOrEqual(5);
  });

  it('import in one direction only', () => {
    const wrong = sources.flatMap((path) =>
      importsOf(path)
        .filter((specifier) => specifier.startsWith('.'))
        // What lies above src (package.json) is no layer.
        .filter((specifier) => !resolved(path, specifier).startsWith('..'))
        .map((specifier) => ({ from: layerOf(path), to: layerOf(resolved(path, specifier)), specifier }))
        .filter(({ from, to }) => from !== to && !MAY_IMPORT[from]?.includes(to))
        .map(
          ({ from, to, specifier }) =>
            `${path} imports ${specifier}: ${from} may not reach into ${to}. ` +
            `Move what is shared down into core, or hand it in from a layer above.`,
        ),
    );
    expect(wrong).toEqual([]);
  });

  it('let the core import pure libraries only', () => {
    const wrong = sources
      .filter((path) => layerOf(path) === 'core')
      .flatMap((path) =>
        importsOf(path)
          .filter((specifier) => !specifier.startsWith('.') && !CORE_LIBRARIES.includes(specifier))
          .map(
            (specifier) =>
              `${path} imports ${specifier}: the core may import ${CORE_LIBRARIES.join(', ')} only.`,
          ),
      );
    expect(wrong).toEqual([]);
  });

  const graph = new Map(
    sources.map((path) => [
      path,
      importsOf(path)
        .filter((specifier) => specifier.startsWith('.'))
        .map((specifier) => resolved(path, specifier)),
    ]),
  );

  it('contain no circle of files', () => {
    expect(
      circlesIn(graph),
      'Break the circle: move what both files need into a file that imports neither.',
    ).toEqual([]);
  });

  it('contain no circle of folders', () => {
    const folders = new Map<string, Set<string>>();
    for (const [path, targets] of graph) {
      const from = folderOf(path);
      const out = folders.get(from) ?? new Set();
      for (const target of targets)
        if (graph.has(target) && folderOf(target) !== from) out.add(folderOf(target));
      folders.set(from, out);
    }
    expect(folders.size).toBeGreaterThan(40);
    expect(
      circlesIn(folders),
      'Folders import in one direction only. Move the file that both folders need to the lower one ' +
        '(the map of the folders is in DEVELOPERS.md), or split the part that is shared into a file of its own there.',
    ).toEqual([]);
  });

  it('have short files with telling names', () => {
    const long = sources
      .map((path) => ({ path, lines: readFileSync(join(SRC, path), 'utf8').split('\n').length }))
      .filter(({ path, lines }) => lines > LIMIT_LINES && !(path in LONG_FILES))
      .map(({ path, lines }) => `${path} has ${lines} lines: split it, or give its reason in LONG_FILES.`);
    const drawers = sources.filter((path) => /(^|\/)(utils?|helpers?|common|misc)(\/|\.|$)/i.test(path));
    const barrels = sources.filter((path) => /^core\/.*\/index\.ts$/.test(path));
    expect([...long, ...drawers, ...barrels]).toEqual([]);
  });
});
