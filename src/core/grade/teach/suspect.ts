/**
 * Whether the take fits its chart far better somewhere else: in another key, or begun some beats earlier or later. A
 * wrong key or a wrong first beat is the first thing to say, since nothing else on the page means anything then.
 */
import { standardDeviation, tailFrom } from '../../base/statistics.ts';
import type { Chord } from '../../music/chord.ts';
import { keyOn } from '../../music/keys.ts';
import { wrapPitchClass } from '../../music/spelling.ts';
import type { Timeline } from '../../chart/timeline.ts';
import type { Suspected } from '../../take/schema.ts';
import type { GradedNote } from '../assign/graded-note.ts';
import { holds, maskReader } from '../assign/tone-sets.ts';
import { pitchClassShares } from '../chance/chance.ts';
import { luckOf, type LuckEvent } from '../chance/draws.ts';
import { barsOfNotes, figureAt, differentBars } from '../chance/figures.ts';
import { LEAST_EVENTS } from '../chance/verdict.ts';
import { followsElsewhere } from './place-by-luck.ts';

/** Fewer notes fit anything. */
const LEAST_NOTES = 24;
/**
 * How much better it must fit: so many notes in a hundred more on chord tones, and so many standard errors between bars.
 * Of 1600 made players who wander two are told of a better key or place, of 4800 who repeat riffs none, nor any of six
 * transcribed solos (tests/bench/luck-bench.ts); of lines that follow the chords of a key a whole step off all are.
 */
const KEY_GAIN = 0.15;
const PLACE_GAIN = 0.1;
const KEY_ERRORS = 4;
const PLACE_ERRORS = 3.5;
/** Fewer different bars than these have no spread to measure it by. */
const LEAST_BARS = 6;
/**
 * Or so many landings, on the thirds of the chords of another key, that luck gives as many in one take of five thousand: a
 * line that arrives on every third was played in that key, if its other notes fit there better at all: one that leans on
 * a neighbour of each third was not.
 */
const LANDINGS_BY_LUCK = 0.0002;

/**
 * A line in the blues scale of the chart's own key is played in that key, however many of its notes another key's chords
 * hold: Bb minor pentatonic over rhythm changes in Bb fits chords in Db better (common practice: the blues scale of the key
 * over all its chords).
 */
const BLUES_SCALE: readonly number[] = [0, 3, 5, 6, 7, 10];
const IN_BLUES_SCALE = 0.9;

interface Candidate {
  readonly semitones: number;
  readonly beats: number;
}

/** A landing that the line does not put right, and the chord that it is for. */
export interface Landed {
  readonly note: GradedNote;
  readonly chord: Chord;
}

/**
 * @param landed the take's landings
 * @param followsHere whether the landings show that the chords are followed as they are: no other key is told then
 * @returns null where the take fits its chart where it stands, or nothing better can be told
 */
export function suspectChart(
  notes: readonly GradedNote[],
  landed: readonly Landed[],
  timeline: Timeline,
  toleranceSeconds: number,
  followsHere: boolean,
): Suspected | null {
  const asked = notes.filter(({ chord, onsetBeat }) => chord !== null && onsetBeat >= 0);
  if (asked.length < LEAST_NOTES) return null;
  const bars = differentBars(asked, timeline, toleranceSeconds);
  const counted = barsOfNotes(asked, timeline, toleranceSeconds);
  const inBars = asked.map((note, i) => ({ note, bar: counted[i]!, figure: bars[i]! }));
  const follows = followsElsewhere(inBars, pitchClassShares(notes), chordReader(timeline));
  const fits = fitReader(timeline);
  const here = asked.map((note) => fits(note, { semitones: 0, beats: 0 }));
  const shareHere = meanOf(here);
  const tried = candidates(timeline).map((candidate) => {
    const there = asked.map((note) => fits(note, candidate));
    const gains = new Map<number, number>();
    there.forEach((hit, i) => gains.set(bars[i]!, (gains.get(bars[i]!) ?? 0) + hit - here[i]!));
    return { candidate, shareThere: meanOf(there), errors: standardErrors([...gains.values()]) };
  });
  const byLandings = keyByLandings(landed, notes);
  const isBlues = inBluesScale(asked, timeline.key.tonicPitchClass) >= IN_BLUES_SCALE;
  const [best] = tried
    .filter(({ candidate, shareThere, errors }) => {
      const isKey = candidate.beats === 0;
      if (isKey && followsHere) return false;
      const gain = shareThere - shareHere;
      if (isKey && candidate.semitones === byLandings) return gain > 0;
      if (isKey && isBlues) return false;
      if (!isKey && gain > 0 && follows(candidate.beats)) return true;
      return gain >= (isKey ? KEY_GAIN : PLACE_GAIN) && errors >= (isKey ? KEY_ERRORS : PLACE_ERRORS);
    })
    .sort((a, b) => Number(isByLandings(b)) - Number(isByLandings(a)) || b.shareThere - a.shareThere);
  function isByLandings({ candidate }: { readonly candidate: Candidate }): boolean {
    return candidate.beats === 0 && candidate.semitones === byLandings;
  }
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

/** How far up the chords would have to move for the landings to be their thirds; null where no key is told so. */
function keyByLandings(landed: readonly Landed[], notes: readonly GradedNote[]): number | null {
  const own = pitchClassShares(notes);
  const thirdsOf = maskReader();
  const found = KEYS.map(({ semitones }) => {
    const events = landed.flatMap(({ note, chord }): readonly LuckEvent[] => {
      const mask = thirdsOf(chord).thirds;
      const counts = (pitchClass: number) => holds(mask, wrapPitchClass(pitchClass - semitones));
      if (mask === 0) return [];
      const figure = figureAt(notes, note.index);
      return [{ figure, hit: counts(note.pitchClass), hasEarlier: false, hasLater: false, counts }];
    });
    const hits = events.filter(({ hit }) => hit).length;
    return {
      semitones,
      hits,
      tail: events.length < LEAST_EVENTS ? 1 : tailFrom(luckOf(events, own).total, hits),
    };
  });
  const [best] = found.sort((a, b) => a.tail - b.tail);
  return best !== undefined && best.tail < LANDINGS_BY_LUCK ? best.semitones : null;
}

/** Every other key, from five half steps down to six up. */
const KEYS: readonly Candidate[] = Array.from({ length: 11 }, (_, i) => ({
  semitones: i < 6 ? i + 1 : i - 11,
  beats: 0,
}));

/** How many standard errors the mean of the bars' gains lies above nought. */
function standardErrors(gains: readonly number[]): number {
  const spread = standardDeviation(gains);
  if (spread === null || gains.length < LEAST_BARS) return 0;
  const error = Math.max(spread, LEAST_SPREAD) / Math.sqrt(gains.length);
  return meanOf(gains) / error;
}

/** The least spread between bars, in notes a bar: where all bars gain the same, the gain would look surer than it is. */
const LEAST_SPREAD = 0.5;

/**
 * So far off a line is looked for, in bars: half of the longest form that is usual (ninety-six bars; common practice). In a
 * chart of thousands of bars, as a list of beats is one, every bar tried would cost as much as the square of its length.
 */
const MOST_BARS_OFF = 48;

/**
 * Every other key; up to a bar earlier or later by beats; and up to half the form by whole bars, as a line lies that was
 * played elsewhere in the form, or copied from there.
 */
function candidates({ beatsPerBar, bars }: Timeline): readonly Candidate[] {
  const places = Array.from({ length: beatsPerBar }, (_, i) => [i + 1, -i - 1]).flat();
  const half = Math.min(MOST_BARS_OFF, Math.floor(bars / 2));
  const far = Array.from({ length: Math.max(0, half - 1) }, (_, i) => [i + 2, -i - 2])
    .flat()
    // Half a form earlier is half a form later.
    .filter((by) => 2 * by !== -bars)
    .map((by) => by * beatsPerBar);
  return [...KEYS, ...[...places, ...far].map((beats) => ({ semitones: 0, beats }))];
}

const inBluesScale = (notes: readonly GradedNote[], tonic: number): number =>
  meanOf(notes.map(({ pitchClass }) => (BLUES_SCALE.includes(wrapPitchClass(pitchClass - tonic)) ? 1 : 0)));

/** Before its beginning a chart that goes round has its end. */
function chordReader(timeline: Timeline): Timeline['chordAt'] {
  const goesRound = timeline.beatMap.bpm !== null;
  return (beat) => timeline.chordAt(goesRound && beat < 0 ? beat + timeline.roundBeats : beat);
}

/** 1 where the chord that would stand at the onset holds the note, else 0. */
function fitReader(timeline: Timeline): (note: GradedNote, candidate: Candidate) => number {
  const masks = maskReader();
  const chordAt = chordReader(timeline);
  return ({ onsetBeat, pitchClass }, { semitones, beats }) => {
    const chord = chordAt(onsetBeat - beats);
    return chord !== null && holds(masks(chord).chordTones, wrapPitchClass(pitchClass - semitones)) ? 1 : 0;
  };
}

const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;
