/**
 * Whether the take fits its chart far better somewhere else: in another key, or begun some beats earlier or later. A
 * wrong key or a wrong first beat is the first thing to say, since nothing else on the page means anything then.
 */
import { standardDeviation } from '../../base/statistics.ts';
import { keyOn } from '../../music/keys.ts';
import { wrapPitchClass } from '../../music/spelling.ts';
import type { Timeline } from '../../chart/timeline.ts';
import type { Suspected } from '../../take/schema.ts';
import type { GradedNote } from '../assign/graded-note.ts';
import { holds, maskReader } from '../assign/tone-sets.ts';
import { figureOfBars } from '../chance/figures.ts';

/** Fewer notes fit anything. */
const LEAST_NOTES = 24;
/**
 * How much better it must fit: so many notes in a hundred more on chord tones, and so many standard errors between bars.
 * Of 800 made players who wander and 600 who repeat riffs none is told of a better key or place, nor of six transcribed
 * solos (tests/bench/luck-bench.ts); of lines that follow the chords of a key a whole step off all are.
 */
const KEY_GAIN = 0.15;
const PLACE_GAIN = 0.1;
const KEY_ERRORS = 4;
const PLACE_ERRORS = 3.5;
/** Fewer different bars than these have no spread to measure it by. */
const LEAST_BARS = 6;

interface Candidate {
  readonly semitones: number;
  readonly beats: number;
}

/** @returns null where the take fits its chart where it stands, or nothing better can be told */
export function suspectChart(
  notes: readonly GradedNote[],
  timeline: Timeline,
  toleranceSeconds: number,
): Suspected | null {
  const asked = notes.filter(({ chord, onsetBeat }) => chord !== null && onsetBeat >= 0);
  if (asked.length < LEAST_NOTES) return null;
  const bars = figureOfBars(asked, timeline, toleranceSeconds);
  const fits = fitReader(timeline);
  const here = asked.map((note) => fits(note, { semitones: 0, beats: 0 }));
  const shareHere = meanOf(here);
  const tried = candidates(timeline).map((candidate) => {
    const there = asked.map((note) => fits(note, candidate));
    const gains = new Map<number, number>();
    there.forEach((hit, i) => gains.set(bars[i]!, (gains.get(bars[i]!) ?? 0) + hit - here[i]!));
    return { candidate, shareThere: meanOf(there), errors: standardErrors([...gains.values()]) };
  });
  const [best] = tried
    .filter(({ candidate, shareThere, errors }) => {
      const isKey = candidate.beats === 0;
      const gain = shareThere - shareHere;
      return gain >= (isKey ? KEY_GAIN : PLACE_GAIN) && errors >= (isKey ? KEY_ERRORS : PLACE_ERRORS);
    })
    .sort((a, b) => b.shareThere - a.shareThere);
  if (best === undefined) return null;
  const { semitones, beats } = best.candidate;
  const { key } = timeline;
  return {
    what: beats === 0 ? 'key' : 'place',
    semitones,
    beats,
    tonic:
      semitones === 0 ? key.tonic : keyOn(wrapPitchClass(key.tonicPitchClass + semitones), key.mode).tonic,
    shareHere,
    shareThere: best.shareThere,
  };
}

/** How many standard errors the mean of the bars' gains lies above nought. */
function standardErrors(gains: readonly number[]): number {
  const spread = standardDeviation(gains);
  if (spread === null || gains.length < LEAST_BARS) return 0;
  const error = Math.max(spread, LEAST_SPREAD) / Math.sqrt(gains.length);
  return meanOf(gains) / error;
}

/** Bars that all gain alike are no surer than this, in notes a bar. */
const LEAST_SPREAD = 0.5;

/** Every other key, and up to a bar earlier or later by beats. */
function candidates({ beatsPerBar }: Timeline): readonly Candidate[] {
  const keys = Array.from({ length: 11 }, (_, i) => ({ semitones: i < 6 ? i + 1 : i - 11, beats: 0 }));
  const places = Array.from({ length: beatsPerBar }, (_, i) => [i + 1, -i - 1]).flat();
  return [...keys, ...places.map((beats) => ({ semitones: 0, beats }))];
}

/** 1 where the chord that would stand at the onset holds the note, else 0. */
function fitReader(timeline: Timeline): (note: GradedNote, candidate: Candidate) => number {
  const masks = maskReader();
  const goesRound = timeline.beatMap.bpm !== null;
  return ({ onsetBeat, pitchClass }, { semitones, beats }) => {
    const moved = onsetBeat - beats;
    const beat = goesRound && moved < 0 ? moved + timeline.roundBeats : moved;
    const chord = timeline.chordAt(beat);
    return chord !== null && holds(masks(chord).chordTones, wrapPitchClass(pitchClass - semitones)) ? 1 : 0;
  };
}

const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;
