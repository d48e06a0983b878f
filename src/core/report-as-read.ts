/**
 * A report as a transposing player reads it: the same take graded again a transposition away, so that every sentence
 * names what stands on the page. For the screen only; what is kept and exported is at concert pitch.
 */
import type { Timeline } from './chart/timeline.ts';
import { grade } from './grade.ts';
import type { PaletteName } from './grade/assign/settings.ts';
import { midiOfName, type Reading } from './music/reading.ts';
import type { HeardNote } from './take/note.ts';
import type { Landing, Report, ReportNote } from './take/schema.ts';
import { moveChord } from './chart/transpose-chart.ts';

/**
 * Counts, shares and verdicts are those of the report; names, chords and advice are as they are read.
 * @param timeline the take's, as it is read already (chart/as-read.ts)
 */
export function reportAsRead(report: Report, timeline: Timeline, reading: Reading): Report {
  if (reading.semitones === 0) return report;
  const { settings, source, tuning, summary, shares, thirds, timing, aims, nextAim } = report;
  const read = grade(
    report.notes.map((note) => heardAgain(note, reading.semitones)),
    timeline,
    {
      source,
      referenceHz: tuning.referenceHz,
      anticipationBeats: settings.anticipationBeats,
      phraseGapBeats: settings.phraseGapBeats,
      palette: settings.palette as PaletteName,
    },
  );
  return { ...read, settings, source, tuning, summary, shares, thirds, timing, aims, nextAim };
}

/** What the listener told of a note, as far as the grading asks, a transposition away. */
const heardAgain = (
  { onsetSeconds, offsetSeconds, midi, attack, bendSemitones, vibrato, second }: ReportNote,
  semitones: number,
): HeardNote => ({
  onsetSeconds,
  offsetSeconds,
  midi: midi + semitones,
  confidence: 1,
  levelDb: null,
  attack,
  bendSemitones,
  vibrato,
  second: second === null ? null : midiOfName(second) + semitones,
});

/**
 * A landing of a take that still goes on: only its chords have names.
 * @param interval from concert pitch to what is read; "1P" leaves it as it is
 */
export const landingAsRead = (landing: Landing, interval: string): Landing =>
  interval === '1P'
    ? landing
    : {
        ...landing,
        chord: moveChord(landing.chord, interval),
        fromChord: landing.fromChord === null ? null : moveChord(landing.fromChord, interval),
      };
