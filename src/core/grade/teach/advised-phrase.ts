/**
 * What a piece of advice is about, to be heard and tried again: the bars, the notes in them as they were played, and
 * the same notes with the tone that resolves in its place.
 */
import type { Timeline } from '../../chart/timeline.ts';
import { STANDARD_A4_HZ } from '../../music/temperament.ts';
import type { HeardNote } from '../../take/note.ts';
import type { Advice, Report, ReportNote } from '../../take/schema.ts';

export interface AdvisedPhrase {
  /** Whole bars, in beats from the first downbeat: the bar that leads there, and the bar of the note. */
  readonly fromBeat: number;
  readonly toBeat: number;
  /** The same bars of the chorus, from 1, both included; a form's first bar has none before it to start from. */
  readonly bars: { readonly fromBar: number; readonly toBar: number };
  /** Seconds of the take. */
  readonly resolved: readonly HeardNote[];
}

type Heard = Pick<Report, 'notes' | 'landings' | 'tuning'>;

/** A note up to this long before the first bar runs ahead to it, and belongs to the phrase. */
const AHEAD_BEATS = 0.75;
/** A flat third leans on the third for half of its length, half a beat at most. *Common practice.* */
const LEAN_BEATS = 0.5;

/** The phrase of the first note that a piece of advice speaks of. */
export function advisedPhrase(report: Heard, timeline: Timeline, advice: Advice): AdvisedPhrase | null {
  const index = advice.notes[0];
  const note = index === undefined ? undefined : report.notes[index];
  if (index === undefined || note === undefined) return null;
  const { beatsPerBar, bars } = timeline;
  const landing = report.landings.find((one) => one.note === index);
  const bar = Math.max(0, Math.floor((landing?.beat ?? note.beat) / beatsPerBar + 1e-9));
  const fromBar = Math.max(0, bar - 1);
  const toBar = Math.max(bar, Math.ceil((note.endBeat - 0.5) / beatsPerBar) - 1, fromBar + 1);
  const first = bar % bars;
  const lead = first === 0 ? 0 : first - 1;
  const last = Math.min(bars - 1, Math.max(first, lead + Math.min(toBar - fromBar, 2)));
  const fromBeat = fromBar * beatsPerBar;
  const toBeat = Math.min(toBar, bar + 1) * beatsPerBar + beatsPerBar;
  const resolve = advice.resolve.midi + 12 * Math.log2(report.tuning.referenceHz / STANDARD_A4_HZ);
  return {
    fromBeat,
    toBeat,
    bars: { fromBar: lead + 1, toBar: last + 1 },
    resolved: report.notes.flatMap((one, i) => {
      if (one.beat < fromBeat - AHEAD_BEATS || one.beat >= toBeat) return [];
      if (i !== index) return [asHeard(one)];
      return resolvedNote(one, resolve, splitSeconds(advice, one, landing?.seconds ?? null, timeline));
    }),
  };
}

/** Where the note that was played gives way to the tone that resolves it; null where that tone takes its place. */
function splitSeconds(
  { fault, held }: Advice,
  { onsetSeconds, offsetSeconds, beat }: ReportNote,
  landingSeconds: number | null,
  { beatMap }: Timeline,
): number | null {
  if (held) return landingSeconds;
  if (fault !== 'hanging b3') return null;
  return Math.min(
    (onsetSeconds + offsetSeconds) / 2,
    onsetSeconds + beatMap.secondsAt(beat + LEAN_BEATS) - beatMap.secondsAt(beat),
  );
}

function resolvedNote(note: ReportNote, midi: number, splitAt: number | null): readonly HeardNote[] {
  const resolved = { ...asHeard(note), midi, bendSemitones: 0, second: null };
  if (splitAt === null || splitAt <= note.onsetSeconds || splitAt >= note.offsetSeconds) return [resolved];
  return [
    { ...asHeard(note), offsetSeconds: splitAt },
    { ...resolved, onsetSeconds: splitAt, attack: 'legato' },
  ];
}

function asHeard({
  onsetSeconds,
  offsetSeconds,
  midi,
  confidence,
  attack,
  bendSemitones,
  vibrato,
}: ReportNote): HeardNote {
  return {
    onsetSeconds,
    offsetSeconds,
    midi,
    confidence,
    attack,
    bendSemitones,
    vibrato,
    levelDb: null,
    second: null,
  };
}
