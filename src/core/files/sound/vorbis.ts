/**
 * Ogg Vorbis files through stb_vorbis (public domain, in the Apache-2.0 package stb-vorbis). The package takes
 * a whole file at once, and two hours would not fit; so it is given pieces that are files of their own: the
 * headers, some packets before (a packet sounds only together with the one before it), and a megabyte of packets.
 * How long every packet sounds is read from the packet, so that no sample is lost or doubled where pieces meet.
 */
import { notice } from '../../words/problem.ts';
import type { OggCodec } from '../../words/entries/entry.ts';
import { StbVorbis } from 'stb-vorbis';
import { bad, failure, good, type Outcome } from '../../base/outcome.ts';
import { hasMark, type ByteSource } from '../bytes/bytes.ts';
import { isIntact, oggFileOf, oggPackets, oggPages, type OggPacket, type OggPage } from './ogg-pages.ts';
import { unusable, type ChannelBlock, type PcmStream, type Warn } from './pcm.ts';
import {
  blockReader,
  longModes,
  vorbisIdentification,
  type VorbisBlock,
  type VorbisIdentification,
} from './vorbis-headers.ts';

/** Encoded bytes that are decoded at once: about a minute of music, some tens of megabytes as samples. */
const PIECE_BYTES = 1 << 20;
/** Encoded bytes by which a file shows, as it is opened, that it can be decoded. */
const TRIED_BYTES = 1 << 14;
const LEAST_TRIED_PACKETS = 12;
const HEADER_PACKETS = 3;
/** The mark of an Ogg Skeleton, which some programs put before the sound (Xiph.Org, Ogg Skeleton 4.0). */
const SKELETON = 'fishead\0';
/** The mark of the first packet of a Vorbis stream. */
const VORBIS = '\x01vorbis';
/** A stretch that is lost is replaced by silence of its length; a longer one is a damaged number. */
const LONGEST_HOLE_SECONDS = 600;

/** Other codecs that come in an Ogg file, by the mark of their first packet. */
const OTHER_CODECS: readonly (readonly [mark: string, codec: OggCodec])[] = [
  ['OpusHead', 'opus'],
  ['\x7fFLAC', 'flac'],
  ['Speex   ', 'speex'],
  ['\x80theora', 'theora'],
];

interface Stream extends VorbisIdentification {
  readonly serial: number;
  /** Where its first page stands in the file. */
  readonly at: number;
}

/** Packets to decode together. */
interface Piece {
  readonly packets: readonly Uint8Array[];
  /** Frames at the end of what they give that no piece before gave. */
  readonly newFrames: number;
  /** Frames that the decoder gives behind them: it goes to where a block begins to fade, past its middle. */
  readonly behind: number;
  /** Frames that were lost before it. */
  readonly hole: number;
}

interface Held {
  readonly packet: Uint8Array;
  readonly block: VorbisBlock;
}

/** Frames that sound as a block follows another: half of each, overlapping (Vorbis I, section 4.3.8). */
const framesBetween = (one: VorbisBlock, next: VorbisBlock): number => (one.frames + next.frames) / 4;

const framesOf = (held: readonly Held[]): number =>
  held.reduce((sum, { block }, i) => sum + (i === 0 ? 0 : framesBetween(held[i - 1]!.block, block)), 0);

/** Gathers packets into pieces. */
class PieceCutter {
  readonly #pieceBytes: number;
  readonly #longestHole: number;
  #held: Held[] = [];
  /** How many of the held packets were decoded already, and are there to begin with. */
  #old = 0;
  #bytes = 0;
  #hole = 0;
  /** Frames up to the last packet. */
  #position = 0;
  /** A loss whose length the next time of a page will tell. */
  #isLost = false;

  constructor(pieceBytes: number, longestHole: number) {
    this.#pieceBytes = pieceBytes;
    this.#longestHole = longestHole;
  }

  /** Takes a packet in, and gives the pieces that are complete. */
  *take({ bytes, afterLoss, granule, ends }: OggPacket, block: VorbisBlock): Generator<Piece> {
    if (afterLoss) {
      yield* this.rest();
      this.#held = [];
      this.#old = 0;
      this.#isLost = true;
    } else if (this.#bytes >= this.#pieceBytes && !this.#isLost) {
      yield* this.rest();
      const first = this.#held.findLastIndex((one) => one.block.mayBegin);
      this.#held = this.#held.slice(Math.max(0, first));
      this.#old = this.#held.length;
    }
    const before = this.#held.at(-1);
    const frames = before === undefined ? 0 : framesBetween(before.block, block);
    this.#position += frames;
    if (before !== undefined && this.#held.length === 1 && !before.block.mayBegin) {
      // The decoder would leave this out and stop there.
      this.#hole += frames;
      this.#held = [];
    }
    this.#held.push({ packet: bytes, block });
    this.#bytes += bytes.length;
    if (granule === null) return;
    const ahead = granule - this.#position;
    if (this.#isLost) {
      if (ahead > 0 && ahead <= this.#longestHole) {
        this.#hole += ahead;
        this.#position = granule;
      }
      this.#isLost = false;
    } else if (ends && ahead < 0) this.#cut = -ahead;
  }

  /** Frames that the stream's end cuts off. */
  #cut = 0;

  /** What is left. */
  *rest(): Generator<Piece> {
    const fresh = this.#held.slice(Math.max(0, this.#old - 1));
    const newFrames = framesOf(fresh);
    if (newFrames > 0 || this.#hole > 0)
      yield {
        packets: this.#held.map(({ packet }) => packet),
        newFrames,
        behind: this.#held.at(-1)?.block.framesPastMiddle ?? 0,
        hole: this.#hole,
      };
    this.#hole = 0;
    this.#bytes = 0;
  }

  get cutFrames(): number {
    return this.#cut;
  }
}

/** The decoded samples of a piece; null where it cannot be decoded. */
function decoded(
  headers: readonly Uint8Array[],
  packets: readonly Uint8Array[],
  serial: number,
): readonly Float32Array[] | null {
  try {
    const { channels } = StbVorbis.decode(oggFileOf([...headers, ...packets], serial));
    return (channels[0]?.length ?? 0) === 0 ? null : channels;
  } catch {
    return null;
  }
}

/** The streams of a file one after the other, as recorders and radio programs chain them (RFC 3533, section 4). */
async function* readChained(
  source: ByteSource,
  first: Stream,
  warn: Warn,
  pieceBytes: number,
): AsyncGenerator<ChannelBlock> {
  const { sampleRate, channels } = first;
  for (let stream: Stream | null = first; stream !== null;) {
    if (stream.sampleRate !== sampleRate || stream.channels !== channels) {
      warn(notice('sound.otherBehind', { name: source.name }));
      return;
    }
    const end: number | null = yield* readBlocks(source, stream, warn, pieceBytes);
    stream = end === null ? null : await streamAt(source, end);
  }
}

/** The Vorbis stream that begins with the first page from there on; null where none does. */
async function streamAt(source: ByteSource, from: number): Promise<Stream | null> {
  for await (const page of oggPages(source, () => undefined, from)) {
    const body = page.bytes.subarray(page.bodyOffset);
    if (!page.begins || !isIntact(page) || !hasMark(body, VORBIS)) return null;
    const told = vorbisIdentification(body);
    return told && { ...told, serial: page.serial, at: from };
  }
  return null;
}

/** @returns where the file goes on behind the stream; null where it was cut short */
async function* readBlocks(
  source: ByteSource,
  stream: Stream,
  warn: Warn,
  pieceBytes: number,
): AsyncGenerator<ChannelBlock, number | null> {
  let losses = 0;
  let end: number | null = null;
  const headers: Uint8Array[] = [];
  let blockOf: (packet: Uint8Array) => VorbisBlock | null = () => null;
  const cutter = new PieceCutter(pieceBytes, LONGEST_HOLE_SECONDS * stream.sampleRate);
  const silence = (frames: number): ChannelBlock =>
    Array.from({ length: stream.channels }, () => new Float32Array(frames));
  function* sounding(piece: Piece, cut: number): Generator<ChannelBlock> {
    if (piece.hole > 0) yield silence(piece.hole);
    const wanted = Math.max(0, piece.newFrames - cut);
    if (wanted === 0) return;
    const channels = decoded(headers, piece.packets, stream.serial);
    if (channels === null) losses++;
    const length = Math.max(0, (channels?.[0]?.length ?? 0) - piece.behind);
    const from = length - piece.newFrames;
    if (channels === null || from < 0) yield silence(Math.min(wanted, piece.newFrames - length));
    if (channels !== null) yield channels.map((line) => line.subarray(Math.max(0, from), length - cut));
  }
  let before: Piece | null = null;
  for await (const packet of oggPackets(source, stream.serial, () => losses++, stream.at)) {
    if (headers.length < HEADER_PACKETS) {
      headers.push(packet.bytes);
      if (headers.length < HEADER_PACKETS) continue;
      const modes = longModes(packet.bytes);
      if (modes === null) break;
      blockOf = blockReader(stream, modes);
      continue;
    }
    const block = blockOf(packet.bytes);
    if (block !== null)
      for (const piece of cutter.take(packet, block)) {
        if (before !== null) yield* sounding(before, 0);
        before = piece;
      }
    if (packet.ends) {
      end = packet.nextPage;
      break;
    }
  }
  for (const piece of cutter.rest()) {
    if (before !== null) yield* sounding(before, 0);
    before = piece;
  }
  if (before !== null) yield* sounding(before, cutter.cutFrames);
  if (end === null) warn(notice('sound.cutStream', { name: source.name }));
  else if (losses > 0) warn(notice('sound.damaged', { name: source.name, places: null, silence: false }));
  return end;
}

/** Opens an Ogg file whose first stream is Vorbis; streams of its kind that are chained behind it are read on. @param pieceBytes encoded bytes that are decoded at once */
export async function openVorbis(source: ByteSource, pieceBytes = PIECE_BYTES): Promise<Outcome<PcmStream>> {
  const { name } = source;
  let first: OggPage | null = null;
  for await (const page of oggPages(source, () => undefined)) {
    first = page;
    // It describes the other streams, and stands before them.
    if (!hasMark(page.bytes, SKELETON, page.bodyOffset)) break;
  }
  if (first === null) return bad('ogg.noVorbis', { name });
  const { bytes, bodyOffset, serial } = first;
  const other = OTHER_CODECS.find(([mark]) => hasMark(bytes, mark, bodyOffset));
  if (other) return bad('ogg.codec', { name, codec: other[1] });
  if (!hasMark(bytes, VORBIS, bodyOffset)) return bad('ogg.noVorbis', { name });
  const told = isIntact(first) ? vorbisIdentification(bytes.subarray(bodyOffset)) : null;
  if (told === null) return bad('file.noSound', { name });
  const stream: Stream = { ...told, serial, at: 0 };
  const unfit = unusable(name, stream.sampleRate, stream.channels);
  if (unfit !== null) return failure(unfit);
  await StbVorbis.ready;
  if (!(await canBeDecoded(source, stream))) return bad('file.noSound', { name });
  return good({
    sampleRate: stream.sampleRate,
    channels: stream.channels,
    expectedFrames: null,
    blocks: (warn) => readChained(source, stream, warn, pieceBytes),
  });
}

/** Whether the headers and the first packets give any sound. */
async function canBeDecoded(source: ByteSource, stream: Stream): Promise<boolean> {
  const packets: Uint8Array[] = [];
  let size = 0;
  for await (const { bytes } of oggPackets(source, stream.serial, () => undefined)) {
    packets.push(bytes);
    size += packets.length > HEADER_PACKETS ? bytes.length : 0;
    if (size >= TRIED_BYTES && packets.length >= LEAST_TRIED_PACKETS) break;
  }
  return packets.length > HEADER_PACKETS && decoded(packets, [], stream.serial) !== null;
}
