/** Listening to a take whose backing is known as a recording: the backing goes first, then the line is heard. */
import { clockWords } from './base/clock-words.ts';
import type { BackingFacts } from './take/backing-facts.ts';
import { Listener } from './listen.ts';
import type { HeardNote } from './take/note.ts';
import { isSomewhere, type Alignment } from './room/align/align.ts';
import { removeBand } from './room/cancel/remove-band.ts';
import { ROOM_HZ, toRoomRate } from './room/align/room-rate.ts';

/** Sound, full scale ±1, the mean of its channels, with the name of its file for the sentences. */
export interface NamedSound {
  readonly name: string;
  readonly samples: Float32Array;
  /** Of a backing in stereo half of left less right: two speakers have two paths. */
  readonly side?: Float32Array | null;
  readonly sampleRate: number;
}

export interface HeardWithout {
  readonly notes: readonly HeardNote[];
  /** What was taken out; null where nothing was. */
  readonly backing: BackingFacts | null;
  /** Why nothing was taken out, or what went wrong on the way; or null. */
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
 * command line both come through here, so that both tell the same.
 *
 * @param progress called with the share done, 0 to 1
 * @example listenWithout({ name: 'take.wav', ...take }, { name: 'backing.wav', ...band }).backing?.removedDb
 */
export function listenWithout(
  take: NamedSound,
  backing: NamedSound,
  progress: (share: number) => void = () => undefined,
): HeardWithout {
  const heard = listenPastBacking(take, backing, progress);
  if (heard !== null) return heard;
  const sentence = isSilent(backing.samples)
    ? silentSentence(backing.name)
    : (wanderingSentence(take, backing) ?? unheardSentence(take.name, backing.name));
  return { notes: listenTo(take, progress), backing: null, sentence };
}

/**
 * The same where the backing is heard in the take, else null: finding that out takes a second, however long the take.
 *
 * @param progress called with the share done, 0 to 1
 */
export function listenPastBacking(
  take: Omit<NamedSound, 'name'>,
  backing: Omit<NamedSound, 'name'>,
  progress: (share: number) => void = () => undefined,
): (HeardWithout & { readonly backing: BackingFacts }) | null {
  const removed = isSilent(backing.samples) ? null : removeBand(take, backing);
  if (removed === null) return null;
  const { samples, alignment, removedDb } = removed;
  const notes = listenTo({ samples, sampleRate: ROOM_HZ }, (share) =>
    progress(SHARE_OF_REMOVAL + (1 - SHARE_OF_REMOVAL) * share),
  );
  const { offsetSeconds, driftPpm } = alignment;
  return { notes, backing: { offsetSeconds, driftPpm, removedDb }, sentence: slipSentence(alignment.slips) };
}

/** Why a backing that is in the take was left in it; null where it may not be there at all. */
export function wanderingSentence(
  take: Omit<NamedSound, 'name'>,
  backing: Omit<NamedSound, 'name'>,
): string | null {
  if (isSilent(backing.samples)) return null;
  const [heard, played] = [take, backing].map(({ samples, sampleRate }) => toRoomRate(samples, sampleRate));
  return isSomewhere(heard!, played!, ROOM_HZ)
    ? 'The band is heard in the take, but it slipped to and fro and could not be taken out: some of the notes may ' +
        'be the band’s. Close what else is running, and do a sound check before the next take.'
    : null;
}

/** The slips are told by their size: whoever plays on after one is out by so much. */
function slipSentence(slips: Alignment['slips']): string | null {
  const [first] = slips;
  if (first === undefined) return null;
  const ms = Math.round(1000 * Math.abs(first.bySeconds));
  const at = Math.round(first.atSeconds);
  const more = slips.length > 1 ? `, and ${slips.length - 1} more times after that` : '';
  return (
    `The band slipped by ${ms} ms at ${clockWords(at)}${more}: it was taken ` +
    `out on both sides, but the notes after it are placed ${ms} ms too ${first.bySeconds > 0 ? 'late' : 'early'}.`
  );
}

function listenTo(
  { samples, sampleRate }: Omit<NamedSound, 'name'>,
  progress: (share: number) => void,
): readonly HeardNote[] {
  const listener = new Listener({ sampleRate });
  const block = Math.round(BLOCK_SECONDS * sampleRate);
  for (let from = 0; from < samples.length; from += block) {
    listener.push(samples.subarray(from, from + block));
    progress(Math.min(1, (from + block) / samples.length));
  }
  return listener.finish();
}

const isSilent = (samples: Float32Array): boolean => samples.every((x) => Math.abs(x) < SILENT_PEAK);

const silentSentence = (backing: string) =>
  `${backing} is silent, so there is nothing to take out; the take is graded as it is.`;

const unheardSentence = (take: string, backing: string) =>
  `${backing} is not heard in ${take} within 10 seconds of its start: it may be another recording or another ` +
  'tempo, or headphones kept it out of the microphone; the take is graded as it is.';
