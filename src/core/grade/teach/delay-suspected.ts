/**
 * Whether all of a take lies so early or late that its delay must be wrong, rather than the player. Where the delay
 * between the band and the recording is not the true one, every note is off by the same time.
 *
 * A shift is looked for that sets the notes on the beats and the eighths between them. Where a take swings, the two
 * eighths of a beat differ, so that the shift is known up to whole beats; where it is straight, up to halves. So more
 * than one shift may fit; only where none of those that fit is one that players have, the delay is suspected.
 */
import { median, standardDeviation } from '../../base/statistics.ts';
import type { Timeline } from '../../chart/timeline.ts';
import type { SuspectedDelay } from '../../take/schema.ts';
import type { GradedNote } from '../assign/graded-note.ts';

/** A shift of fewer notes may be chance. */
const LEAST_NOTES = 24;
/** As many notes on the beats have a median of their own; where the second eighth falls then does not matter. */
const LEAST_ON_BEATS = 12;
/**
 * Where takes of players lie. Of skilled soloists' single notes 5 % come more than 25 ms early and 5 % more than 69 ms
 * late (64,141 on-beat notes of the Weimar Jazz Database, measured for the project); learners hurry, so early is wider.
 */
const EARLY_SECONDS = -0.045;
const LATE_SECONDS = 0.07;
/** Wrong delays that are looked for: Bluetooth adds 0.1 to 0.3 s; hardly anybody assumes one that is far too long. */
const EARLIEST_SECONDS = -0.12;
const LATEST_SECONDS = 0.3;
const STEP_SECONDS = 0.005;
/** A note further than this from its place counts nothing for a shift; skilled soloists scatter with an SD of 34 ms. */
const REACH_SECONDS = 0.06;
/** Where players put the second eighth of a beat: straight to a little over a triplet. */
const SECOND_EIGHTHS = [0.5, 0.54, 0.58, 0.62, 0.66, 0.7];
/** So many standard errors the best shift must fit better than another, else the other fits as well. */
const SURE_ERRORS = 2.5;
/**
 * So much better than the mean of all shifts the best must fit. Among n notes at random some shift fits better by up to
 * about 1/√n (made lines: tests/core/grade/teach/delay-suspected.test.ts), so that few notes must fit by more.
 */
const LEAST_FIT_GAIN = 0.1;
/** Shifts that fit this much alike fit alike, whatever the notes; the smallest of them is told. */
const SAME_FIT = 0.01;
/** More second eighths than first ones are no line. */
const MOST_ON_BEATS = 0.55;
/** Shifts this near each other are one. */
const SAME_SECONDS = 0.03;

/** A note's place in its beat, and how long that beat is. */
interface Place {
  /** From 0 to 1. */
  readonly phase: number;
  readonly beatSeconds: number;
}

/** How well the notes fit the beats when they are shifted back by so much. */
interface Shift {
  readonly seconds: number;
  /** Places of the eighths in the beat: the first is 0, the beat itself. */
  readonly eighths: readonly number[];
  readonly meanFit: number;
}

/** @returns null where the notes lie as players' do, or keep no time by which it could be told */
export function suspectDelay(
  notes: readonly GradedNote[],
  { beatMap, divisions }: Pick<Timeline, 'beatMap' | 'divisions'>,
): SuspectedDelay | null {
  const places = notes
    .filter(({ onsetBeat }) => onsetBeat >= 0)
    .map(({ onsetBeat }): Place => {
      const beat = Math.floor(onsetBeat);
      return {
        phase: onsetBeat - beat,
        beatSeconds: beatMap.secondsAt(beat + 1) - beatMap.secondsAt(beat),
      };
    });
  if (places.length < LEAST_NOTES || mostAreOnBeats(places)) return null;
  const profile = profileOf(places, divisions);
  const peaks = peaksOf(profile);
  const [best] = [...peaks].sort((a, b) => b.meanFit - a.meanFit);
  if (best === undefined) return null;
  const meanOfProfile = meanOf(profile.map(({ meanFit }) => meanFit));
  const leastGain = Math.max(LEAST_FIT_GAIN, 1 / Math.sqrt(places.length));
  if (best.meanFit - meanOfProfile < leastGain) return null;
  const fitting = peaks.filter((peak) => peak === best || !isSurelyBetter(best, peak, places));
  const [nearest] = fitting
    .filter(({ meanFit }) => meanFit > best.meanFit - SAME_FIT)
    .sort((a, b) => Math.abs(a.seconds) - Math.abs(b.seconds));
  const offsets = offsetsFrom(nearest!, places);
  const seconds = median(offsets);
  if (seconds === null) return null;
  if (fitting.some((peak) => isPlayers(median(offsetsFrom(peak, places)) ?? peak.seconds))) return null;
  return {
    ms: seconds * 1000,
    spreadMs: (standardDeviation(offsets) ?? 0) * 1000,
    notes: offsets.length,
    isOnlyOne: fitting.every((peak) => Math.abs(peak.seconds - nearest!.seconds) < SAME_SECONDS),
  };
}

/**
 * Whether most notes lie on the beats as they stand. What another shift would fit better is then their rhythm (a b3 on the
 * beat and its 3 a little later), and no delay: of a take that is off, half of the notes at the most fall on beats, its
 * second eighths.
 */
function mostAreOnBeats(places: readonly Place[]): boolean {
  const offsets = places.map((place) => offsetFrom(place, 0, [0]));
  return offsets.filter(isPlayers).length > MOST_ON_BEATS * places.length;
}

const isPlayers = (seconds: number): boolean => seconds >= EARLY_SECONDS && seconds <= LATE_SECONDS;

/** Every shift, each with the swing that suits it best. */
function profileOf(places: readonly Place[], divisions: 2 | 3): readonly Shift[] {
  const feels = divisions === 3 ? [[0, 1 / 3, 2 / 3]] : SECOND_EIGHTHS.map((second) => [0, second]);
  const steps = Math.round((LATEST_SECONDS - EARLIEST_SECONDS) / STEP_SECONDS);
  return Array.from({ length: steps + 1 }, (_, step) => {
    const seconds = EARLIEST_SECONDS + step * STEP_SECONDS;
    // How far each note is from the beat is the same for every feel.
    const fromBeats = places.map((place) => offsetFromEighth(place, seconds, 0));
    let best: Shift | null = null;
    for (const eighths of feels) {
      let sum = 0;
      for (let i = 0; i < places.length; i++)
        sum += fitOf(nearestOf(places[i]!, seconds, eighths, fromBeats[i]!));
      const meanFit = sum / places.length;
      if (best === null || meanFit > best.meanFit) best = { seconds, eighths, meanFit };
    }
    return best!;
  });
}

/** A note each: 1 on its place, 0 at the reach or further. */
const fitsOf = ({ seconds, eighths }: Shift, places: readonly Place[]): readonly number[] =>
  places.map((place) => fitOf(offsetFrom(place, seconds, eighths)));

/** Shifts that fit better than their neighbours. */
const peaksOf = (profile: readonly Shift[]): readonly Shift[] =>
  profile.filter(
    ({ meanFit }, i) =>
      meanFit > (profile[i - 1]?.meanFit ?? Infinity) && meanFit >= (profile[i + 1]?.meanFit ?? Infinity),
  );

/** From the nearest eighth of the shifted beat, in seconds. The first of `eighths` is 0. */
const offsetFrom = (place: Place, shiftSeconds: number, eighths: readonly number[]): number =>
  nearestOf(place, shiftSeconds, eighths, offsetFromEighth(place, shiftSeconds, 0));

/** The same, where the offset from the first one is known. */
function nearestOf(
  place: Place,
  shiftSeconds: number,
  eighths: readonly number[],
  fromFirst: number,
): number {
  let nearest = fromFirst;
  for (let i = 1; i < eighths.length; i++) {
    const seconds = offsetFromEighth(place, shiftSeconds, eighths[i]!);
    if (Math.abs(seconds) < Math.abs(nearest)) nearest = seconds;
  }
  return nearest;
}

function offsetFromEighth({ phase, beatSeconds }: Place, shiftSeconds: number, eighth: number): number {
  const beats = phase - shiftSeconds / beatSeconds - eighth;
  return (beats - Math.round(beats)) * beatSeconds;
}

const fitOf = (offsetSeconds: number): number => Math.max(0, 1 - (offsetSeconds / REACH_SECONDS) ** 2) ** 2;

/**
 * How late the notes on the beats are, in seconds against the beats as they stand: those within reach of a beat that is
 * moved by the shift. Where hardly any note is on a beat, the other eighths count too.
 */
function offsetsFrom({ seconds, eighths }: Shift, places: readonly Place[]): readonly number[] {
  const from = (counted: readonly number[]) =>
    places
      .map((place) => offsetFrom(place, seconds, counted))
      .filter((offset) => Math.abs(offset) < REACH_SECONDS)
      .map((offset) => offset + seconds);
  const onBeats = from([0]);
  return onBeats.length < LEAST_ON_BEATS ? from(eighths) : onBeats;
}

/** Note by note, since both shifts are tried on the same notes. */
function isSurelyBetter(best: Shift, other: Shift, places: readonly Place[]): boolean {
  const otherFits = fitsOf(other, places);
  const gains = fitsOf(best, places).map((fit, i) => fit - otherFits[i]!);
  const spread = standardDeviation(gains);
  if (spread === null || best.meanFit - other.meanFit < SAME_FIT) return false;
  return spread === 0 || meanOf(gains) / (spread / Math.sqrt(gains.length)) > SURE_ERRORS;
}

const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;
