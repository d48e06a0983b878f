/** Listening to a take whose backing is known as a recording: the backing goes first, then the line is heard. */
import { clockWords } from './base/clock-words.ts';
import type { BackingFacts } from './take/backing-facts.ts';
import { floats, type MonoSamples } from './base/pcm16.ts';
import { Listener } from './listen.ts';
import { notice, type Notice } from './words/problem.ts';
import type { HeardNote } from './take/note.ts';
import { isSomewhere, type Alignment } from './room/align/align.ts';
import { removeBand } from './room/cancel/remove-band.ts';
import { ROOM_HZ, toRoomRate } from './room/align/room-rate.ts';

/** Sound, 16-bit or full scale ±1, the mean of its channels, with the name of its file for the notices. */
export interface NamedSound {
  readonly name: string;
  readonly samples: MonoSamples;
  /** Of a backing in stereo half of left less right: two speakers have two paths. */
  readonly side?: Float32Array | null;
  readonly sampleRate: number;
}

export interface HeardWithout {
  readonly notes: readonly HeardNote[];
  /** What was taken out; null where nothing was. */
  readonly backing: BackingFacts | null;
  /** Why nothing was taken out, or what went wrong on the way; or null. */
  readonly notice: Notice | null;
}

/** Below this peak a file is silence: −80 dBFS, the noise of a bad 16-bit recorder. */
const SILENT_PEAK = 1e-4;
/** Finding and removing takes about so much of the time; the listening takes the rest. */
const SHARE_OF_REMOVAL = 0.6;
const BLOCK_SECONDS = 1;

/**
 * Takes the backing out of the take, wherever it lies within ten seconds of the take's start, and listens to what is
 * left. A backing that does not fit costs nothing: the take is heard as it is, and a notice says why. App and
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
  const told = isSilent(backing.samples)
    ? notice('removal.silent', { name: backing.name })
    : (wanderingNotice(take, backing) ??
      notice('removal.notHeard', { take: take.name, backing: backing.name }));
  return { notes: listenTo(take, progress), backing: null, notice: told };
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
  return { notes, backing: { offsetSeconds, driftPpm, removedDb }, notice: slipNotice(alignment.slips) };
}

/** Why a backing that is in the take was left in it; null where it may not be there at all. */
export function wanderingNotice(
  take: Omit<NamedSound, 'name'>,
  backing: Omit<NamedSound, 'name'>,
): Notice | null {
  if (isSilent(backing.samples)) return null;
  const [heard, played] = [take, backing].map(({ samples, sampleRate }) => toRoomRate(samples, sampleRate));
  return isSomewhere(heard!, played!, ROOM_HZ) ? notice('removal.wandering') : null;
}

/** The slips are told by their size: whoever plays on after one is out by so much. */
function slipNotice(slips: Alignment['slips']): Notice | null {
  const [first] = slips;
  if (first === undefined) return null;
  return notice('removal.slipped', {
    ms: Math.round(1000 * Math.abs(first.bySeconds)),
    time: clockWords(Math.round(first.atSeconds)),
    more: slips.length - 1,
    late: first.bySeconds > 0,
  });
}

function listenTo(
  { samples, sampleRate }: Omit<NamedSound, 'name'>,
  progress: (share: number) => void,
): readonly HeardNote[] {
  const listener = new Listener({ sampleRate });
  const block = Math.round(BLOCK_SECONDS * sampleRate);
  for (let from = 0; from < samples.length; from += block) {
    listener.push(floats(samples.subarray(from, from + block)));
    progress(Math.min(1, (from + block) / samples.length));
  }
  return listener.finish();
}

function isSilent(samples: MonoSamples): boolean {
  const peak = samples instanceof Int16Array ? 32_768 * SILENT_PEAK : SILENT_PEAK;
  const isLow = (x: number) => Math.abs(x) < peak;
  return samples instanceof Int16Array ? samples.every(isLow) : samples.every(isLow);
}
