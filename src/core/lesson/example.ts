/**
 * An example take inside a lesson sheet: the notes that were played, in beats of the sheet's chart, so that the student
 * hears them with the band. Notes are small enough for a link; sound would not be.
 */
import * as v from 'valibot';
import type { Timeline } from '../chart/timeline.ts';
import { INSTRUMENTS } from '../music/instruments.ts';
import { STANDARD_A4_HZ } from '../music/temperament.ts';
import { listedNote } from '../take/listed-note.ts';
import type { HeardNote } from '../take/note.ts';
import type { Report } from '../take/schema.ts';

/** Written limits: some choruses of an example, and no more than people listen to. */
export const EXAMPLE_LIMITS = {
  notes: 1000,
  /** From the first downbeat to the end of the last note: ten minutes at 200 beats a minute. */
  beats: 2000,
  /** A pickup before the first downbeat. */
  pickupBeats: 8,
} as const;

/** Beats and pitches are kept to the hundredth: 5 ms at 120 beats a minute, and a cent. */
const STEPS = 100;

const finite = v.pipe(v.number(), v.finite());

/** One note: where it begins, in beats from the first downbeat; how many beats it lasts; its MIDI number, A4 = 69 = 440 Hz. */
const exampleNoteSchema = v.strictTuple([
  v.pipe(finite, v.minValue(-EXAMPLE_LIMITS.pickupBeats), v.maxValue(EXAMPLE_LIMITS.beats)),
  v.pipe(finite, v.gtValue(0), v.maxValue(EXAMPLE_LIMITS.beats)),
  v.pipe(finite, v.minValue(0), v.maxValue(127)),
]);

export const exampleSchema = v.strictObject({
  /** Whose sound plays it; the guitar's where it is left out. */
  instrument: v.exactOptional(v.picklist(INSTRUMENTS.map(({ id }) => id))),
  notes: v.pipe(v.array(exampleNoteSchema), v.minLength(1), v.maxLength(EXAMPLE_LIMITS.notes)),
});
export type Example = v.InferOutput<typeof exampleSchema>;

const rounded = (value: number) => Math.round(value * STEPS) / STEPS;

/**
 * The counted notes of a take as an example; they sound at A4 = 440 Hz, whatever the take was tuned to.
 * @param instrument of the take, by its id
 * @returns null where nothing was played, or more than an example may hold
 */
export function exampleOf(
  { notes, tuning }: Pick<Report, 'notes' | 'tuning'>,
  instrument: string | undefined,
): Example | null {
  const above = 12 * Math.log2(tuning.referenceHz / STANDARD_A4_HZ);
  const example = {
    ...(INSTRUMENTS.some(({ id }) => id === instrument) && { instrument }),
    notes: notes.map(({ beat, endBeat, midi }) => [
      rounded(beat),
      Math.max(1 / STEPS, rounded(endBeat - beat)),
      rounded(midi - above),
    ]),
  };
  const read = v.safeParse(exampleSchema, example);
  return read.success ? read.output : null;
}

/** The notes of an example in seconds, as the timeline has its beats. */
export const notesOfExample = (
  { notes }: Readonly<Example>,
  { beatMap }: Pick<Timeline, 'beatMap'>,
): readonly HeardNote[] =>
  notes
    .map(([beat, beats, midi]) => {
      const onsetSeconds = beatMap.secondsAt(beat);
      return listedNote(onsetSeconds, beatMap.secondsAt(beat + beats) - onsetSeconds, midi);
    })
    .sort((a, b) => a.onsetSeconds - b.onsetSeconds);

/** How many beats stand before the first downbeat, so that a pickup is heard: whole bars. */
export const beatsBefore = ({ notes }: Readonly<Example>, beatsPerBar: number): number => {
  const first = Math.min(...notes.map(([beat]) => beat));
  return first < 0 ? Math.ceil(-first / beatsPerBar) * beatsPerBar : 0;
};
