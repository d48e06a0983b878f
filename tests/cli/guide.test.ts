/** The guide beside the built site: its links and pictures lead somewhere, and it runs nothing. */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { guideHtml, guideNames } from '../../src/cli/guide.ts';
import { GUIDE_PAGES } from '../../src/ui/help/sections.ts';
import { guidePages, ROOT } from '../read-pages.ts';

const html = new Map(
  guideNames().map((page) => [
    page.name,
    guideHtml(page, readFileSync(join(ROOT, `src/pages/${page.name}.md`), 'utf8')),
  ]),
);
const all = (text: string, pattern: RegExp) => [...text.matchAll(pattern)].map((match) => match[1]!);

it('has every page of the guide, and those that the help leads to', () => {
  const written = guidePages()
    .map(({ path }) => /^src\/pages\/([\w-]+)\.md$/.exec(path)?.[1])
    .filter((name) => name !== undefined && name !== 'README');
  expect([...html.keys()].sort()).toEqual(written.sort());
  expect(GUIDE_PAGES.filter((name) => !html.has(name))).toEqual([]);
});

describe.each([...html])('%s.html', (_, text) => {
  it('links to pages and headings that are there', () => {
    const wrong = all(text, / href="([^"]+)"/g)
      .filter((href) => !/^(?:https:|\.\.\/|\.\/guide\.css$)/.test(href))
      .filter((href) => {
        const [file = '', anchor] = href.split('#');
        const target = file === '' ? text : html.get(file.replace(/^\.\/|\.html$/g, ''));
        return target === undefined || (anchor !== undefined && !target.includes(` id="${anchor}"`));
      });
    expect(wrong).toEqual([]);
  });

  it('shows pictures that are there', () => {
    const missing = all(text, /<img src="([^"]+)"/g).filter(
      (path) => !existsSync(join(ROOT, 'src/pages', path)),
    );
    expect(missing).toEqual([]);
  });

  it('holds no script, no comment, and no markdown that was left', () => {
    expect(text).not.toMatch(/<script|<!--|^\| ---/m);
  });
});
