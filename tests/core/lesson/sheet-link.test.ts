import fc from 'fast-check';
import { deflateRawSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import {
  LINK_CHARACTERS,
  LINK_START,
  readSheetFragment,
  sheetFragment,
} from '../../../src/core/lesson/sheet-link.ts';
import { markOfSheet, SHEET_LIMITS, type SheetFile } from '../../../src/core/lesson/sheet.ts';
import { english } from '../../english.ts';
import { processorTime } from '../../processor-time.ts';

const FILE: SheetFile = {
  format: 'landfall-sheet',
  version: 1,
  title: 'Thirds, über a slow blues ♭',
  note: 'Sing the third before you play it.\nThen play.',
  chart: 'form:12-bar blues in Eb',
  tempo: 66,
  feel: 'slow-blues',
  choruses: 2,
  aims: [{ id: 'third-on-arrival', shareToReach: 0.4 }],
};

function fragmentOf(file: SheetFile): string {
  const fragment = sheetFragment(file);
  if (!fragment.ok) throw new Error(english(fragment.problem));
  return fragment.value;
}
/** Packed by zlib, so that a fragment can hold what the app would never write. */
const packed = (content: string | Uint8Array) =>
  LINK_START + deflateRawSync(content, { level: 9 }).toString('base64url');
function sentence(fragment: string): string {
  const sheet = readSheetFragment(fragment);
  if (sheet === null || sheet.ok) throw new Error('The fragment was read.');
  return english(sheet.problem);
}
const DAMAGED = /no whole lesson sheet/;

describe('a sheet in the fragment of a link', () => {
  it('comes back whole, with the same mark', () => {
    const sheet = readSheetFragment(fragmentOf(FILE));
    expect(sheet?.ok && sheet.value.file).toEqual(FILE);
    expect(sheet?.ok && sheet.value.mark).toBe(markOfSheet(FILE));
  });

  it('is of characters that a fragment may have (RFC 3986), and short for a form of the house', () => {
    expect(fragmentOf(FILE)).toMatch(/^#sheet=[A-Za-z0-9_-]+$/);
    expect(fragmentOf(FILE).length).toBeLessThan(400);
  });

  it('comes back for any words in it', () => {
    const words = fc.string({ unit: 'grapheme', maxLength: 100 });
    fc.assert(
      fc.property(words, words, fc.integer({ min: 1, max: 99 }), (title, note, choruses) => {
        const file = { ...FILE, title: `T${title}`.trim(), note, choruses };
        const fragment = sheetFragment(file);
        const sheet = fragment.ok ? readSheetFragment(fragment.value) : null;
        // Control characters and lone halves of a pair are no text: JSON escapes them, so they come back too.
        expect(sheet?.ok && sheet.value.file).toEqual(file);
      }),
    );
  });

  it('is read where another program packed it (zlib)', () => {
    const sheet = readSheetFragment(packed(JSON.stringify(FILE)));
    expect(sheet?.ok && sheet.value.file).toEqual(FILE);
  });

  it('says that a sheet is too long for a link', () => {
    const numbers = Array.from({ length: 400 }, (_, i) => `${(i * 7919) % 9973}`).join(' ');
    const note = numbers.slice(0, SHEET_LIMITS.noteCharacters);
    const chart = `| ${Array.from({ length: 1900 }, (_, i) => 'ABCDEFG'[(i * i * 31 + (i % 13)) % 7]).join(' | ')} |`;
    const long = Array.from({ length: 6 }, (_, i) => ({
      format: 'landfall-aim' as const,
      version: 1 as const,
      id: `own-${i}`,
      name: `own ${i}`,
      task: Array.from({ length: 2000 }, (_, j) => ((j * j * 37 + i * 101) % 9973).toString(36)).join(' '),
      events: 'landings' as const,
      test: 'is one of' as const,
      tones: ['root'],
      shareToReach: 0.5,
      leastEvents: 3,
      againstLuck: false,
    }));
    const fragment = sheetFragment({ ...FILE, note, chart, aims: long });
    expect(!fragment.ok && english(fragment.problem)).toMatch(
      /too long: it may have 7500\. Save the sheet as a file/,
    );
  });
});

describe('the fragment of something else', () => {
  it.each(['', '#', '#other=1', '#sheet', 'sheet=abc'])('is left alone: %j', (fragment) => {
    expect(readSheetFragment(fragment)).toBeNull();
  });
});

describe('a fragment that is no sheet', () => {
  it('is told for every place at which it is cut', () => {
    const whole = fragmentOf(FILE);
    for (let length = LINK_START.length; length < whole.length; length++)
      expect(sentence(whole.slice(0, length))).toMatch(DAMAGED);
  });

  it('is never read as another sheet, whatever is changed in it, and never throws', () => {
    const whole = fragmentOf(FILE);
    const place = fc.integer({ min: LINK_START.length, max: whole.length - 1 });
    fc.assert(
      fc.property(place, fc.stringMatching(/^[\w=%. -]{1,4}$/), (at, instead) => {
        const sheet = readSheetFragment(whole.slice(0, at) + instead + whole.slice(at + instead.length));
        if (sheet?.ok) expect(sheet.value.file.format).toBe('landfall-sheet');
      }),
      { numRuns: 500 },
    );
  });

  it('is told for any text', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 500 }), (text) => {
        expect(readSheetFragment(LINK_START + text)?.ok).toBe(false);
      }),
    );
  });

  it('is not unpacked beyond the length of a sheet', async () => {
    const bomb = packed(new Uint8Array(5_000_000).fill(0x20));
    expect(bomb.length).toBeLessThan(LINK_CHARACTERS);
    const { result, milliseconds } = await processorTime(() => sentence(bomb));
    expect(result).toMatch(DAMAGED);
    expect(milliseconds).toBeLessThan(200);
  });

  it('is not even looked into where it is longer than a link may be', () => {
    expect(sentence(LINK_START + 'A'.repeat(LINK_CHARACTERS))).toMatch(/too long/);
  });

  it.each([
    ['no JSON', 'title: Thirds', DAMAGED],
    ['bytes that are no text', new Uint8Array([0xff, 0xfe, 0x00]), DAMAGED],
    ['something else', '{"format":"landfall-aim"}', /"format" is not "landfall-sheet"/],
    ['a list', '[1]', /"format" is not/],
    ['a later version', JSON.stringify({ ...FILE, version: 2 }), /version 2/],
    ['a field too many', JSON.stringify({ ...FILE, script: 'x' }), /"script"/],
    ['a tempo out of range', JSON.stringify({ ...FILE, tempo: 1e9 }), /"tempo"/],
    ['a chart that can’t be read', JSON.stringify({ ...FILE, chart: '| Hm13 |' }), /link/],
    ['prototype fields', '{"__proto__":{"format":"landfall-sheet"},"version":1}', /"format" is not/],
  ])('is told: %s', (_, content, told) => {
    expect(sentence(packed(content))).toMatch(told);
  });
});
