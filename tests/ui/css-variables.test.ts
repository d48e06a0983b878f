/** A custom property that nothing sets leaves a thing without its colour or size, and no tool says so. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';

const ROOT = 'src/ui';
const sources = readdirSync(ROOT, { recursive: true, encoding: 'utf8' })
  .filter((name) => /\.(css|svelte|ts)$/.test(name))
  .map((name) => ({ name, text: readFileSync(`${ROOT}/${name}`, 'utf8') }));

it('every custom property that is used is set somewhere', () => {
  const set = new Set(
    sources.flatMap(({ text }) =>
      // "--room: 3", "style:--room={…}", setProperty('--room', …)
      [...text.matchAll(/(--[a-z][\w-]*)(?=\s*:|=\{|=")|setProperty\(\s*'(--[\w-]+)'/g)].map(
        ([, written, byCode]) => written ?? byCode!,
      ),
    ),
  );
  const used = sources.flatMap(({ name, text }) =>
    // One with a value to fall back on need not be set.
    [...text.matchAll(/var\(\s*(--[\w-]+)\s*\)/g)].map(([, property]) => ({ name, property: property! })),
  );
  expect(used.length).toBeGreaterThan(100);
  expect(used.filter(({ property }) => !set.has(property))).toEqual([]);
});
