/**
 * Any audio file as one line of samples. This is the door for the command line and the app alike, so that both
 * grade the very same numbers.
 */
import { bad, good, type Outcome } from '../base/outcome.ts';
import type { ByteSource } from './bytes/bytes.ts';
import { MOST_TAKE_SECONDS } from '../base/limits.ts';
import { chooseMixdown, hasNoNumber, mixed } from './sound/mix.ts';
import { behindTag } from './sound/id3.ts';
import type { PcmStream, Warn } from './sound/pcm.ts';
import { sniff, type AudioKind, type FileKind } from './sniff.ts';
import type { Notice } from '../words/problem.ts';
import { openWav } from './sound/wav.ts';

export interface AudioFile {
  readonly kind: AudioKind;
  readonly sampleRate: number;
  /** As recorded; the blocks hold one line whatever this says. */
  readonly channels: number;
  /** Samples of one channel that the file says it holds, or null where only reading tells. */
  readonly expectedFrames: number | null;
  /**
   * Mono samples, full scale ±1, in order; each block is valid until the next one is asked for. Damage is
   * mended and handed to `warn`, one notice each. Rejects only where the source itself does.
   */
  blocks(warn: Warn): AsyncGenerator<Float32Array>;
}

type Open = (source: ByteSource) => Promise<Outcome<PcmStream>>;

/** A decoder that is loaded only when such a file is opened; without the server of the page that can fail. */
const later =
  (load: () => Promise<Open>): Open =>
  async (source) => {
    const open = await load().catch(() => null);
    return open === null ? bad('file.readerNotLoaded', { name: source.name }) : open(source);
  };

const OPENERS: Readonly<Record<AudioKind, Open>> = {
  wav: async (source) => openWav(await behindTag(source)),
  flac: later(async () => (await import('./sound/flac.ts')).openFlac),
  mp3: later(async () => (await import('./sound/mp3.ts')).openMp3),
  ogg: later(async () => (await import('./sound/vorbis.ts')).openVorbis),
};

export const isAudio = (kind: FileKind): kind is AudioKind => kind in OPENERS;

/** Opens a file whose kind `sniff` has told. */
export async function openAudioOfKind(source: ByteSource, kind: AudioKind): Promise<Outcome<AudioFile>> {
  const stream = await OPENERS[kind](source);
  if (!stream.ok) return stream;
  const { name } = source;
  const { sampleRate, channels, expectedFrames } = stream.value;
  if (expectedFrames !== null && expectedFrames > MOST_TAKE_SECONDS * sampleRate)
    return bad('file.takeTooLong', { name, hours: MOST_TAKE_SECONDS / 3600 });
  if (await hasNoNumber(stream.value)) return bad('sound.noNumber', { name });
  const mixdown = await chooseMixdown(stream.value);
  return good({
    kind,
    sampleRate,
    channels,
    expectedFrames,
    blocks: (warn) => mixed(stream.value, mixdown, source.name, warn),
  });
}

/**
 * Opens an audio file, its kind told by its content.
 * @example
 * const opened = await openAudio(bytesInMemory('take.flac', bytes));
 * if (opened.ok) for await (const block of opened.value.blocks(say)) listener.push(block);
 */
export async function openAudio(source: ByteSource): Promise<Outcome<AudioFile>> {
  const kind = await audioKind(source);
  return kind.ok ? openAudioOfKind(source, kind.value) : kind;
}

/** Opens an audio file as it is, its channels apart. */
export async function openPcm(source: ByteSource): Promise<Outcome<PcmStream>> {
  const kind = await audioKind(source);
  return kind.ok ? OPENERS[kind.value](source) : kind;
}

async function audioKind(source: ByteSource): Promise<Outcome<AudioKind>> {
  const kind = await sniff(source);
  if (!kind.ok) return kind;
  if (isAudio(kind.value)) return good(kind.value);
  if (kind.value === 'beats') return bad('file.beats', { name: source.name });
  if (kind.value === 'text') return bad('file.text', { name: source.name });
  return bad('file.notesNoSound', { name: source.name });
}

/** A whole recording in memory. */
export interface Recording {
  readonly samples: Float32Array;
  readonly sampleRate: number;
  /** What was odd and mended. */
  readonly warnings: readonly Notice[];
}

/** Two hours at 48 kHz are 1.4 GB as one array; half an hour is what a take may have that is held whole. */
export const LONGEST_WHOLE_SECONDS = 30 * 60;

/** Reads a whole recording into one array, for playing and drawing; a longer one goes block by block. */
export async function readWhole(audio: AudioFile, name: string): Promise<Outcome<Recording>> {
  const warnings: Notice[] = [];
  const limit = LONGEST_WHOLE_SECONDS * audio.sampleRate;
  const tooLong = bad('file.tooLongForWhole', { name, minutes: LONGEST_WHOLE_SECONDS / 60 });
  if ((audio.expectedFrames ?? 0) > limit) return tooLong;
  let samples = new Float32Array(Math.min(audio.expectedFrames ?? 1 << 20, limit));
  let length = 0;
  for await (const block of audio.blocks((warning) => warnings.push(warning))) {
    if (length + block.length > limit) return tooLong;
    if (length + block.length > samples.length) {
      const larger = new Float32Array(Math.max(samples.length * 2, length + block.length));
      larger.set(samples);
      samples = larger;
    }
    samples.set(block, length);
    length += block.length;
  }
  return good({ samples: samples.subarray(0, length), sampleRate: audio.sampleRate, warnings });
}
