/**
 * The score: rules of MusicXML 4.0 (w3.org/2021/06/musicxml40) that a schema does not hold, and its chords read back by
 * the reader of chart files. Its schema itself: tests/outside/musicxml-readers.test.ts.
 */
import type { XmlElement } from '@rgrove/parse-xml';
import { describe, expect, it } from 'vitest';
import { readMusicXml } from '../../../src/core/files/charts/read-musicxml.ts';
import { childrenOf, firstOf, numberOf, readXml, textOf } from '../../../src/core/files/bytes/xml.ts';
import { writeScore } from '../../../src/core/notation/write-score.ts';
import { english } from '../../english.ts';
import { PAGES, pageOf } from './scores.ts';

const names = { title: 'A take & <its> title', part: 'Guitar' };
const rootOf = (score: string): XmlElement => {
  const root = readXml(score);
  if (root === null) throw new Error('not well formed');
  return root;
};
const measuresOf = (score: string) => childrenOf(firstOf(rootOf(score), 'part')!, 'measure');
const notesOf = (score: string) => measuresOf(score).flatMap((measure) => childrenOf(measure, 'note'));
const ticksOf = (note: XmlElement) =>
  firstOf(note, 'chord') || firstOf(note, 'grace') ? 0 : numberOf(textOf(note, 'duration'))!;
const staffOf = (note: XmlElement) => textOf(note, 'staff') ?? '1';

describe.each(PAGES)('$name', ({ page }) => {
  const written = page();
  const score = writeScore(written, names);

  it('has measures that are as long as their meter, on each staff', () => {
    for (const [i, measure] of measuresOf(score).entries()) {
      const ticks = written.line.measures[i]!.ticks;
      const notes = childrenOf(measure, 'note');
      for (const staff of new Set(notes.map(staffOf))) {
        const own = notes.filter((note) => staffOf(note) === staff);
        expect(own.reduce((sum, note) => sum + ticksOf(note), 0)).toBe(ticks);
      }
    }
  });

  it('writes values that last as long as they sound', () => {
    const quarters: Readonly<Record<string, number>> = {
      whole: 4,
      half: 2,
      quarter: 1,
      eighth: 0.5,
      '16th': 0.25,
      '32nd': 0.125,
      '64th': 0.0625,
    };
    for (const note of notesOf(score)) {
      const type = textOf(note, 'type');
      if (type === null || firstOf(note, 'grace')) continue;
      const actual = numberOf(textOf(note, 'time-modification', 'actual-notes')) ?? 1;
      const normal = numberOf(textOf(note, 'time-modification', 'normal-notes')) ?? 1;
      const dotted = firstOf(note, 'dot') ? 1.5 : 1;
      expect(numberOf(textOf(note, 'duration'))).toBe((quarters[type]! * 120 * dotted * normal) / actual);
    }
  });

  it('starts each tie that it stops, at the same pitch, and each group', () => {
    let open = '';
    let groups = 0;
    for (const note of notesOf(score).filter((one) => staffOf(one) === '1' && !firstOf(one, 'chord'))) {
      const pitch = ['step', 'alter', 'octave'].map((part) => textOf(note, 'pitch', part) ?? '').join();
      const ties = childrenOf(note, 'tie').map(({ attributes }) => attributes['type']);
      const marks = childrenOf(firstOf(note, 'notations') ?? note, 'tuplet');
      if (ties.includes('stop')) expect(pitch).toBe(open);
      open = ties.includes('start') ? pitch : '';
      for (const { attributes } of marks) groups += attributes['type'] === 'start' ? 1 : -1;
      expect([0, 1]).toContain(groups);
    }
    expect(open).toBe('');
    expect(groups).toBe(0);
  });

  it('gives its chords back to the reader of charts', () => {
    const read = readMusicXml(score, 'it');
    if (!read.ok) throw new Error(english(read.problem));
    expect(read.value.warnings).toEqual([]);
    const bars = read.value.chart.sections.flatMap((section) => section.bars);
    const { measures, beatTicks } = written.line;
    // Before the first downbeat there is no chord.
    const first = measures[0]!.bar;
    bars.forEach((bar, i) => {
      const ticks = measures[i]!.ticks;
      const from = ((first + i) * ticks) / beatTicks;
      const timeline = page() as ReturnType<typeof pageOf>;
      const expected = timeline.timeline.chordAt(from)?.symbol ?? null;
      expect(bar.chords[0]?.chord?.symbol ?? null).toBe(expected);
    });
    expect(bars).toHaveLength(measures.length);
  });
});

describe('a score', () => {
  const pitchOf = (note: XmlElement) =>
    `${textOf(note, 'pitch', 'step')}${textOf(note, 'pitch', 'alter') ?? ''}:${textOf(note, 'pitch', 'octave')}`;
  const one = (instrument: string, midi: number, more = {}) =>
    writeScore(pageOf('key: C\n| C7 |', [[0, 4, midi]], { instrument, ...more }), names);

  it('escapes the names of the take', () => {
    expect(textOf(rootOf(one('guitar', 60)), 'work', 'work-title')).toBe(names.title);
  });

  it('writes a guitar an octave above what sounds, and says so', () => {
    const score = one('guitar', 64);
    expect(notesOf(score).map(pitchOf)).toEqual(['E:5', 'E:5']);
    expect(textOf(measuresOf(score)[0]!, 'attributes', 'transpose', 'octave-change')).toBe('-1');
  });

  // Transpositions: common practice; the numbers as the standard's examples of the transpose element have them.
  it.each([
    ['tenor-sax', 58, 'C:5', ['-1', '-2', '-1']],
    ['trumpet', 58, 'C:4', ['-1', '-2', null]],
    ['alto-sax', 51, 'C:4', ['-5', '-9', null]],
    ['baritone-sax', 51, 'C:5', ['-5', '-9', '-1']],
  ])('writes a %s as it reads', (instrument, midi, pitch, transpose) => {
    const score = one(instrument, midi);
    expect(notesOf(score).map(pitchOf)).toEqual([pitch]);
    const element = firstOf(measuresOf(score)[0]!, 'attributes', 'transpose')!;
    expect(['diatonic', 'chromatic', 'octave-change'].map((part) => textOf(element, part))).toEqual(
      transpose,
    );
  });

  it('writes a saxophone at concert pitch where that is wanted', () => {
    const score = one('tenor-sax', 58, { pitch: 'concert' });
    expect(notesOf(score).map(pitchOf)).toEqual(['B-1:3']);
    expect(firstOf(measuresOf(score)[0]!, 'attributes', 'transpose')).toBeNull();
  });

  it('has the degrees as lyrics, once for each note', () => {
    const score = writeScore(
      pageOf('key: C\n| C7 | F7 |', [
        [0, 1, 64],
        [1, 4, 70],
        [5, 1, 69],
      ]),
      names,
    );
    const lyrics = notesOf(score).flatMap((note) => textOf(note, 'lyric', 'text') ?? []);
    expect(lyrics).toEqual(['3', '♭7', '3']);
  });

  it('has strings and frets, the capo and the tuning', () => {
    const score = writeScore(pageOf('key: C\n| C7 |', [[0, 4, 62]], { capo: 2 }), names);
    const tab = notesOf(score).find((note) => staffOf(note) === '2')!;
    const place = firstOf(tab, 'notations', 'technical')!;
    const open = [40, 45, 50, 55, 59, 64];
    const [string, fret] = [Number(textOf(place, 'string')), Number(textOf(place, 'fret'))];
    // The capo moves the open strings: the standard's capo element.
    expect(open[6 - string]! + 2 + fret).toBe(62);
    const details = firstOf(measuresOf(score)[0]!, 'attributes', 'staff-details')!;
    expect(textOf(details, 'capo')).toBe('2');
    const tunings = childrenOf(details, 'staff-tuning');
    expect(
      tunings.map((tuning) => (textOf(tuning, 'tuning-step') ?? '') + textOf(tuning, 'tuning-octave')),
    ).toEqual(['E2', 'A2', 'D3', 'G3', 'B3', 'E4']);
  });

  it('names its choruses, restates their first chord, and parts them by a double bar', () => {
    const score = writeScore(
      pageOf('key: C\n| C7 | C7 |', [
        [0, 4, 64],
        [8, 4, 67],
        [16, 2, 70],
      ]),
      names,
    );
    const measures = measuresOf(score);
    expect(measures.map((measure) => textOf(measure, 'direction', 'direction-type', 'rehearsal'))).toEqual([
      '1',
      null,
      '2',
      null,
      '3',
    ]);
    expect(measures.map((measure) => childrenOf(measure, 'harmony').length)).toEqual([1, 0, 1, 0, 1]);
    expect(measures.map((measure) => textOf(measure, 'barline', 'bar-style'))).toEqual([
      null,
      'light-light',
      null,
      'light-light',
      'light-heavy',
    ]);
  });

  it('frets a bend where it starts', () => {
    const score = writeScore(pageOf('key: C\n| C7 |', [[0, 4, 67, { bendSemitones: 2 }]]), names);
    const tab = firstOf(
      notesOf(score).find((note) => staffOf(note) === '2')!,
      'notations',
      'technical',
    )!;
    const [string, fret] = [Number(textOf(tab, 'string')), Number(textOf(tab, 'fret'))];
    expect([40, 45, 50, 55, 59, 64][6 - string]! + fret).toBe(65);
    expect(textOf(tab, 'bend', 'bend-alter')).toBe('2');
  });
});
