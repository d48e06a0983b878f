/** A take that is over, however it came about: played, opened from a file, stored, or rendered as the demo. */
import { gradeOrder } from '../core/grade-order.ts';
import { withHeard, type Backing, type GradedSound, type GradingEvents } from '../core/grade-samples.ts';
import type { FileLine } from '../analysis/messages.ts';
import type { HeardNote } from '../core/take/note.ts';
import { notesPlayed, type PlayedMessage } from '../core/midi/played-notes.ts';
import type { Outcome } from '../core/base/outcome.ts';
import { STANDARD_A4_HZ } from '../core/music/temperament.ts';
import { readKeptNotes } from '../core/kept-notes.ts';
import type { DevicePair } from './measured-room.ts';
import type { AnalysisPort, DemoTake, TakeAudio } from './ports.ts';
import type { StoredTake, TakeDetails, TakeId } from './take.ts';

/** The content of a take: its sound, or its notes where they were played by MIDI or read from a file. */
export type TakeContent =
  | {
      readonly kind: 'sound';
      readonly audio: TakeAudio;
      /** What is taken out of the sound before it is listened to; null where nothing is. */
      readonly backing: Backing | null;
    }
  | {
      readonly kind: 'notes';
      readonly notes: readonly HeardNote[];
      readonly durationSeconds: number;
      /** What the MIDI instrument sent; null for a file, which the player has already. */
      readonly messages: readonly PlayedMessage[] | null;
    };

export interface FinishedTake {
  /** null when it is not kept on this machine. */
  readonly id: TakeId | null;
  readonly details: TakeDetails;
  readonly content: TakeContent;
  /** Of a take that was just played through the microphone; left out of every other. */
  readonly playedThrough?: PlayedThrough;
}

/** The devices of a take, so that a delay that it makes suspect can be set for them. */
export interface PlayedThrough {
  readonly pair: DevicePair;
  /** Where the first downbeat would lie in the recording if the round trip took no time. */
  readonly undelayedFirstBeatSeconds: number;
}

/** A file against the setup's chart. The player's file stays where it is: no copy is kept. */
export function takeFromFile(
  name: string,
  line: FileLine,
  details: Omit<TakeDetails, 'sampleRate' | 'firstBeatSeconds'>,
  firstBeatSeconds: number,
  backing: Backing | null = null,
): FinishedTake {
  const sampleRate = line.kind === 'sound' ? line.sampleRate : NOTES_RATE;
  return {
    id: null,
    details: { ...details, title: name, source: 'recording', sampleRate, firstBeatSeconds },
    content:
      line.kind === 'sound'
        ? { kind: 'sound', audio: line, backing }
        : { kind: 'notes', notes: line.notes, durationSeconds: line.durationSeconds, messages: null },
  };
}

/** Notes have no rate; a take's length is still counted in frames. */
export const NOTES_RATE = 8000;

/** The demo against the chart it was written for. The kit is tuned to the standard. */
export function takeFromDemo({ audio, ...written }: DemoTake, now: Date): FinishedTake {
  const details: TakeDetails = {
    ...written,
    startedAt: now.toISOString(),
    source: 'demo',
    sampleRate: audio.sampleRate,
    reference: STANDARD_A4_HZ,
    instrument: 'guitar',
  };
  return { id: null, details, content: { kind: 'sound', audio, backing: null } };
}

/** A take read from the store; the band that was taken out of it while it was played is taken out again. */
export function takeFromStore({
  id,
  details,
  samples,
  band,
  messages,
  durationSeconds,
  report,
}: StoredTake): FinishedTake {
  if (details.written || details.soundRemoved) {
    const notes = readKeptNotes({ report }) ?? [];
    return { id, details, content: { kind: 'notes', notes, durationSeconds, messages: null } };
  }
  if (messages !== null) return { id, details, content: playedContent(messages, durationSeconds) };
  const backing: Backing | null = band && { kind: 'band', samples: band, path: details.path ?? null };
  const audio = { samples, sampleRate: details.sampleRate };
  return { id, details, content: { kind: 'sound', audio, backing } };
}

export const playedContent = (messages: readonly PlayedMessage[], durationSeconds: number): TakeContent => ({
  kind: 'notes',
  notes: notesPlayed(messages, durationSeconds),
  durationSeconds,
  messages,
});

/**
 * Hears the whole take, where it has to be heard, and grades it.
 * @param known the notes of the live listener, which may have heard the band too
 */
export async function gradeTake(
  { details, content }: FinishedTake,
  known: GradedSound | null,
  analysis: AnalysisPort,
  events: GradingEvents,
  signal?: AbortSignal,
): Promise<Outcome<GradedSound>> {
  const order = gradeOrder(details);
  if (content.kind === 'notes') {
    const { notes, durationSeconds } = content;
    const source = { kind: 'notes', durationSeconds, sampleRate: null } as const;
    return withHeard(notes, await analysis.gradeNotes(notes, source, order, signal));
  }
  const { audio, backing } = content;
  return analysis.grade({ ...audio, name: details.title, backing, known }, order, events, signal);
}
