/** Listening to a take whose backing is known as a recording: the backing goes first, then the line is heard. */
import type { BackingFacts } from './grading/settings.ts';
import { Listener } from './listen.ts';
import type { HeardNote } from './notes/note.ts';
import { removeBand } from './room/remove-band.ts';
import { ROOM_HZ } from './room/room-rate.ts';

/** Mono sound, full scale ±1, with the name of its file for the sentences. */
export interface NamedSound {
  readonly name: string;
  readonly samples: Float32Array;
  readonly sampleRate: number;
}

export interface HeardWithout {
  readonly notes: readonly HeardNote[];
  /** What was taken out; null where nothing was. */
  readonly backing: BackingFacts | null;
  /** Why nothing was taken out, or null. */
  readonly sentence: string | null;
}

/** Below this peak a file is silence: −80 dBFS, the noise of a bad 16-bit recorder. */
const SILENT_PEAK = 1e-4;
/** Finding and removing takes about so much of the time; the listening takes the rest. */
const SHARE_OF_REMOVAL = 0.6;
const BLOCK_SECONDS = 1;

/**
 * Takes the backing out of the take, wherever it lies within ten seconds of the take's start, and listens to what is
 * left. A backing that does not fit costs nothing: the take is heard as it is, and a sentence says why. App and
 * command line both call this, so that both tell the same.
 *
 * @param progress called with the share done, 0 to 1
 * @example listenWithout({ name: 'take.wav', ...take }, { name: 'backing.wav', ...band }).backing?.removedDb
 */
export function listenWithout(
  take: NamedSound,
  backing: NamedSound,
  progress: (share: number) => void = () => undefined,
): HeardWithout {
  const silent = isSilent(backing.samples);
  const removed = silent ? null : removeBand(take, backing);
  const heard = removed ? { samples: removed.samples, sampleRate: ROOM_HZ } : take;
  const listener = new Listener({ sampleRate: heard.sampleRate });
  const block = Math.round(BLOCK_SECONDS * heard.sampleRate);
  for (let from = 0; from < heard.samples.length; from += block) {
    listener.push(heard.samples.subarray(from, from + block));
    const listened = Math.min(1, (from + block) / heard.samples.length);
    progress(SHARE_OF_REMOVAL + (1 - SHARE_OF_REMOVAL) * listened);
  }
  return {
    notes: listener.finish(),
    backing: removed && {
      offsetSeconds: removed.alignment.offsetSeconds,
      driftPpm: removed.alignment.driftPpm,
      removedDb: removed.removedDb,
    },
    sentence: removed
      ? null
      : silent
        ? silentSentence(backing.name)
        : unheardSentence(take.name, backing.name),
  };
}

const isSilent = (samples: Float32Array): boolean => samples.every((x) => Math.abs(x) < SILENT_PEAK);

const silentSentence = (backing: string) =>
  `${backing} is silent, so there is nothing to take out; the take is graded as it is.`;

const unheardSentence = (take: string, backing: string) =>
  `${backing} is not heard in ${take} within 10 seconds of its start: it may be another recording or another ` +
  'tempo, or headphones kept it out of the microphone; the take is graded as it is.';
