/**
 * The header of a WAV file (Microsoft and IBM, Multimedia Programming Interface 1991; WAVEFORMATEXTENSIBLE
 * 2001; RF64, EBU Tech 3306). Recorders that stream can't know the length when they write it, and may crash
 * before they correct it: the sizes in the header are used only where they are possible.
 */
import { bad, failure, good, type Outcome } from '../../base/outcome.ts';
import { fourCharacters, hasMark, viewOf, type ByteSource } from '../bytes/bytes.ts';
import { MOST_BLOCKS_BEFORE_SOUND } from '../../base/limits.ts';
import { unusable } from './pcm.ts';

export type SampleFormat = 'unsigned8' | 'signed16' | 'signed24' | 'signed32' | 'float32' | 'float64';

export interface WavHeader {
  readonly sampleRate: number;
  readonly channels: number;
  readonly format: SampleFormat;
  readonly bytesPerSample: number;
  /** Bytes of one sample of all channels, as the header states them beside the format; the format is what counts. */
  readonly writtenFrameBytes: number;
  /** Where the samples begin in the file. */
  readonly dataOffset: number;
  /** Frames that are there. */
  readonly frames: number;
  /** Frames that the header states; null where a streaming recorder left the length open. */
  readonly promisedFrames: number | null;
}

const PCM = 1;
const FLOAT = 3;
const EXTENSIBLE = 0xfffe;
/** Names for what can't be read, from the registered format tags. */
const OTHER_FORMATS: Readonly<Record<number, string>> = {
  2: 'ADPCM',
  6: 'A-law',
  7: 'µ-law',
  17: 'IMA ADPCM',
  80: 'MPEG',
  85: 'MP3',
};

/** Lengths from here up stand for "not known yet": 0xFFFFFFFF, and what recorders write near 2 GiB. */
const OPEN_LENGTH = 0x7fff_0000;
const CHUNK_HEADER_BYTES = 8;
const isChunkName = (name: string) => /^[\x20-\x7e]{4}$/.test(name);

interface Format {
  readonly sampleRate: number;
  readonly channels: number;
  readonly format: SampleFormat;
  readonly bytesPerSample: number;
  readonly writtenFrameBytes: number;
}

function formatOf(fmt: Uint8Array, name: string): Outcome<Format> {
  if (fmt.length < 16) return bad('wav.header', { name });
  const view = viewOf(fmt);
  const extensible = view.getUint16(0, true) === EXTENSIBLE && fmt.length >= 26;
  // The first two bytes of the sub-format's GUID are the plain format tag.
  const format = extensible ? view.getUint16(24, true) : view.getUint16(0, true);
  const channels = view.getUint16(2, true);
  const sampleRate = view.getUint32(4, true);
  const unfit = unusable(name, sampleRate, channels);
  if (unfit !== null) return failure(unfit);
  const bits = view.getUint16(14, true);
  // 12 or 20 bits sit left-justified in whole bytes, so reading the container is right.
  const bytesPerSample = Math.ceil(bits / 8);
  const known: SampleFormat | undefined =
    format === PCM
      ? ([undefined, 'unsigned8', 'signed16', 'signed24', 'signed32'] as const)[bytesPerSample]
      : format === FLOAT
        ? ({ 4: 'float32', 8: 'float64' } as const)[bytesPerSample]
        : undefined;
  if (known)
    return good({
      ...{ sampleRate, channels, format: known, bytesPerSample },
      writtenFrameBytes: view.getUint16(12, true),
    });
  const bitsAlone = OTHER_FORMATS[format] === undefined && (format === PCM || format === FLOAT);
  return bad('wav.samples', {
    name,
    format: OTHER_FORMATS[format] ?? format,
    bits: bitsAlone ? bits : null,
  });
}

/** True where the bytes from `at` to the end of the file are chunks: then a data length of 0 means 0. */
async function chunksToTheEnd(source: ByteSource, at: number): Promise<boolean> {
  for (let chunk = 0; chunk < MOST_BLOCKS_BEFORE_SOUND && at + CHUNK_HEADER_BYTES <= source.size; chunk++) {
    const header = await source.read(at, CHUNK_HEADER_BYTES);
    if (!isChunkName(fourCharacters(header, 0))) return false;
    const length = viewOf(header).getUint32(4, true);
    at += CHUNK_HEADER_BYTES + length + (length % 2);
  }
  return at === source.size || at === source.size + 1;
}

async function dataLength(
  source: ByteSource,
  dataOffset: number,
  written: number,
): Promise<{ readonly bytes: number; readonly promised: number | null }> {
  const there = source.size - dataOffset;
  if (written === 0 && there > 0 && !(await chunksToTheEnd(source, dataOffset)))
    return { bytes: there, promised: null };
  if (written > there && written >= OPEN_LENGTH) {
    // A whole file of over 2 GiB that was cut also lands here: without a believable length, none is claimed.
    return { bytes: there, promised: null };
  }
  return { bytes: Math.min(written, there), promised: written };
}

/** Reads the chunks up to the samples. */
export async function readWavHeader(source: ByteSource): Promise<Outcome<WavHeader>> {
  const { name } = source;
  let fmt: Uint8Array | null = null;
  let longDataBytes: number | null = null;
  let at = 12;
  for (let chunk = 0; at + CHUNK_HEADER_BYTES <= source.size; chunk++) {
    if (chunk === MOST_BLOCKS_BEFORE_SOUND) return bad('sound.manyBlocks', { name, most: chunk });
    const header = await source.read(at, CHUNK_HEADER_BYTES);
    if (header.length < CHUNK_HEADER_BYTES) break;
    const id = fourCharacters(header, 0);
    const length = viewOf(header).getUint32(4, true);
    const body = at + CHUNK_HEADER_BYTES;
    if (id === 'fmt ') fmt = (await source.read(body, Math.min(length, 40))).slice();
    if (id === 'ds64' && length >= 24) {
      const sizes = await source.read(body, 24);
      if (sizes.length === 24) longDataBytes = Number(viewOf(sizes).getBigUint64(8, true));
    }
    if (id === 'data') {
      if (!fmt) return bad('wav.noFormat', { name });
      const format = formatOf(fmt, name);
      if (!format.ok) return format;
      const written = length === 0xffff_ffff && longDataBytes !== null ? longDataBytes : length;
      const { bytes, promised } = await dataLength(source, body, written);
      const frameBytes = format.value.bytesPerSample * format.value.channels;
      return good({
        ...format.value,
        dataOffset: body,
        frames: Math.floor(bytes / frameBytes),
        promisedFrames: promised === null ? null : Math.floor(promised / frameBytes),
      });
    }
    at = body + length;
    if (length % 2 === 1) {
      // Chunks are padded to even length; some writers forget, so take the place where a chunk name stands.
      const next = await source.read(at, 5);
      if (!isChunkName(fourCharacters(next, 0)) || isChunkName(fourCharacters(next, 1))) at += 1;
    }
  }
  return bad('wav.empty', { name });
}

/** True for the files that `readWavHeader` takes. */
export const isWav = (head: Uint8Array) =>
  (hasMark(head, 'RIFF') || hasMark(head, 'RF64') || hasMark(head, 'BW64')) && hasMark(head, 'WAVE', 8);
