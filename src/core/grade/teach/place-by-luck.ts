/**
 * Whether the line follows the chords of another place so well that luck does not bring it: a move by a beat or two, which
 * leaves most notes over the chord that they were meant for.
 *
 * Each note is weighed by how much likelier it is over the chord of the other place than over the one where it stands (a
 * log-likelihood ratio). A player is taken to draw from the chord as often as from the own stock of pitch classes. By luck,
 * each note is drawn from that stock alone; bars that come again are drawn once (figures.ts).
 */
import { standardDeviation } from '../../base/statistics.ts';
import type { Chord } from '../../music/chord.ts';
import type { Timeline } from '../../chart/timeline.ts';
import type { GradedNote } from '../assign/graded-note.ts';
import { holds, maskReader } from '../assign/tone-sets.ts';

/**
 * So many standard deviations of luck the sum of all notes must lie above its mean, and so many standard errors between
 * bars above nought. Tried on made players (seeds 3000 to 3399) and on transcribed solos in pieces of 64 beats: of 800
 * takes of players who wander two are told of another place, of 2400 who repeat riffs or land on thirds, and of 30 pieces
 * of solos, none; tests/bench/moved-takes.ts measures it on other seeds.
 */
const LEAST_DEVIATIONS = 3.5;
const LEAST_ERRORS = 2.5;
/** Fewer different bars than these have no spread to measure it by. */
const LEAST_BARS = 6;
/** How often a note is drawn from its chord, on a beat and beside it: what is on a beat follows the chord more often. */
const FROM_CHORD = { onBeat: 0.5, beside: 0.35 } as const;
/** In beats: as near as this a note is on the beat. */
const ON_BEAT = 0.15;
/** Added to the player's share of each pitch class, so that none is impossible. */
const LEAST_SHARE = 0.01;

/** A note with its bar: as it is counted, and by what it holds. */
export interface NoteInBar {
  readonly note: Pick<GradedNote, 'pitchClass' | 'onsetBeat'>;
  /** From the first downbeat, from 0. */
  readonly bar: number;
  /** The same number for bars of the same pitch classes in the same order. */
  readonly figure: number;
}

/**
 * @param own the player's share of each pitch class
 * @returns whether the line follows the chords so many beats earlier better than luck would have it
 */
export function followsElsewhere(
  notes: readonly NoteInBar[],
  own: readonly number[],
  chordAt: Timeline['chordAt'],
): (beats: number) => boolean {
  const stock = own.map((share) => (share + LEAST_SHARE) / (1 + 12 * LEAST_SHARE));
  const likelihood = likelihoodReader(stock);
  const places = placesInFigures(notes);
  return (beats) => {
    let sum = 0;
    const bars = new Map<number, number>();
    /** Of each place in a figure: what each pitch class would have brought, at all the bars where the figure stands. */
    const draws = new Map<string, number[]>();
    notes.forEach(({ note: { pitchClass, onsetBeat }, figure }, i) => {
      const here = chordAt(onsetBeat);
      const there = chordAt(onsetBeat - beats);
      if (here === null || there === null || here === there) return;
      const fromChord =
        Math.abs(onsetBeat - Math.round(onsetBeat)) < ON_BEAT ? FROM_CHORD.onBeat : FROM_CHORD.beside;
      const draw = draws.get(places[i]!) ?? new Array<number>(12).fill(0);
      draws.set(places[i]!, draw);
      let gain = 0;
      for (let drawn = 0; drawn < 12; drawn++) {
        const ratio = Math.log(likelihood(drawn, there, fromChord) / likelihood(drawn, here, fromChord));
        draw[drawn]! += ratio;
        if (drawn === pitchClass) gain = ratio;
      }
      sum += gain;
      bars.set(figure, (bars.get(figure) ?? 0) + gain);
    });
    const luck = momentsOfDraws([...draws.values()], stock);
    return (
      bars.size >= LEAST_BARS &&
      sum - luck.mean >= LEAST_DEVIATIONS * Math.sqrt(luck.variance) &&
      standardErrors([...bars.values()]) >= LEAST_ERRORS
    );
  };
}

/** How likely a pitch class is over a chord. */
function likelihoodReader(stock: readonly number[]) {
  const masks = maskReader();
  return (pitchClass: number, chord: Chord, fromChord: number): number => {
    const mask = masks(chord).chordTones;
    const tones = chord.tones.length;
    const byChord = tones > 0 && holds(mask, pitchClass) ? 1 / tones : 0;
    return (1 - fromChord) * stock[pitchClass]! + fromChord * byChord;
  };
}

/** Of each note, which one of its figure it is: the same wherever the figure stands. */
function placesInFigures(notes: readonly NoteInBar[]): readonly string[] {
  let place = 0;
  return notes.map(({ bar, figure }, i) => {
    place = bar === notes[i - 1]?.bar ? place + 1 : 0;
    return `${figure} ${place}`;
  });
}

/** Mean and variance of the sum of independent draws from the stock. */
function momentsOfDraws(draws: readonly (readonly number[])[], stock: readonly number[]) {
  let mean = 0;
  let variance = 0;
  for (const draw of draws) {
    const own = draw.reduce((total, value, pitchClass) => total + value * stock[pitchClass]!, 0);
    mean += own;
    variance += draw.reduce((total, value, pitchClass) => total + (value - own) ** 2 * stock[pitchClass]!, 0);
  }
  return { mean, variance };
}

/** How many standard errors the sum of the bars lies above nought; 0 where they do not differ. */
function standardErrors(gains: readonly number[]): number {
  const spread = standardDeviation(gains);
  if (spread === null || spread === 0) return 0;
  return gains.reduce((total, gain) => total + gain, 0) / (spread * Math.sqrt(gains.length));
}
