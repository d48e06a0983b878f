/**
 * Ogg Vorbis files through stb_vorbis (public domain, in the Apache-2.0 package stb-vorbis). The package takes
 * a whole file at once, and two hours would not fit; so it is given pieces that are files of their own: the
 * headers, the page before (a packet sounds only together with the one before it), and a megabyte of pages.
 */
import { notice } from '../../words/problem.ts';
import type { OggCodec } from '../../words/entry.ts';
import { StbVorbis } from 'stb-vorbis';
import { bad, failure, good, type Outcome } from '../../base/outcome.ts';
import { hasMark, viewOf, type ByteSource } from '../bytes/bytes.ts';
import { oggPages, type OggPage } from './ogg-pages.ts';
import { unusable, type ChannelBlock, type PcmStream, type Warn } from './pcm.ts';

/** Encoded bytes that are decoded at once: about a minute of music, some tens of megabytes as samples. */
const PIECE_BYTES = 1 << 20;
const HEADER_PACKETS = 3;
/** A piece that can't be decoded is replaced by silence of its length; a longer one is a damaged number. */
const LONGEST_HOLE_SECONDS = 600;

/** Other codecs that come in an Ogg file, by the mark of their first packet. */
const OTHER_CODECS: readonly (readonly [mark: string, codec: OggCodec])[] = [
  ['OpusHead', 'opus'],
  ['\x7fFLAC', 'flac'],
  ['Speex   ', 'speex'],
  ['\x80theora', 'theora'],
];

interface Identification {
  readonly serial: number;
  readonly sampleRate: number;
  readonly channels: number;
}

/** The first packet of a Vorbis stream (Vorbis I, section 4.2.2). */
function identification(page: OggPage): Identification | null {
  const { bytes, bodyOffset, serial } = page;
  if (!hasMark(bytes, '\x01vorbis', bodyOffset) || bytes.length < bodyOffset + 16) return null;
  return {
    serial,
    channels: bytes[bodyOffset + 11]!,
    sampleRate: viewOf(bytes).getUint32(bodyOffset + 12, true),
  };
}

function joined(parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

interface Piece {
  /** A whole small file. */
  readonly bytes: Uint8Array;
  /** Frames that are new in it (at its end), or null for all of them. */
  readonly newFrames: number | null;
}

interface HeldPage {
  readonly bytes: Uint8Array;
  readonly continued: boolean;
}

/** Cuts the stream into pieces. Calls `ended` when the stream marks its end. */
async function* pieces(
  source: ByteSource,
  stream: Identification,
  lost: () => void,
  ended: () => void,
): AsyncGenerator<Piece> {
  const headers: Uint8Array[] = [];
  let headerPackets = 0;
  let before: readonly HeldPage[] = [];
  let pages: HeldPage[] = [];
  let size = 0;
  /** Granule of the last page that had one, and the same at the end of the piece before. */
  let granule: number | null = null;
  let pieceStart: number | null = null;
  const piece = (): Piece => ({
    bytes: joined([...headers, ...[...before, ...pages].map((page) => page.bytes)]),
    newFrames: pieceStart === null || granule === null ? null : granule - pieceStart,
  });
  for await (const page of oggPages(source, lost)) {
    if (page.serial !== stream.serial) continue;
    const bytes = page.bytes.slice();
    if (headerPackets < HEADER_PACKETS) {
      headers.push(bytes);
      headerPackets += page.packets;
      continue;
    }
    // A piece may end where the next page begins with a packet of its own and the time is known.
    if (size >= PIECE_BYTES && !page.continued && granule !== null) {
      yield piece();
      // The last pages are decoded again and their samples discarded, from a page that begins with a packet of its own.
      before = pages.slice(
        Math.max(
          0,
          pages.findLastIndex((held) => !held.continued),
        ),
      );
      pages = [];
      size = 0;
      pieceStart = granule;
    }
    pages.push({ bytes, continued: page.continued });
    size += bytes.length;
    granule = page.granule ?? granule;
    if (page.ends) {
      ended();
      break;
    }
  }
  if (pages.length > 0) yield piece();
}

/** The decoded samples of one piece, or null where it cannot be decoded. */
function decoded(bytes: Uint8Array): readonly Float32Array[] | null {
  try {
    return StbVorbis.decode(bytes).channels;
  } catch {
    return null;
  }
}

async function* readBlocks(
  source: ByteSource,
  stream: Identification,
  warn: Warn,
): AsyncGenerator<ChannelBlock> {
  let losses = 0;
  let complete = false;
  const longestHole = LONGEST_HOLE_SECONDS * stream.sampleRate;
  const cut = pieces(
    source,
    stream,
    () => losses++,
    () => (complete = true),
  );
  for await (const { bytes, newFrames } of cut) {
    const channels = decoded(bytes);
    if (channels) {
      const length = channels[0]?.length ?? 0;
      const from = newFrames === null ? 0 : Math.max(0, length - Math.max(0, newFrames));
      if (length > from) yield channels.map((samples) => samples.subarray(from));
    } else {
      losses++;
      if (newFrames !== null && newFrames > 0 && newFrames <= longestHole)
        yield Array.from({ length: stream.channels }, () => new Float32Array(newFrames));
    }
  }
  if (!complete) warn(notice('sound.cutStream', { name: source.name }));
  else if (losses > 0) warn(notice('sound.damaged', { name: source.name, places: null, silence: false }));
}

/** Opens an Ogg file whose first stream is Vorbis. */
export async function openVorbis(source: ByteSource): Promise<Outcome<PcmStream>> {
  const { name } = source;
  let stream: Identification | null = null;
  for await (const page of oggPages(source, () => undefined)) {
    const other = OTHER_CODECS.find(([mark]) => hasMark(page.bytes, mark, page.bodyOffset));
    if (other) return bad('ogg.codec', { name, codec: other[1] });
    stream = identification(page);
    break;
  }
  if (!stream) return bad('ogg.noVorbis', { name });
  const found = stream;
  const unfit = unusable(name, found.sampleRate, found.channels);
  if (unfit !== null) return failure(unfit);
  await StbVorbis.ready;
  return good({
    sampleRate: found.sampleRate,
    channels: found.channels,
    expectedFrames: null,
    blocks: (warn) => readBlocks(source, found, warn),
  });
}
