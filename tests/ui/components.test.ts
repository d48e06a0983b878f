/** What holds for every component. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const UI = fileURLToPath(new URL('../../src/ui', import.meta.url));
const components = readdirSync(UI, { recursive: true, encoding: 'utf8' })
  .filter((path) => path.endsWith('.svelte'))
  .map((path) => ({ path, text: readFileSync(join(UI, path), 'utf8') }));

const MOST_PROPS = 10;
/** Components that still have more; each goes from here as it is rebuilt. */
const STILL_MORE: readonly string[] = [];

/** The names in a component's `interface Props`. */
function propsOf(text: string): readonly string[] {
  const body = /interface Props[^{]*\{\n(.*?)\n {2}\}/s.exec(text)?.[1] ?? '';
  return [...body.matchAll(/^ {4}(\w+)\??:/gm)].map((match) => match[1]!);
}

describe('components', () => {
  it('finds them, and their props', () => {
    expect(components.length).toBeGreaterThan(40);
    expect(propsOf('  interface Props {\n    /** x */\n    a: string;\n    b?: () => void;\n  }')).toEqual([
      'a',
      'b',
    ]);
  });

  it(`take no more than ${MOST_PROPS} props: what belongs together is handed over as one value`, () => {
    const long = components
      .map(({ path, text }) => ({ path, count: propsOf(text).length }))
      .filter(({ count }) => count > MOST_PROPS);
    expect(long.map(({ path }) => path)).toEqual(STILL_MORE);
  });
});
