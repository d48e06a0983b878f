/**
 * What transposing players read. Facts of the instruments: common practice, as any orchestration handbook has them
 * (trumpet in B flat written a major second above what sounds, tenor a major ninth, alto a major sixth, baritone a
 * major sixth and an octave; guitar and bass an octave, which changes no name).
 */
import { english } from '../../english.ts';
import { grade } from '../../../src/core/grade.ts';
import { adviceSentence } from '../../../src/core/report/advice-sentence.ts';
import type { Report } from '../../../src/core/take/schema.ts';
import { en } from '../../../src/core/words/en.ts';
import { describe, expect, it } from 'vitest';
import { intervalAsRead, timelineAsRead } from '../../../src/core/chart/as-read.ts';
import { timelineFromBeats } from '../../../src/core/chart/build-timeline.ts';
import { INSTRUMENTS, instrumentOf } from '../../../src/core/music/instruments.ts';
import { parseKey, writeKey } from '../../../src/core/music/keys.ts';
import { noteName } from '../../../src/core/music/pitch-names.ts';
import { CONCERT, keyAsRead, midiOfName, pitchedIn, readingOf } from '../../../src/core/music/reading.ts';
import { suspectedSentence } from '../../../src/core/report/sentences.ts';
import { landingAsRead, reportAsRead } from '../../../src/core/report/as-read.ts';
import { chart, gradeLine } from '../grade/line.ts';

const read = (id: string) => readingOf(instrumentOf(id), 'written');

describe('how a player reads', () => {
  it.each([
    ['trumpet', 2, 'Bb'],
    ['clarinet', 2, 'Bb'],
    ['soprano-sax', 2, 'Bb'],
    ['tenor-sax', 14, 'Bb'],
    ['alto-sax', 9, 'Eb'],
    ['baritone-sax', 21, 'Eb'],
  ])('%s reads %i semitones above what sounds and stands in %s', (id, semitones, name) => {
    expect(read(id).semitones).toBe(semitones);
    expect(pitchedIn(instrumentOf(id)!)).toBe(name);
  });

  it('does not rename notes that are written an octave higher or lower', () => {
    for (const id of ['guitar', 'guitar-8', 'bass', 'bass-5', 'violin', 'piano', 'flute']) {
      expect(read(id)).toBe(CONCERT);
      expect(pitchedIn(instrumentOf(id)!)).toBeNull();
    }
    expect(readingOf(instrumentOf('alto-sax'), 'concert')).toBe(CONCERT);
    expect(readingOf(null, 'written')).toBe(CONCERT);
  });

  it.each([
    ['trumpet', 'Bb', 'C'],
    ['tenor-sax', 'F', 'G'],
    ['alto-sax', 'Eb', 'C'],
    ['alto-sax', 'A', 'F#'],
    ['baritone-sax', 'C minor', 'A minor'],
    // Signatures that are in use: nobody is asked to read in G sharp major.
    ['tenor-sax', 'F#', 'Ab'],
    ['tenor-sax', 'Gb', 'Ab'],
  ])('%s reads concert %s in %s', (id, concert, written) => {
    expect(writeKey(keyAsRead(parseKey(concert)!, read(id)))).toBe(written);
  });

  it('reads note names back to the numbers they were made of', () => {
    for (let midi = 24; midi < 108; midi += 1) expect(midiOfName(noteName(midi))).toBe(midi);
    expect([midiOfName('Cb4'), midiOfName('B#3'), midiOfName('A4')]).toEqual([59, 60, 69]);
    expect([midiOfName('Ebb4'), midiOfName('F##4'), midiOfName('E10'), midiOfName('C-1')]).toEqual([
      62, 67, 136, 0,
    ]);
    for (const name of ['H4', 'xE4', 'E4x', 'E', 'Eb#4'])
      expect(() => midiOfName(name)).toThrow(`"${name}" is no note with its octave`);
  });
});

describe('a chart as it is read', () => {
  it('moves every chord with its bass and nothing of its time', () => {
    const concert = chart('| Bb7 | Eb7/G | Bbm7b5 | F7#9 Bbmaj7 |', { key: 'Bb' });
    const tenor = timelineAsRead(concert, read('tenor-sax'));
    const names = (timeline: typeof concert) =>
      timeline.spansBetween(0, 16).map(({ startBeat, chord }) => [startBeat, chord?.symbol]);
    expect(names(tenor)).toEqual([
      [0, 'C7'],
      [4, 'F7/A'],
      [8, 'Cm7b5'],
      [12, 'G7#9'],
      [14, 'Cmaj7'],
    ]);
    expect(tenor.beatMap.secondsAt(7)).toBe(concert.beatMap.secondsAt(7));
    expect(timelineAsRead(concert, CONCERT)).toBe(concert);
    // A chord asked for twice is one value.
    expect(tenor.chordAt(1)).toBe(tenor.chordAt(2));
    expect(tenor.nextChange(1)?.chord?.symbol).toBe('F7/A');
    expect(tenor.chart).toContain('F7/A');
  });

  it('moves beats that were listed too, and spells as the key that is read', () => {
    const rows = ['B7', '', 'E7', ''].map((chord, i) => ({ timeSeconds: i, chord }));
    const listed = timelineFromBeats(rows, { key: parseKey('F#')! });
    if (!listed.ok) throw new Error(english(listed.problem));
    const tenor = timelineAsRead(listed.value, read('tenor-sax'));
    expect([tenor.key.tonic, tenor.chordAt(0)?.symbol, tenor.chordAt(2.5)?.symbol]).toEqual([
      'Ab',
      'Db7',
      'Gb7',
    ]);
    expect(intervalAsRead(listed.value, tenor)).not.toBe('2M');
  });
});

describe('a report as it is read', () => {
  const timeline = chart('| C7 | F7 | C7 | G7 |', { key: 'C' });
  // E over C7, a flat third left over F7, F over C7, B over G7.
  const report = gradeLine('| C7 | F7 | C7 | G7 |', [
    [0, 1, 64],
    [4, 1, 68],
    [8, 2, 65],
    [12, 1, 71],
  ]);

  it('names what stands on the page, for every transposing instrument, and counts the same', () => {
    for (const instrument of INSTRUMENTS.filter((one) => pitchedIn(one) !== null)) {
      const reading = readingOf(instrument, 'written');
      const written = reportAsRead(report, reading);
      for (const [i, note] of report.notes.entries()) {
        expect(midiOfName(written.notes[i]!.spelling)).toBe(midiOfName(note.spelling) + reading.semitones);
        expect(written.notes[i]!.degree).toBe(note.degree);
        expect(written.notes[i]!.role).toBe(note.role);
        expect(written.notes[i]!.onsetSeconds).toBe(note.onsetSeconds);
      }
      expect(written.shares).toEqual(report.shares);
      expect(written.summary).toEqual(report.summary);
      expect(written.landings.map(({ degree, beat }) => [degree, beat])).toEqual(
        report.landings.map(({ degree, beat }) => [degree, beat]),
      );
      expect(written.advice.length).toBe(report.advice.length);
    }
  });

  it('gives the names that grading the moved line over the moved chart gives', () => {
    const asWritten = ({ notes, landings, phrases, changes, palette, advice, timeline }: Report) => ({
      ...{ notes, landings, phrases, changes, palette, timeline },
      advice: advice.map((piece) => ({ ...piece, where: null })),
    });
    for (const instrument of INSTRUMENTS.filter((one) => pitchedIn(one) !== null)) {
      const reading = readingOf(instrument, 'written');
      const moved = report.notes.map((note) => ({
        ...note,
        midi: note.midi + reading.semitones,
        confidence: 1,
        levelDb: null,
        second: null,
      }));
      const graded = grade(moved, timelineAsRead(timeline, reading), {
        source: report.source,
        referenceHz: report.tuning.referenceHz,
      });
      expect(asWritten(reportAsRead(report, reading))).toEqual(asWritten(graded));
    }
  });

  it('says it in its sentences too: an alto reads A7 where C7 sounds', () => {
    const reading = read('alto-sax');
    const written = reportAsRead(report, reading);
    expect(written.landings.map(({ chord }) => chord)).toEqual(['A7', 'D7', 'A7', 'E7']);
    const told = written.advice.find(({ chord }) => chord === 'A7');
    expect(adviceSentence(told!, en)).toMatch(/A7 .*\bD\b.*\bC#/s);
    expect(written.advice.map((piece) => adviceSentence(piece, en)).join(' ')).not.toMatch(/\bC7\b|\bF7\b/);
    expect(landingAsRead(report.landings[1]!, reading.interval).chord).toBe('D7');
    expect(landingAsRead(report.landings[1]!, reading.interval).fromChord).toBe('A7');
  });

  it('names the key that a take fits better as it is written: an alto reads B where D sounds', () => {
    const suspected = {
      what: 'key',
      semitones: 2,
      beats: 0,
      tonic: 'D',
      shareHere: 0.3,
      shareThere: 0.8,
    } as const;
    const written = reportAsRead({ ...report, suspected }, read('alto-sax'));
    expect(suspectedSentence(written, en)).toContain('This fits B major better than A major');
  });

  it('at concert pitch it is the report itself', () => {
    expect(reportAsRead(report, CONCERT)).toBe(report);
  });
});
