/** Problems of the files that are opened. */
import { type ForeignFile, type OggCodec, isArchive, isConvertible } from '../entries/entry.ts';
import { several } from './grammar.ts';
import { type Named, quoted, noun } from './phrases.ts';

const READABLE_FILES =
  'Landfall reads WAV, MP3, FLAC and Ogg Vorbis audio, MIDI files, and tables with the header onset,duration,pitch';

/** Files that are known and can't be graded. */
const FOREIGN_FILES: Readonly<Record<ForeignFile, string>> = {
  mp4: 'an MP4 or M4A file',
  aiff: 'an AIFF file',
  caf: 'a Core Audio file',
  rifx: 'a big-endian WAV file',
  wma: 'a Windows Media file',
  webm: 'a WebM or Matroska file',
  ape: 'a Monkey’s Audio file',
  wavpack: 'a WavPack file',
  au: 'an AU file',
  aac: 'an AAC stream',
  w64: 'a Wave64 file',
  amr: 'an AMR voice recording',
  mp2: 'an MPEG file of layer II (MP2)',
  ac3: 'an AC-3 file',
  tta: 'a True Audio file',
  dsd: 'a DSD file',
  voc: 'a Creative Voice file',
  '8svx': 'an 8SVX file',
  mpeg: 'a video (MPEG)',
  avi: 'a video (AVI)',
  rmid: 'a MIDI file in a RIFF file (.rmi)',
  webp: 'a picture (WebP)',
  png: 'a picture (PNG)',
  jpeg: 'a picture (JPEG)',
  gif: 'a picture (GIF)',
  bmp: 'a picture (BMP)',
  pdf: 'a PDF document',
  zip: 'a zip archive',
  gzip: 'a gzip archive',
  '7z': 'a 7z archive',
  program: 'a program',
};

function foreignAdvice(kind: ForeignFile): string {
  if (isArchive(kind)) return 'unpack it and give a recording';
  if (kind === 'rmid') return 'save it as a MIDI file (.mid)';
  return isConvertible(kind) ? 'save it as WAV, FLAC, MP3 or Ogg Vorbis and try again' : 'give a recording';
}

const OGG_CODECS: Readonly<Record<OggCodec, string>> = {
  opus: 'Opus',
  flac: 'FLAC inside Ogg',
  speex: 'Speex',
  theora: 'Theora video',
};

export const problemsOfFiles = {
  // ── files ──
  'file.gone': ({ name }: Named) =>
    `${name} can’t be read: it was moved, changed or removed since it was chosen. Choose it again.`,
  'file.empty': ({ name }: Named) => `${name} is empty; give a recording or a list of notes.`,
  'file.tagOnly': ({ name }: Named) => `${name} holds a tag but no sound; the file may be cut short.`,
  'file.foreign': ({ name, kind }: Named & { kind: ForeignFile }) =>
    `${name} is ${FOREIGN_FILES[kind]}, which can’t be graded; ${foreignAdvice(kind)}.`,
  'file.zeros': ({ name }: Named) =>
    `${name} holds only zeros and no recording; it may not have been saved completely.`,
  'file.readerNotLoaded': ({ name }: Named) =>
    `${name} can’t be opened now: the part of Landfall that reads such files did not load. Start the server that this page came from, reload the page, then try again.`,
  'file.unknown': ({ name }: Named) => `${name} is not a file that can be graded. ${READABLE_FILES}.`,
  'file.text': ({ name }: Named) => `${name} is text, not sound or a list of notes. ${READABLE_FILES}.`,
  'file.beats': ({ name }: Named) =>
    `${name} is a list of beats, not of notes: it goes with a line (at the command line, after --beats); give a recording or a list of notes.`,
  'file.notesNoSound': ({ name }: Named) =>
    `${name} is a list of notes and holds no sound; give a recording.`,
  'file.tooLongForWhole': ({ name, minutes }: Named & { minutes: number }) =>
    `${name} is longer than ${minutes} minutes; cut it into takes, or grade it on the command line.`,
  'take.tooLongWithBacking': ({ name, minutes }: Named & { minutes: number }) =>
    `${name} is longer than ${minutes} minutes, too long to have its backing taken out; cut it into takes.`,
  'file.tooLongToPlay': ({ name, minutes }: Named & { minutes: number }) =>
    `${name} is longer than ${minutes} minutes: keep only the part you play to.`,
  'file.listTooLong': ({ name }: Named) => `${name} is too long for a list of notes; cut it into takes.`,
  'file.takeTooLong': ({ name, hours }: Named & { hours: number }) =>
    `${name} goes on past ${hours} hours, which no take may: cut it into takes, or look for a time that is wrong.`,
  'file.tooLarge': ({ name, megabytes }: Named & { megabytes: number }) =>
    `${name} is larger than ${megabytes} MB, too large for what it is asked to be.`,
  'file.tooManyNotes': ({ name, most }: Named & { most: number }) =>
    `${name} has more than ${most} notes; cut it into takes.`,
  'grade.tooManyChanges': ({ most }: { most: number }) =>
    `More than ${most} chords go by in this take, more than can be graded: grade it in parts, or write fewer chords in a bar.`,
  'grade.tooManyParts': ({ most }: { most: number }) =>
    `The notes of this take sound on through more than ${most} chords, counted note by note: look for notes that are never ended, or grade it in parts.`,
  'file.tooManyBeats': ({ name, most }: Named & { most: number }) =>
    `${name} has more than ${most} beats; cut it into takes.`,
  'notes.unit': ({ name, unit }: Named & { unit: 'milliseconds' | 'samples' }) =>
    `${name} has its times in ${unit}, it seems, and must have them in seconds: divide onset and duration by ${unit === 'samples' ? 'the sample rate' : '1000'}.`,
  'sound.manyBlocks': ({ name, most }: Named & { most: number }) =>
    `${name} has more than ${most} blocks before its sound; it is damaged: save or export it again.`,
  'sound.noNumber': ({ name }: Named) =>
    `${name} has not one sample that can be sound: all are no numbers, infinite or far too large; save or export it again.`,
  'file.notAllText': ({ name }: Named) =>
    `${name} is not text throughout; save it as a UTF-8 table and try again.`,
  'file.notText': ({ name }: Named) => `${name} is not text; save it as UTF-8 text and try again.`,
  'file.noSound': ({ name }: Named) =>
    `${name} holds no sound that can be read; it may be damaged: save or export it again.`,
  'table.longRow': ({ name, line, most }: Named & { line: number; most: number }) =>
    `${name}: the row at line ${line} has more than ${most} characters; look for a quotation mark that is never closed.`,
  'table.columns': ({
    name,
    missing,
    wanted,
  }: Named & { missing: readonly string[]; wanted: readonly string[] }) =>
    `${name} has no column ${quoted(missing).join(', ')} in its first line; begin it with the header ${wanted.join(',')}.`,
  'notes.cell': ({
    name,
    line,
    column,
    cell,
    highest,
  }: Named & { line: number; column: 'onset' | 'duration' | 'pitch'; cell: string; highest: number }) => {
    const range = {
      onset: 'a number of seconds',
      duration: 'a number of seconds, 0 or more',
      pitch: `a MIDI number from 0 to ${highest}`,
    };
    return `${name}, line ${line}: the ${column} "${cell}" is not ${range[column]}; correct that line.`;
  },
  'notes.none': ({ name }: Named) => `${name} has a header and no notes under it; add a row for each note.`,
  'midiFile.damaged': ({ name }: Named) =>
    `${name} is a damaged MIDI file; save it again as a standard MIDI file.`,
  'midiFile.format': ({ name, format }: Named & { format: number }) =>
    `${name} is a MIDI file of format ${format}; save it as format 0 or 1.`,
  'midiFile.noNotes': ({ name }: Named) =>
    `${name} has no notes in it (percussion is left out); give a file with a line.`,
  'midiFile.noPart': ({ name, parts, part }: Named & { parts: number; part: number }) =>
    `${name} has ${parts} ${noun(parts, 'part')} with notes, and no part ${part}.`,
  'midiFile.tooManyBends': ({ name, most }: Named & { most: number }) =>
    `The notes of ${name} sound on through more than ${most} pitch bends, counted note by note: look for notes that are never ended, or cut it into takes.`,
  'midiFile.noTempo': ({ name }: Named) => `${name} counts frames instead of beats; save it with a tempo.`,
  'midiFile.meterChanges': ({ name, from, to }: Named & { from: string; to: string }) =>
    `${name} changes its meter from ${from} to ${to}; a chart has one meter: split the file there.`,
  'midiFile.meter': ({ name, meter }: Named & { meter: string }) =>
    `${name} is in ${meter}, a meter that a chart can’t have here.`,
  'midiFile.noChords': ({ name }: Named) =>
    `${name} has no chord symbols among its markers and texts; give a chart, or a MIDI file with some.`,
  'archive.cutShort': ({ name }: Named) =>
    `${name} ends too early or is no zip archive; copy it again from where it came.`,
  'archive.manyParts': ({ name, most }: Named & { most: number }) =>
    `${name} has more than ${most} parts, which no file of Landfall has; nothing was taken from it.`,
  'archive.partTwice': ({ name, part }: Named & { part: string }) =>
    `${name} has two parts with the name ${part}; nothing was taken from it.`,
  'archive.partName': ({ name }: Named) =>
    `${name} has a part whose name leads out of the archive or can’t be read; nothing was taken from it.`,
  'archive.encrypted': ({ name, part }: Named & { part: string }) =>
    `${name} is encrypted (${part}); unpack it with its password and pack it again without one.`,
  'archive.packing': ({ name, part }: Named & { part: string }) =>
    `${part} in ${name} is packed in a way that Landfall does not read; pack it again as a plain zip archive.`,
  'archive.damaged': ({ name, part }: Named & { part: string }) =>
    `${part} in ${name} is damaged; copy the file again from where it came.`,
  'archive.bomb': ({ name, part }: Named & { part: string }) =>
    `${part} in ${name} becomes far too large when it is unpacked; nothing was taken from it.`,
  'takeFile.none': ({ name }: Named) =>
    `${name} is a zip archive, but no take of Landfall: it has no part take.json.`,
  'takeFile.noTakes': ({ name }: Named) =>
    `${name} holds no takes: choose a file that Landfall has saved (.landfall or .zip). A recording is opened with “Open a recording”.`,
  'takeFile.newer': ({ name, version }: Named & { version: number }) =>
    `${name} was saved by a newer Landfall (version ${version} of the file); load the page anew to get it.`,
  'takeFile.notJson': ({ name, part }: Named & { part: string }) =>
    `${part} in ${name} is not JSON; nothing was taken from it.`,
  'takeFile.field': ({ name, part, field }: Named & { part: string; field: string }) =>
    `${part} in ${name} is not as Landfall writes it${field === '' ? '' : `: look at ${field}`}; nothing was taken from it.`,
  'takeFile.chart': ({ name, cause }: Named & { cause: string }) =>
    `The chart in ${name} can’t be used: ${cause}`,
  'takeFile.tooLong': ({ name, hours }: Named & { hours: number }) =>
    `${name} is longer than ${several(hours, 'hour')}; a take can’t be so long.`,
  'takeFile.sound': ({ name, part, sampleRate }: Named & { part: string; sampleRate: number }) =>
    `${part} in ${name} does not fit its take.json: it has to be WAV, one channel, 16 bits, ${sampleRate} Hz, and as long as said there.`,
  'takeFile.noLine': ({ name }: Named) =>
    `${name} has neither a sound nor notes; there is nothing to grade in it.`,
  'sound.noChannel': ({ name }: Named) =>
    `${name} has no channel by its header; the header is damaged, so save the file again.`,
  'sound.sampleRate': ({
    name,
    hz,
    lowest,
    highest,
  }: Named & { hz: number; lowest: number; highest: number }) =>
    `${name} has a sample rate of ${hz} Hz; it must lie between ${lowest} and ${highest} Hz: save it again at 44100 or 48000.`,
  'flac.header': ({ name }: Named) => `${name} is a FLAC file with a damaged header; encode it again.`,
  'flac.empty': ({ name }: Named) =>
    `${name} is a FLAC file with no samples in it; it may be cut short: encode it again.`,
  'mp3.empty': ({ name }: Named) => `${name} has no MP3 sound in it; it may be damaged: save it again.`,
  'wav.header': ({ name }: Named) => `${name} is a WAV file with a damaged header; save it again.`,
  'wav.samples': ({ name, format, bits }: Named & { format: string | number; bits: number | null }) =>
    `${name} is a WAV file with ${bits !== null ? `${bits}-bit` : typeof format === 'number' ? `format ${format}` : format} samples, which can’t be read; save it as 16 or 24-bit PCM and try again.`,
  'wav.noFormat': ({ name }: Named) =>
    `${name} is a WAV file that does not say how its samples are written; save it again.`,
  'wav.empty': ({ name }: Named) =>
    `${name} is a WAV file with no samples in it; it may be cut short, or nothing was recorded.`,
  'ogg.codec': ({ name, codec }: Named & { codec: OggCodec }) =>
    `${name} holds ${OGG_CODECS[codec]}, which can’t be read; save it as WAV, FLAC, MP3 or Ogg Vorbis.`,
  'ogg.noVorbis': ({ name }: Named) =>
    `${name} is an Ogg file with no Vorbis sound in it; save it again as WAV or FLAC.`,
  'take.gone': 'This take is no longer on this machine.',
  'take.unreadable': ({ id }: { id: string }) =>
    `The record of take ${id} can’t be read; its sound is kept, and the other takes are unchanged.`,
  'take.onlyInMemory':
    'The disk is full: the rest of this take is in memory only. It is graded all the same; save it as a file before you close the page.',
  'take.calledOff': 'The take was cancelled before it began.',
  'take.notesHaveNoBacking': ({ name }: { name: string }) =>
    `${name} is not a recording: there is no backing to take out of it.`,
  'take.backingIsNotes': ({ name }: { name: string }) =>
    `${name} is a list of notes, not a recording of a backing: choose another file.`,
  'take.soundLost': 'The browser is losing sound, and the notes in it are lost too. Close other programs.',
  'take.slipped': ({ ms, time, late }: { ms: number; time: string; late: boolean }) =>
    `The sound jumped by ${ms} ms at ${time}: the notes after it are placed ${ms} ms too ${late ? 'late' : 'early'}. Close other programs.`,
};
