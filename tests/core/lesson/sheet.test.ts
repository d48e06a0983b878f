import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { sheetJsonSchema } from '../../../src/core/lesson/json-schema.ts';
import { markOfText } from '../../../src/core/lesson/sheet-mark.ts';
import { markOfSheet, readSheet, timelineOfSheet, writeSheet } from '../../../src/core/lesson/sheet.ts';
import { english } from '../../english.ts';

const FILE = {
  format: 'landfall-sheet',
  version: 1,
  title: 'Thirds over a slow blues',
  note: 'Sing the third before you play it.',
  chart: 'form:12-bar blues in Eb',
  tempo: 66,
  feel: 'slow-blues',
  choruses: 2,
  aims: [{ id: 'third-on-arrival', shareToReach: 0.4 }],
} as const;

const read = (changes: object) => readSheet(JSON.stringify({ ...FILE, ...changes }), 'task.json');
function goodSheet(changes: object = {}) {
  const sheet = read(changes);
  if (!sheet.ok) throw new Error(english(sheet.problem));
  return sheet.value;
}
function sentence(text: string): string {
  const sheet = readSheet(text, 'task.json');
  if (sheet.ok) throw new Error('The sheet was read.');
  return english(sheet.problem);
}

describe('a lesson sheet', () => {
  it('gives the chart, the aims with the share that this lesson asks for, and the chords on time', () => {
    const sheet = goodSheet();
    expect(sheet.chart.key?.tonic).toBe('Eb');
    expect(sheet.aims[0]).toMatchObject({ id: 'third-on-arrival', shareToReach: 0.4 });
    const timeline = timelineOfSheet(sheet, 1.5);
    expect(timeline.beatMap.secondsAt(0)).toBeCloseTo(1.5, 9);
    expect(timeline.beatMap.secondsAt(4)).toBeCloseTo(1.5 + 4 * (60 / 66), 6);
  });

  it('swings as the band does: a shuffle in triplets, straight eighths straight', () => {
    // *Common practice*: a shuffle at a medium tempo divides the beat in triplets.
    expect(timelineOfSheet(goodSheet({ feel: 'shuffle', tempo: 96 }), 0).swing).toBeCloseTo(2 / 3, 1);
    expect(timelineOfSheet(goodSheet({ feel: 'straight', tempo: 96 }), 0).swing).toBe(0.5);
  });

  it('keeps the share of the house where the lesson names none', () => {
    const [aim] = goodSheet({ aims: [{ id: 'third-over-one' }] }).aims;
    expect(aim?.shareToReach).toBe(0.5);
  });

  it('takes aims that the teacher wrote', () => {
    const own = {
      format: 'landfall-aim',
      version: 1,
      id: 'roots-first',
      name: 'Roots first',
      task: 'Land on the root of every chord.',
      events: 'landings',
      test: 'is one of',
      tones: ['root'],
      shareToReach: 0.6,
      leastEvents: 4,
      againstLuck: false,
    };
    expect(goodSheet({ aims: [own] }).aims[0]?.own?.name).toBe('Roots first');
  });

  it('has the same mark however the file is spaced and ordered, and another mark for another tempo', () => {
    const sheet = goodSheet();
    const reversed = Object.fromEntries(Object.entries(FILE).reverse());
    const again = readSheet(JSON.stringify(reversed, null, 8), 'copy.json');
    expect(again.ok && again.value.mark).toBe(sheet.mark);
    expect(goodSheet({ tempo: 67 }).mark).not.toBe(sheet.mark);
    expect(markOfSheet(sheet.file)).toBe(sheet.mark);
  });

  it('comes back from its own text', () => {
    const sheet = goodSheet();
    const again = readSheet(writeSheet(sheet.file), 'copy.json');
    expect(again.ok && again.value.file).toEqual(sheet.file);
  });

  it('fits the schema that is published, by another validator (ajv)', () => {
    const validate = new Ajv2020({ strict: false }).compile(sheetJsonSchema());
    expect(validate(FILE)).toBe(true);
    expect(validate({ ...FILE, tempo: 'slow' })).toBe(false);
    expect(validate({ ...FILE, aims: [] })).toBe(false);
  });

  it.each([
    ['not JSON', '{', /not JSON/],
    ['another JSON', '{"format":"other"}', /no lesson sheet/],
    ['null', 'null', /no lesson sheet/],
    ['a later version', JSON.stringify({ ...FILE, version: 2 }), /version 2/],
    ['no aim', JSON.stringify({ ...FILE, aims: [] }), /"aims"/],
    ['an aim of no name', JSON.stringify({ ...FILE, aims: [{ id: 'fly' }] }), /"aims/],
    ['a tempo that nobody plays', JSON.stringify({ ...FILE, tempo: 900 }), /"tempo"/],
    ['a chart that is none', JSON.stringify({ ...FILE, chart: 'C F G' }), /bar lines/],
    ['a field of its own', JSON.stringify({ ...FILE, colour: 'red' }), /"colour"/],
    ['a megabyte', `"${'x'.repeat(1_000_000)}"`, /longer than/],
  ])('says in one sentence what is wrong: %s', (_, text, reason) => {
    expect(sentence(text)).toMatch(reason);
    expect(sentence(text)).toMatch(/\.$/);
  });
});

describe('the mark', () => {
  // Published test values of FNV-1a with 64 bits (IETF draft-eastlake-fnv, test vectors).
  it.each([
    ['', 'cbf29ce484222325'],
    ['a', 'af63dc4c8601ec8c'],
    ['foobar', '85944171f73967e8'],
  ])('of "%s" is the published hash', (text, hash) => {
    expect(markOfText(text)).toBe(hash);
  });
});
