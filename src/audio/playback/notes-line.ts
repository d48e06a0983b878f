/**
 * Notes as a line that sounds: rendered on the kit piece by piece, while it plays, so that a take without sound of its
 * own is heard at once however long it is. Slower is rendered slower, not stretched.
 */
import { largest } from '../../core/base/extremes.ts';
import { good, type Outcome } from '../../core/base/outcome.ts';
import { voiceFor } from '../../core/sound/note-voice.ts';
import type { HeardNote } from '../../core/take/note.ts';
import type { SlowLine } from './slow-line.ts';

/** What is played: notes in seconds of the take. */
export interface NotesToPlay {
  readonly notes: readonly HeardNote[];
  readonly durationSeconds: number;
  /** Id of the instrument whose sound is wanted. */
  readonly instrument?: string | undefined;
}

/** Notes from second 0 on, as samples; see `renderNotes` in core/sound. */
export type RenderNotes = (
  notes: readonly HeardNote[],
  durationSeconds: number,
  instrument: string | undefined,
) => Promise<Outcome<Float32Array>>;

/** As it sounds: the first piece is short, to be heard at once. */
const FIRST_PIECE_SECONDS = 1;
const PIECE_SECONDS = 4;
/** A released string or key is over by then. */
const RING_SECONDS = 1.5;

/** @param sampleRate of what `render` answers, in Hz */
export function createNotesLine(
  { notes, instrument }: NotesToPlay,
  render: RenderNotes,
  sampleRate: number,
): SlowLine {
  const sorted = notes.toSorted((a, b) => a.onsetSeconds - b.onsetSeconds);
  // One voice for all pieces: the one that has every note.
  const midis = notes.map(({ midi }) => midi);
  const guitar = voiceFor('guitar', midis);
  const voiced = instrument !== undefined && voiceFor(instrument, midis) === guitar ? 'guitar' : instrument;
  let lastRun = 0;
  return {
    pieces: (fromSeconds, toSeconds, speed) => {
      const run = ++lastRun;
      const frameAt = (seconds: number) => Math.round(((seconds - fromSeconds) / speed) * sampleRate);
      let at = fromSeconds;
      /** What rings on of the notes of earlier pieces. */
      let ringing: Float32Array = new Float32Array(0);
      return async () => {
        if (run !== lastRun || at >= toSeconds) return good(null);
        const isFirst = at === fromSeconds;
        const until = Math.min(toSeconds, at + speed * (isFirst ? FIRST_PIECE_SECONDS : PIECE_SECONDS));
        // The first piece has the notes, too, that sound on from before it.
        const begun = sorted.filter(
          ({ onsetSeconds, offsetSeconds }) =>
            onsetSeconds < until && (onsetSeconds >= at || (isFirst && offsetSeconds > at)),
        );
        const start = Math.min(at, begun[0]?.onsetSeconds ?? at);
        const rendered = begun.length === 0 ? null : await render(...placed(begun, start, speed), voiced);
        if (rendered !== null && !rendered.ok) return rendered;
        const own = rendered?.value.subarray(Math.round(((at - start) / speed) * sampleRate));
        const sound = sumOf(ringing, own ?? new Float32Array(0), frameAt(until) - frameAt(at));
        ringing = sound.subarray(frameAt(until) - frameAt(at));
        const piece = sound.slice(0, frameAt(until) - frameAt(at));
        at = until;
        return good(piece);
      };
    },
    dispose: () => void lastRun++,
  };
}

/** The notes from second 0 on, slower, and how long they sound. */
function placed(
  notes: readonly HeardNote[],
  start: number,
  speed: number,
): [notes: readonly HeardNote[], seconds: number] {
  const slower = (seconds: number) => (seconds - start) / speed;
  return [
    notes.map((note) => ({
      ...note,
      onsetSeconds: slower(note.onsetSeconds),
      offsetSeconds: slower(note.offsetSeconds),
    })),
    slower(largest(notes.map(({ offsetSeconds }) => offsetSeconds))) + RING_SECONDS,
  ];
}

/** Both at once, at least so many frames; as loud as full scale at most. */
function sumOf(one: Float32Array, other: Float32Array, leastFrames: number): Float32Array<ArrayBuffer> {
  const sum = new Float32Array(Math.max(one.length, other.length, leastFrames));
  sum.set(one);
  for (let i = 0; i < other.length; i++) sum[i] = Math.min(1, Math.max(-1, sum[i]! + other[i]!));
  return sum;
}
