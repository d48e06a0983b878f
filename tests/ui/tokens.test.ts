/** A style that asks for a property that nobody sets draws nothing, and no tool says so: each name is set somewhere. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const ui = fileURLToPath(new URL('../../src/ui', import.meta.url));

const sources = readdirSync(ui, { recursive: true, encoding: 'utf8' })
  .filter((path) => /\.(svelte|css|ts)$/.test(path))
  .map((path) => ({ path, text: readFileSync(join(ui, path), 'utf8') }));

describe('custom properties', () => {
  it('that a style asks for are set in some style, or by hand', () => {
    const set = new Set(
      sources.flatMap(({ text }) =>
        [...text.matchAll(/(?:^|[\s"'{;:])(--[\w-]+)(?=\s*[:=]|')/g)].map((match) => match[1]!),
      ),
    );
    expect(set.has('--paper')).toBe(true);
    const missing = sources.flatMap(({ path, text }) =>
      [...text.matchAll(/var\(\s*(--[\w-]+)\s*\)/g)]
        .map((match) => match[1]!)
        .filter((name) => !set.has(name))
        .map((name) => `${path}: ${name}`),
    );
    expect(missing).toEqual([]);
  });
});
