/**
 * The pages of `src/pages/` as plain HTML beside the built site, so that the guide can be read in the app without a network:
 * `guide/player.html` and the others, with their pictures and one style sheet. They run no script.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { Marked } from 'marked';
import type { Plugin } from 'vite';

const here = (path: string) => fileURLToPath(new URL(`../${path}`, import.meta.url));
const read = (path: string) => readFileSync(here(path), 'utf8');

/** Nothing but the site's own styles, letters and pictures. */
const POLICY =
  "default-src 'none'; style-src 'self'; font-src 'self'; img-src 'self'; base-uri 'none'; form-action 'none'";

/** By family and weights, as in src/ui/fonts/fonts.css; the built files have a hash behind these names. */
const FONTS = [
  { family: 'Besley', weight: '400 900', file: 'besley-latin-wght-normal' },
  { family: 'Atkinson', weight: '200 800', file: 'atkinson-hyperlegible-next-latin-wght-normal' },
];

interface GuidePage {
  /** Without ".md". */
  readonly name: string;
  readonly title: string;
}

/** The pages in the order of the table in src/pages/README.md. */
export const guideNames = (): readonly GuidePage[] =>
  [...read('pages/README.md').matchAll(/^\| \[([^\]]+)\]\(([\w-]+)\.md\)/gm)].map(([, title, name]) => ({
    name: name!,
    title: title!,
  }));

/** The anchor of a heading where pages of a repository are shown: small letters, no signs, hyphens for spaces. */
const anchorOf = (heading: string): string =>
  heading
    .toLowerCase()
    .replace(/[^\p{L}\p{N} _-]/gu, '')
    .replaceAll(' ', '-');

/** Where a link leads within the guide; null for pages of the code, which are not part of the site. */
function addressOf(href: string): string | null {
  if (href.startsWith('https:') || href.startsWith('#')) return href;
  const [, name, anchor = ''] = /^([\w-]+)\.md(#.*)?$/.exec(href) ?? [];
  return name === undefined ? null : `./${name}.html${anchor}`;
}

const marked = new Marked({
  renderer: {
    heading({ tokens, depth, text }) {
      return `<h${depth} id="${anchorOf(text)}">${this.parser.parseInline(tokens)}</h${depth}>\n`;
    },
    link({ href, tokens }) {
      const text = this.parser.parseInline(tokens);
      const address = addressOf(href);
      return address === null ? text : `<a href="${address}">${text}</a>`;
    },
    // Comments name the place of a figure; no page holds other HTML.
    html: () => '',
  },
});

/** @param markdown a page of src/pages @returns the whole page as HTML */
export function guideHtml({ name, title }: GuidePage, markdown: string): string {
  const body = marked
    .parse(markdown, { async: false })
    .replaceAll('<table>', '<div class="table" tabindex="0"><table>')
    .replaceAll('</table>', '</table></div>');
  const ways = guideNames().map((page) =>
    page.name === name
      ? `<li aria-current="page">${page.title}</li>`
      : `<li><a href="./${page.name}.html">${page.title}</a></li>`,
  );
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="${POLICY}">
<meta name="color-scheme" content="light dark">
<title>${title} – Landfall</title>
<link rel="icon" href="../icons/landfall-192.png">
<link rel="stylesheet" href="./guide.css">
</head>
<body>
<header><a href="../index.html">Landfall</a></header>
<nav aria-label="Pages"><ul>
${ways.join('\n')}
</ul></nav>
<main>
${body}</main>
</body>
</html>
`;
}

/** @param files names of all files of the build @throws Error where a typeface is not among them */
function guideCss(files: readonly string[]): string {
  const faces = FONTS.map(({ family, weight, file }) => {
    const path = files.find((name) => name.startsWith(`assets/${file}`));
    if (path === undefined) throw new Error(`The build holds no typeface ${file}.`);
    return `@font-face {\n  font-family: '${family}';\n  font-weight: ${weight};\n  src: url('../${path}') format('woff2');\n}\n`;
  });
  return [...faces, read('ui/tokens.css'), read('pages/guide.css')].join('\n');
}

/** Puts the guide into the build. */
export const guide = (): Plugin => ({
  name: 'guide',
  generateBundle(_, bundle) {
    const emit = (fileName: string, source: string | Uint8Array) =>
      this.emitFile({ type: 'asset', fileName: `guide/${fileName}`, source });
    for (const page of guideNames())
      emit(`${page.name}.html`, guideHtml(page, read(`pages/${page.name}.md`)));
    for (const name of readdirSync(here('pages/pictures')).filter((file) => !file.endsWith('.md')))
      emit(`pictures/${name}`, readFileSync(here(`pages/pictures/${name}`)));
    emit('guide.css', guideCss(Object.keys(bundle)));
  },
});
