/**
 * What a file is, told by its content: the suffix may lie. Every kind that can't be used has its sentence.
 */
import { badSentence, good, type Outcome } from '../base/outcome.ts';
import { hasMark, type ByteSource } from './bytes/bytes.ts';
import { BEAT_COLUMNS } from './charts/beats-csv.ts';
import { ID3_HEADER_BYTES, id3Length } from './sound/id3.ts';
import { findFrame } from './sound/mp3-frames.ts';
import { NOTE_COLUMNS } from './notes/notes-csv.ts';
import { headerOf } from './bytes/table.ts';
import { decodeText } from './bytes/text.ts';
import { isWav } from './sound/wav-header.ts';

export type AudioKind = 'wav' | 'mp3' | 'flac' | 'ogg';
export type FileKind = AudioKind | 'midi' | 'notes' | 'beats' | 'text';

/** Enough for every mark, a table's header, and a few mp3 frames behind some junk. */
const HEAD_BYTES = 16_384;

const TAKEN =
  'Landfall reads WAV, MP3, FLAC and Ogg Vorbis audio, MIDI files, and tables with the header onset,duration,pitch';
const CONVERT = 'save it as WAV, FLAC, MP3 or Ogg Vorbis and try again';

interface Mark {
  readonly mark: string;
  readonly offset?: number;
  readonly second?: { readonly mark: string; readonly offset: number };
  /** What the file is, as a sentence goes on after its name. */
  readonly is: string;
  readonly todo: string;
}

/** Known files that are not for us, by their published marks. */
const OTHERS: readonly Mark[] = [
  { mark: 'ftyp', offset: 4, is: 'an MP4 or M4A file', todo: CONVERT },
  { mark: 'FORM', second: { mark: 'AIF', offset: 8 }, is: 'an AIFF file', todo: CONVERT },
  { mark: 'caff', is: 'a Core Audio file', todo: CONVERT },
  { mark: 'RIFX', is: 'a big-endian WAV file', todo: CONVERT },
  { mark: '\x30\x26\xb2\x75', is: 'a Windows Media file', todo: CONVERT },
  { mark: '\x1a\x45\xdf\xa3', is: 'a WebM or Matroska file', todo: CONVERT },
  { mark: 'MAC ', is: "a Monkey's Audio file", todo: CONVERT },
  { mark: 'wvpk', is: 'a WavPack file', todo: CONVERT },
  { mark: '.snd', is: 'an AU file', todo: CONVERT },
  { mark: 'RIFF', second: { mark: 'AVI ', offset: 8 }, is: 'a video (AVI)', todo: CONVERT },
  { mark: 'RIFF', second: { mark: 'WEBP', offset: 8 }, is: 'a picture (WebP)', todo: 'give a recording' },
  { mark: '\x89PNG', is: 'a picture (PNG)', todo: 'give a recording' },
  { mark: '\xff\xd8\xff', is: 'a picture (JPEG)', todo: 'give a recording' },
  { mark: 'GIF8', is: 'a picture (GIF)', todo: 'give a recording' },
  { mark: 'BM', second: { mark: '\0\0\0\0', offset: 6 }, is: 'a picture (BMP)', todo: 'give a recording' },
  { mark: '%PDF', is: 'a PDF document', todo: 'give a recording' },
  { mark: 'PK\x03\x04', is: 'a zip archive', todo: 'unpack it and give a recording' },
  { mark: '\x1f\x8b', is: 'a gzip archive', todo: 'unpack it and give a recording' },
  { mark: '7z\xbc\xaf', is: 'a 7z archive', todo: 'unpack it and give a recording' },
  { mark: '\x7fELF', is: 'a program', todo: 'give a recording' },
  { mark: 'MZ', is: 'a program', todo: 'give a recording' },
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

/**
 * Tells what a file is.
 * @returns its kind, or a sentence where it is none that can be used.
 */
export async function sniff(source: ByteSource): Promise<Outcome<FileKind>> {
  const { name } = source;
  if (source.size === 0) return badSentence(`${name} is empty; give a recording or a list of notes.`);
  let head = await source.read(0, HEAD_BYTES);
  if (hasMark(head, 'ID3')) {
    // A tag may stand before any stream, and may hold a picture of a megabyte: look behind it.
    const behind = id3Length(head.subarray(0, ID3_HEADER_BYTES));
    if (behind >= source.size)
      return badSentence(`${name} holds a tag and no sound; the file may be cut short.`);
    head = await source.read(behind, HEAD_BYTES);
  }
  if (isWav(head)) return good('wav');
  if (hasMark(head, 'fLaC')) return good('flac');
  if (hasMark(head, 'OggS')) return good('ogg');
  if (hasMark(head, 'MThd')) return good('midi');
  const other = otherKind(head);
  if (other) return badSentence(`${name} is ${other.is}, which can't be graded; ${other.todo}.`);
  const text = decodeText(head, head.length < source.size);
  if (text !== null) return good(textKind(text));
  if (isAdts(head)) return badSentence(`${name} is an AAC stream, which can't be graded; ${CONVERT}.`);
  if (findFrame(head, 0)) return good('mp3');
  if (head.every((byte) => byte === 0))
    return badSentence(`${name} holds zeros and no recording; it may not have been saved to its end.`);
  return badSentence(`${name} is of no kind that can be graded. ${TAKEN}.`);
}

/** The sentence for a file of text where sound or notes were wanted. */
export const textSentence = (name: string) => `${name} is text, and no sound or list of notes. ${TAKEN}.`;

/** The sentence for a list of beats that was given as the line. */
export const beatsSentence = (name: string) =>
  `${name} is a list of beats, and no notes: it belongs under a line (at the command line, after --beats); give a recording or a list of notes.`;
