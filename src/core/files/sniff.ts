/**
 * What a file is, told by its content: the suffix may lie. Every kind that can't be used has its problem.
 */
import { bad, good, type Outcome } from '../base/outcome.ts';
import { hasMark, type ByteSource } from './bytes/bytes.ts';
import { BEAT_COLUMNS } from './charts/beats-csv.ts';
import { ID3_HEADER_BYTES, id3Length } from './sound/id3.ts';
import { findFrame } from './sound/mp3-frames.ts';
import { NOTE_COLUMNS } from './notes/notes-csv.ts';
import { headerOf } from './bytes/table.ts';
import { decodeText } from './bytes/text.ts';
import type { ForeignFile } from '../words/entries/entry.ts';
import { isWav } from './sound/wav-header.ts';

export type AudioKind = 'wav' | 'mp3' | 'flac' | 'ogg';
export type FileKind = AudioKind | 'midi' | 'notes' | 'beats' | 'text';

/** Enough for every mark, a table's header, and a few mp3 frames behind some junk. */
const HEAD_BYTES = 16_384;

interface Mark {
  readonly mark: string;
  readonly offset?: number;
  readonly second?: { readonly mark: string; readonly offset: number };
  readonly kind: ForeignFile;
}

/** Known files that are not for us, by their published marks. */
const OTHERS: readonly Mark[] = [
  { mark: 'ftyp', offset: 4, kind: 'mp4' },
  { mark: 'FORM', second: { mark: 'AIF', offset: 8 }, kind: 'aiff' },
  { mark: 'caff', kind: 'caf' },
  { mark: 'RIFX', kind: 'rifx' },
  { mark: '\x30\x26\xb2\x75', kind: 'wma' },
  { mark: '\x1a\x45\xdf\xa3', kind: 'webm' },
  { mark: 'MAC ', kind: 'ape' },
  { mark: 'wvpk', kind: 'wavpack' },
  { mark: '.snd', kind: 'au' },
  { mark: 'riff\x2e\x91\xcf\x11', kind: 'w64' },
  { mark: '#!AMR', kind: 'amr' },
  { mark: '\x0b\x77', kind: 'ac3' },
  { mark: 'TTA1', kind: 'tta' },
  { mark: 'DSD ', kind: 'dsd' },
  { mark: 'FRM8', kind: 'dsd' },
  { mark: 'Creative Voice File', kind: 'voc' },
  { mark: 'FORM', second: { mark: '8SVX', offset: 8 }, kind: '8svx' },
  { mark: '\0\0\x01\xba', kind: 'mpeg' },
  { mark: 'RIFF', second: { mark: 'RMID', offset: 8 }, kind: 'rmid' },
  { mark: 'RIFF', second: { mark: 'AVI ', offset: 8 }, kind: 'avi' },
  { mark: 'RIFF', second: { mark: 'WEBP', offset: 8 }, kind: 'webp' },
  { mark: '\x89PNG', kind: 'png' },
  { mark: '\xff\xd8\xff', kind: 'jpeg' },
  { mark: 'GIF8', kind: 'gif' },
  { mark: 'BM', second: { mark: '\0\0\0\0', offset: 6 }, kind: 'bmp' },
  { mark: '%PDF', kind: 'pdf' },
  { mark: 'PK\x03\x04', kind: 'zip' },
  { mark: '\x1f\x8b', kind: 'gzip' },
  { mark: '7z\xbc\xaf', kind: '7z' },
  { mark: '\x7fELF', kind: 'program' },
  { mark: 'MZ', kind: 'program' },
];

function otherKind(head: Uint8Array): Mark | undefined {
  return OTHERS.find(
    ({ mark, offset, second }) =>
      hasMark(head, mark, offset) && (!second || hasMark(head, second.mark, second.offset)),
  );
}

function textKind(text: string): FileKind {
  const header = headerOf(text);
  const has = (columns: readonly string[]) => columns.filter((column) => header.includes(column)).length;
  if (has(NOTE_COLUMNS) >= 2) return 'notes';
  if (has(BEAT_COLUMNS) === BEAT_COLUMNS.length) return 'beats';
  return 'text';
}

/** ADTS: the raw AAC stream has a sync word much like that of mp3, with layer bits of 0. */
const isAdts = (head: Uint8Array) => head[0] === 0xff && (head[1]! & 0xf6) === 0xf0;

/** A frame of layer II (ISO/IEC 11172-3): its sync word, then a bit rate and a sample rate that there are. */
const isLayerTwo = (head: Uint8Array) =>
  head[0] === 0xff && (head[1]! & 0xe6) === 0xe4 && head[2]! >> 4 < 15 && ((head[2]! >> 2) & 3) < 3;

/** Packets of 188 bytes, each with its sync byte (ISO/IEC 13818-1). */
const isTransportStream = (head: Uint8Array) => [0, 188, 376].every((at) => head[at] === 0x47);

/**
 * Tells what a file is.
 * @returns its kind, or a problem where it is none that can be used.
 */
export async function sniff(source: ByteSource): Promise<Outcome<FileKind>> {
  const { name } = source;
  if (source.size === 0) return bad('file.empty', { name });
  let head = await source.read(0, HEAD_BYTES);
  if (hasMark(head, 'ID3')) {
    // A tag may stand before any stream, and may hold a picture of a megabyte: look behind it.
    const behind = id3Length(head.subarray(0, ID3_HEADER_BYTES));
    if (behind >= source.size) return bad('file.tagOnly', { name });
    head = await source.read(behind, HEAD_BYTES);
  }
  if (isWav(head)) return good('wav');
  if (hasMark(head, 'fLaC')) return good('flac');
  if (hasMark(head, 'OggS')) return good('ogg');
  if (hasMark(head, 'MThd')) return good('midi');
  const other = otherKind(head);
  if (other) return bad('file.foreign', { name, kind: other.kind });
  const text = decodeText(head, head.length < source.size);
  if (text !== null) return good(textKind(text));
  if (isAdts(head)) return bad('file.foreign', { name, kind: 'aac' });
  if (findFrame(head, 0)) return good('mp3');
  if (isLayerTwo(head)) return bad('file.foreign', { name, kind: 'mp2' });
  if (isTransportStream(head)) return bad('file.foreign', { name, kind: 'mpeg' });
  if (head.every((byte) => byte === 0)) return bad('file.zeros', { name });
  return bad('file.unknown', { name });
}
