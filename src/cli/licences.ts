/** The licences of all that ships, as one text beside the built site and the command line. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Plugin } from 'vite';

const here = (path: string) => fileURLToPath(new URL(`../../${path}`, import.meta.url));
const read = (path: string) => readFileSync(here(path), 'utf8').trim();

/**
 * Every package that ends up in the build, in part or whole. All of it is bundled: who installs the package of Landfall
 * fetches nothing else.
 */
export const SHIPPED: readonly string[] = [
  '@fontsource-variable/atkinson-hyperlegible-next',
  '@fontsource-variable/besley',
  '@rgrove/parse-xml',
  '@valibot/to-json-schema',
  'clsx',
  'fflate',
  'fft.js',
  'idb',
  'midi-file',
  'minimp3-wasm',
  'music-tempo',
  'pitchy',
  'signalsmith-stretch',
  'spessasynth_core',
  'stb-vorbis',
  'svelte',
  'tonal',
  'valibot',
  'vexflow',
  'workbox-core',
  'workbox-precaching',
  'workbox-routing',
  'workbox-strategies',
];

/** Parts of a package that is named above. */
const NAMED_BY: readonly string[] = ['@tonaljs/'];

/** Packages that come without their licence's text: it was taken from the source they are made of. */
const KEPT_HERE: Readonly<Record<string, string>> = {
  'signalsmith-stretch': 'src/audio/backing/LICENSE-signalsmith-stretch.txt',
};

/** @throws Error for a package that tells no licence text: it may not ship then */
function licenceOf(name: string): string {
  const kept = KEPT_HERE[name];
  if (kept !== undefined) return read(kept);
  const folder = `node_modules/${name}`;
  const file = readdirSync(here(folder)).find((entry) => /^licen[cs]e/i.test(entry));
  if (file !== undefined) return read(`${folder}/${file}`);
  const readme = existsSync(here(`${folder}/README.md`)) ? read(`${folder}/README.md`) : '';
  const heading = /^#+ licen[cs]e$/im.exec(readme);
  if (heading === null) throw new Error(`${name} has no licence text: find it, or leave ${name} out.`);
  return readme.slice(heading.index);
}

/** NOTICE and our own licence first, then every part's. */
export function licencesText(): string {
  const parts = [
    ['Landfall', `${read('LICENSE')}\n\n${read('NOTICE')}`],
    ['The sounds', read('src/audio/kit/LICENSE-kit.txt')],
    ['The signs of music', read('src/ui/notation/LICENSE-music-font.txt')],
    ...SHIPPED.map((name) => [name, licenceOf(name)] as const),
  ] as const;
  return parts.map(([name, text]) => `${'='.repeat(72)}\n${name}\n${'='.repeat(72)}\n\n${text}\n`).join('\n');
}

/** Puts licences.txt into the build, and refuses to bundle a package that it does not name. */
export const licences = (): Plugin => ({
  name: 'licences',
  generateBundle(_, bundle) {
    const modules = Object.values(bundle).flatMap((part) => (part.type === 'chunk' ? part.moduleIds : []));
    for (const id of modules) {
      const name = /.*\/node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(id)?.[1];
      if (name !== undefined && !SHIPPED.includes(name) && !NAMED_BY.some((own) => name.startsWith(own)))
        this.error(`${name} is bundled, and src/cli/licences.ts does not name it (${id}).`);
    }
    this.emitFile({ type: 'asset', fileName: 'licences.txt', source: licencesText() });
  },
});
