/** The pages of the project as text: the first page, those of `src/pages`, and the README of each folder. */
import { readdirSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { fileURLToPath } from 'node:url';

export const ROOT = fileURLToPath(new URL('..', import.meta.url));

export interface Page {
  /** From the root of the repository, with "/". */
  readonly path: string;
  readonly text: string;
}

/** A fenced block of a page. */
export interface Block {
  readonly language: string;
  /** What stands behind the language: the name of the file that the block shows, or "output". */
  readonly name: string;
  readonly content: string;
}

const read = (path: string): Page => ({ path, text: readFileSync(join(ROOT, path), 'utf8') });

const markdownIn = (folder: string): readonly string[] =>
  readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' })
    .map((path) => `${folder}/${path.split(sep).join('/')}`)
    .filter((path) => path.endsWith('.md'));

/** For whoever uses Landfall. */
export const guidePages = (): readonly Page[] =>
  ['README.md', ...markdownIn('src/pages')].sort().map((path) => read(path));

/** Those, and the pages for whoever works on it. */
export const allPages = (): readonly Page[] => {
  const paths = ['README.md', 'DEVELOPERS.md', ...['src', 'tests', 'fixtures'].flatMap(markdownIn)];
  return paths.sort().map((path) => read(path));
};

export const blocksOf = ({ text }: Page): readonly Block[] =>
  [...text.matchAll(/^```(\S*)[ \t]*(.*)\n([\s\S]*?)^```$/gm)].map(([, language, name, content]) => ({
    language: language ?? '',
    name: (name ?? '').trim(),
    content: content ?? '',
  }));

/** A page without its fenced blocks and the words between backticks. */
export const proseOf = ({ text }: Page): string =>
  text.replace(/^```[\s\S]*?^```$/gm, '').replace(/`[^`\n]*`/g, '');
