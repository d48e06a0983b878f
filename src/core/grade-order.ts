/** What is needed besides samples to grade a take, as plain data that crosses into a worker. */
import type { FeelName } from './chart/feel-names.ts';
import type { TempoRise } from './chart/timeline.ts';
import type { Aim } from './grade/aims/aim.ts';
import { aimOf } from './grade/aims/aim-choices.ts';
import type { GradeSettings } from './grade-settings.ts';
import { readSheetFile } from './lesson/sheet.ts';
import { instrumentOf, withCapo } from './music/instruments.ts';
import type { TakeDetails } from './take/details-schema.ts';
import { correctionsOf, type Correction } from './take/correction.ts';
import type { LostStretch } from './take/lost-sound.ts';

export interface GradeOrder {
  /** The chart in our own text form, its key among the headings. */
  readonly chartText: string;
  readonly bpm: number;
  /** Share of the beat that the first eighth takes. */
  readonly swing: number;
  /** How it was played: a section with a feel of its own swings by that. The chart's own word without. */
  readonly feel?: FeelName;
  /** The tempo rose as the chart went round. */
  readonly rise?: TempoRise;
  /** Player and band took turns of so many bars; the player's are graded. */
  readonly turnBars?: number;
  /** The beats of a recording that was played to, round and round, as `roundBeatMap` takes them; else the tempo counts. */
  readonly beatSeconds?: readonly number[];
  /** Where the first downbeat lies, in seconds from the first sample, round trip included. */
  readonly firstBeatSeconds: number;
  /** The round trip in it, where it was only assumed: what is measured later takes its place. */
  readonly assumedRoundTripSeconds?: number;
  /** A4 in Hz, or estimated from the notes. */
  readonly reference: number | 'auto';
  readonly source: 'microphone' | 'audio';
  /** Where the browser lost sound while the take was recorded. */
  readonly lost?: readonly LostStretch[];
  /** Id of the instrument, for the places in the advice, and the fret of its capo. */
  readonly instrument?: string;
  readonly capo?: number;
  /** Id of the aim choice that the take tries for. */
  readonly aim?: string;
  /** The aims of the lesson sheet that the take was played for, the leading one first; they take the place of `aim`. */
  readonly lessonAims?: readonly Aim[];
  /** What the player has corrected of the notes, in order. */
  readonly corrections?: readonly Correction[];
}

/** null for a take that was played for no sheet, or for one that can't be read. */
function aimsOfLesson({ lesson }: TakeDetails): readonly Aim[] | null {
  if (lesson?.sheet === undefined) return null;
  const sheet = readSheetFile(lesson.sheet, lesson.title);
  return sheet.ok ? sheet.value.aims : null;
}

/** How a take is to be graded. Until its first downbeat is known it counts from the first sample. */
export function gradeOrder(details: TakeDetails): GradeOrder {
  const lessonAims = aimsOfLesson(details);
  const corrections = correctionsOf(details);
  return {
    chartText: details.chartText,
    bpm: details.bpm,
    swing: details.swing,
    firstBeatSeconds: details.firstBeatSeconds ?? 0,
    ...(details.assumedRoundTripSeconds !== undefined && {
      assumedRoundTripSeconds: details.assumedRoundTripSeconds,
    }),
    reference: details.reference,
    source: details.source === 'microphone' ? 'microphone' : 'audio',
    ...(details.backing !== undefined && { beatSeconds: details.backing.beatSeconds }),
    feel: details.feel,
    ...(details.rise !== undefined && { rise: details.rise }),
    ...(details.trade !== undefined && { turnBars: details.trade.bars }),
    ...(details.lost !== undefined && { lost: details.lost }),
    ...(details.instrument !== undefined && { instrument: details.instrument }),
    ...(details.capo !== undefined && { capo: details.capo }),
    ...(details.aim !== undefined && { aim: details.aim }),
    ...(lessonAims !== null && { lessonAims }),
    ...(corrections.length > 0 && { corrections }),
  };
}

/** What the grading takes from the player's choice; an instrument or an aim that is no longer there is left out. */
export function choiceOf({
  instrument,
  capo = 0,
  aim,
  lessonAims,
  corrections,
}: GradeOrder): Pick<GradeSettings, 'instrument' | 'aims' | 'corrections'> {
  const played = instrument === undefined ? null : instrumentOf(instrument);
  const tried = aim === undefined ? null : aimOf(aim);
  const capoFits = played?.neck && Number.isInteger(capo) && capo >= 0 && capo < played.neck.frets;
  return {
    ...(played && { instrument: capoFits ? withCapo(played, capo) : played }),
    aims: lessonAims ?? (tried === null ? [] : [tried]),
    ...(corrections && { corrections }),
  };
}
