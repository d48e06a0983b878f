/**
 * The files that each picker offers, as `accept` takes them. The kind of a file is found from its content
 * (`core/files/sniff.ts`); the suffixes here only shorten the list in the picker. A new audio format is one row in `AUDIO_SUFFIXES`.
 */
import type { AudioKind } from '../../core/files/sniff.ts';

const AUDIO_SUFFIXES: Readonly<Record<AudioKind, readonly string[]>> = {
  wav: ['.wav'],
  mp3: ['.mp3'],
  flac: ['.flac'],
  ogg: ['.ogg'],
};
const MIDI_SUFFIXES = ['.mid', '.midi'];

const audio = ['audio/*', ...Object.values(AUDIO_SUFFIXES).flat()];

/** Recordings to play to. */
export const AUDIO_FILES = audio.join(',');
/** A line to be graded: a recording, a MIDI file or a table of notes. */
export const LINE_FILES = [...audio, ...MIDI_SUFFIXES, '.csv', '.landfall'].join(',');
/** A lesson sheet, or the answer to a take. */
export const LESSON_FILES = '.json,application/json';
/** Takes that were saved, one or many in a file. */
export const TAKE_FILES = ['.landfall', '.zip'].join(',');
/** A chart: text, MusicXML or MIDI. */
export const CHART_FILES = ['.txt', '.musicxml', '.mxl', '.xml', ...MIDI_SUFFIXES].join(',');
