/**
 * What the browser fetches before the open page can be used: `main.ts` and what it imports, at once and not later. How
 * much that is in bytes is measured on the built site (`tests/browser/first-load.spec.ts`).
 */
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { de } from '../src/core/words/de.ts';
import { openPage as german } from '../src/core/words/de/open-page.ts';
import { wholePage as germanPage } from '../src/core/words/de/whole-page.ts';
import { en } from '../src/core/words/en.ts';
import { openPage as english } from '../src/core/words/en/open-page.ts';
import { wholePage as englishPage } from '../src/core/words/en/whole-page.ts';

const SRC = fileURLToPath(new URL('../src', import.meta.url));

/** What a file imports at once: neither types alone nor what it imports when it is needed. */
const importedAtOnce = (text: string): readonly string[] =>
  [...text.matchAll(/^\s*(?:import|export)\s(?!type\b)[^'";]*?(?:from\s*)?'([^']+)'/gm)].map(
    ([, from]) => from!,
  );

/** Every source that `main.ts` imports at once, and each library, by its name in the import. */
function firstLoad(): {
  readonly files: ReadonlyMap<string, string>;
  readonly libraries: ReadonlySet<string>;
} {
  const files = new Map<string, string>();
  const libraries = new Set<string>();
  const visit = (path: string): void => {
    if (files.has(path) || !existsSync(path)) return;
    const text = readFileSync(path, 'utf8');
    files.set(path, text);
    for (const from of importedAtOnce(text))
      if (!from.startsWith('.')) libraries.add(from);
      else if (/\.(ts|svelte)$/.test(from)) visit(join(dirname(path), from));
  };
  visit(join(SRC, 'main.ts'));
  return { files, libraries };
}

const { files, libraries } = firstLoad();
const names = [...files.keys()].map((path) => relative(SRC, path));

describe('the first load', () => {
  it('is the open page, and none of what comes with the rest', () => {
    expect(names).toContain('ui/ready/ReadyScreen.svelte');
    expect(libraries).toContain('svelte');
    expect(names).not.toContain('rest.ts');
    expect(libraries).not.toContain('fflate');
    expect(names).not.toContain('ui/review/ReviewScreen.svelte');
    expect(names).not.toContain('ui/ready/later-parts.ts');
    expect(names).not.toContain('ui/ready/Takes.svelte');
  });

  it('reads no words but those of the open page', () => {
    const reads = [...files]
      .filter(([, text]) => /^ *const .* = use(?:WholePage)?Words\(\)/m.test(text))
      .map(([path]) => relative(SRC, path));
    expect(
      reads,
      'Take useOpenPageWords() there, and put the entries into a file that open-page.ts names.',
    ).toEqual([]);
    expect(names.filter((name) => /^core\/words\/(en|de)\b/.test(name))).toEqual([]);
  });
});

describe.each([
  ['en', english, englishPage, en],
  ['de', german, germanPage, de],
])('the words of the open page in %s', (_, openPage, wholePage, all) => {
  it('are those that all words have', () => {
    for (const section of Object.keys(wholePage) as (keyof typeof wholePage)[])
      expect(all[section]).toEqual(
        section === 'problems' ? expect.objectContaining(wholePage.problems) : wholePage[section],
      );
  });

  it('are with its later parts what they were before, and more', () => {
    for (const section of Object.keys(openPage) as (keyof typeof openPage)[])
      expect(wholePage[section]).toEqual(
        section === 'ready' ? expect.objectContaining(openPage.ready) : openPage[section],
      );
    expect(Object.keys(wholePage.ready).length).toBeGreaterThan(Object.keys(openPage.ready).length);
  });
});
