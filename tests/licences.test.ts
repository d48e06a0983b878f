/** What others made may ship only with their licence beside it: the OFL, MIT, ISC and Apache-2.0 all ask for that. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { licencesText, SHIPPED } from '../src/cli/licences.ts';

const notice = readFileSync(fileURLToPath(new URL('../NOTICE', import.meta.url)), 'utf8');
const text = licencesText();

describe('what ships', () => {
  it.each(SHIPPED.filter((name) => !name.startsWith('@fontsource')))('%s is named in NOTICE', (name) => {
    expect(notice).toContain(name);
  });

  it.each([
    ['SIL OPEN FONT LICENSE Version 1.1', 2],
    ['Apache License', 3],
    ['Permission is hereby granted, free of charge', 5],
  ])('%s stands in the text that is built, %i times or more', (words, times) => {
    expect(text.split(words).length - 1).toBeGreaterThanOrEqual(times);
  });

  it('carries the copyright lines of the typefaces and of the sounds', () => {
    expect(text).toContain('Steinberg Media Technologies');
    expect(text).toContain('Besley Project Authors');
    expect(text).toContain('Atkinson Hyperlegible Next Project Authors');
    expect(text).toContain(
      readFileSync(
        fileURLToPath(new URL('../src/audio/kit/LICENSE-kit.txt', import.meta.url)),
        'utf8',
      ).trim(),
    );
  });

  it('is under no licence of the GPL family', () => {
    expect(text).not.toMatch(/GNU (LESSER |AFFERO )?GENERAL PUBLIC LICENSE\s+Version/i);
  });
});
