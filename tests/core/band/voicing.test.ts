/**
 * Against rules that any jazz harmony textbook teaches (common practice; from memory, no book at hand): guide tones
 * in every voicing, the guide tones of a ii–V–I by half and whole steps, no parallel octaves of bass and top.
 */
import { describe, expect, it } from 'vitest';
import { parseChord } from '../../../src/core/music/parse-chord.ts';
import type { Chord, Key } from '../../../src/core/music/chord.ts';
import {
  bassPitchClass,
  motion,
  placings,
  voiceChords,
  voicedTones,
  voicingRange,
} from '../../../src/core/band/voicing.ts';
import { chartTexts, formOf } from './forms.ts';

const chord = (symbol: string): Chord => {
  const read = parseChord(symbol);
  if (!read) throw new Error(`${symbol} is no chord`);
  return read;
};
const inC: Key = { tonic: 'C', tonicPitchClass: 0, mode: 'major' };
const roots = ['C', 'Db', 'D', 'Eb', 'E', 'F', 'Gb', 'G', 'Ab', 'A', 'Bb', 'B'];
const qualities = [
  '',
  'm',
  '7',
  'maj7',
  'm7',
  'm7b5',
  'dim7',
  '6',
  'm6',
  '9',
  '13',
  '7b9',
  '7#9',
  '7alt',
  '7sus4',
  '7#11',
  'm9',
  'maj9',
  'aug',
  '6/9',
  'm(maj7)',
  '13b9',
];

describe('voicing', () => {
  it('holds third and seventh (or sixth) of every quality in every key', () => {
    for (const root of roots) {
      for (const quality of qualities) {
        const named = chord(root + quality);
        const [voicing] = voiceChords([named], inC, true);
        const classes = voicing!.map((midi) => midi % 12);
        for (const tone of named.tones.filter(({ role }) => role === 'third' || role === 'seventh')) {
          expect(classes, `${named.symbol}: ${tone.degree}`).toContain(tone.pitchClass);
        }
      }
    }
  });

  it("stays below the player's range and can be played by one hand and a half", () => {
    for (const root of roots) {
      for (const quality of qualities) {
        for (const midi of voiceChords([chord(root + quality)], inC, true)[0]!) {
          expect(midi).toBeGreaterThanOrEqual(voicingRange.lowest);
          expect(midi).toBeLessThanOrEqual(voicingRange.highest);
        }
      }
    }
  });

  it('leads ii–V–I by its guide tones in every key: the seventh falls a half step to the third, the third stays', () => {
    for (const root of roots) {
      const i = chord(root).rootPitchClass;
      const name = (semitones: number) => roots[(i + semitones) % 12]!;
      const changes = [chord(`${name(2)}m7`), chord(`${name(7)}7`), chord(`${name(0)}maj7`)];
      const key: Key = { tonic: root, tonicPitchClass: i, mode: 'major' };
      const voiced = voiceChords(changes, key, false);
      const place = (at: number, semitones: number) =>
        voiced[at]!.find((midi) => midi % 12 === (i + semitones) % 12)!;
      // The fourth of the key is third of ii and seventh of V; the octave of the key falls to its seventh degree.
      expect(place(1, 5) - place(0, 5), root).toBe(0);
      expect(place(1, 11) - place(0, 0), root).toBe(-1);
      expect(place(2, 4) - place(1, 5), root).toBe(-1);
      expect(place(2, 11) - place(1, 11), root).toBe(0);
    }
  });

  it('moves as little as any choice of placings could, within the price of a better top and place', () => {
    for (const text of chartTexts) {
      const form = formOf(text);
      const chords = form.spans.flatMap((span) => (span.chord ? [span.chord] : []));
      const voiced = voiceChords(chords, form.key, true);
      voiced.forEach((voicing, i) => {
        const before = voiced[i - 1];
        if (!before) return;
        const all = placings(voicedTones(chords[i]!, form.key, true));
        if (all.length === 0) return;
        const least = Math.min(...all.map((other) => motion(before, other)));
        expect(motion(before, voicing) - least, chords[i]!.symbol).toBeLessThanOrEqual(4);
      });
    }
  });

  it('never moves bass and top voice in parallel octaves', () => {
    for (const text of chartTexts) {
      const form = formOf(text);
      const chords = form.spans.flatMap((span) => (span.chord ? [span.chord] : []));
      const voiced = voiceChords(chords, form.key, true);
      const doubled = voiced.map((voicing, i) => voicing.at(-1)! % 12 === bassPitchClass(chords[i]!));
      doubled.forEach((here, i) => {
        const moves = i > 0 && voiced[i]!.at(-1) !== voiced[i - 1]!.at(-1);
        expect(here && doubled[i - 1] === true && moves, `${text} at ${chords[i]!.symbol}`).toBe(false);
      });
    }
  });
});
