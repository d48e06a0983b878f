/**
 * Standard MIDI files (format 0 and 1) as a line of notes, over midi-file.
 *
 * One part is graded. Parts are the tracks of format 1; the channels of format 0, unless all of them play one
 * program: then they are the strings of one instrument (guitar and MPE controllers give each its channel).
 * Channel 10, percussion by General MIDI, is left out. Of several parts the first choice is the one with most
 * notes among those that are a line (few notes sound together), else the one with most notes.
 */
import { parseMidi, type MidiData, type MidiEvent } from 'midi-file';
import type { HeardNote } from '../../take/note.ts';
import { bad, good, type Outcome } from '../../base/outcome.ts';
import { notice, type Notice } from '../../words/problem.ts';
import { MOST_NOTE_BENDS } from '../../base/limits.ts';
import { fourCharacters, viewOf } from '../bytes/bytes.ts';
import { bendTrack, type BendTrack } from '../../midi/midi-bend.ts';
import { midiClock } from './midi-clock.ts';
import { midiText } from './midi-text.ts';
import { wholeEvents } from './midi-events.ts';
import { listedNote } from '../../take/listed-note.ts';

export interface MidiLine {
  readonly notes: readonly HeardNote[];
  /** What the player should know. */
  readonly warnings: readonly Notice[];
}

/** Channel 10 in the player's count. */
const PERCUSSION = 9;
const CHUNK_HEADER_BYTES = 8;
/** A part is a line when at most this share of its notes begins while another sounds on. */
const MOST_TOGETHER = 0.25;
/** Legato overlaps by this little count as one after the other. */
const LEGATO_OVERLAP_SECONDS = 0.06;
/** Wavering below this is vibrato and no bend. */
const SMALLEST_BEND_SEMITONES = 0.3;

/** Keeps the header and the tracks: the standard lets other chunks stand between them. */
function tracksOnly(bytes: Uint8Array): { readonly bytes: number[]; readonly cut: boolean } {
  const kept: number[] = [];
  let cut = false;
  for (let at = 0; at + CHUNK_HEADER_BYTES <= bytes.length;) {
    const id = fourCharacters(bytes, at);
    const length = viewOf(bytes).getUint32(at + 4);
    const end = at + CHUNK_HEADER_BYTES + length;
    if (id === 'MThd' || id === 'MTrk') {
      if (end > bytes.length) cut = true;
      for (let k = at; k < Math.min(end, bytes.length); k++) kept.push(bytes[k]!);
    }
    at = end;
  }
  return { bytes: kept, cut };
}

/** A name that says something; null for one of nothing but blanks and control characters. */
function nameIn(written: string): string | null {
  const name = midiText(written);
  return /[^\s\p{C}]/u.test(name) ? name : null;
}

interface Part {
  /** Its name and its place in the file, counted from 1. */
  readonly place: {
    readonly title: string | null;
    readonly track: number | null;
    readonly channel: number | null;
  };
  readonly notes: readonly HeardNote[];
}

/** The notes of one key, of which the first were ended. */
interface OpenNote {
  readonly starts: number[];
  ended: number;
}

/** More bends pass under the notes of a file than are gone through. */
class TooManyBends extends Error {}

/**
 * Notes of one track, each with its channel.
 * @param bendsLeft how many bends may be gone through yet, counted note by note, over all tracks; throws `TooManyBends`
 */
function notesOf(
  track: readonly MidiEvent[],
  secondsAt: (tick: number) => number,
  bendsLeft: { count: number },
): { readonly channel: number; readonly note: HeardNote }[] {
  const found: { channel: number; note: HeardNote }[] = [];
  const bends = Array.from({ length: 16 }, (): BendTrack => bendTrack());
  const open = Array.from({ length: 16 }, () => new Map<number, OpenNote>());
  let tick = 0;
  const close = (channel: number, key: number, seconds: number) => {
    const note = open[channel]!.get(key);
    const start = note?.starts[note.ended];
    if (note === undefined || start === undefined) return;
    note.ended++;
    const bend = bends[channel]!;
    bendsLeft.count -= bend.bendsSince(start);
    if (bendsLeft.count < 0) throw new TooManyBends();
    const heard = bend.heard(start, seconds);
    const moved = heard - bend.at(start);
    found.push({
      channel,
      note: {
        ...listedNote(start, seconds - start, key + heard),
        bendSemitones: Math.abs(moved) < SMALLEST_BEND_SEMITONES ? 0 : moved,
      },
    });
  };
  const begin = (channel: number, key: number, seconds: number) => {
    const known = open[channel]!.get(key);
    if (known === undefined) open[channel]!.set(key, { starts: [seconds], ended: 0 });
    else known.starts.push(seconds);
  };
  for (const event of track) {
    tick += event.deltaTime;
    const seconds = secondsAt(tick);
    if (event.type === 'noteOn' && event.velocity > 0) begin(event.channel, event.noteNumber, seconds);
    else if (event.type === 'noteOn' || event.type === 'noteOff')
      close(event.channel, event.noteNumber, seconds);
    else if (event.type === 'pitchBend') bends[event.channel]!.bend(seconds, event.value);
    else if (event.type === 'controller') bends[event.channel]!.control(event.controllerType, event.value);
  }
  // A note that is never ended sounds to the end of its track.
  const end = secondsAt(tick);
  open.forEach((sounding, channel) => {
    for (const [key, { starts, ended }] of sounding)
      for (let left = starts.length - ended; left > 0; left--) close(channel, key, end);
  });
  return found
    .filter(({ channel }) => channel !== PERCUSSION)
    .sort((a, b) => a.note.onsetSeconds - b.note.onsetSeconds);
}

function parts(data: MidiData, secondsAt: (tick: number) => number): Part[] {
  const single = data.header.format === 0;
  const bendsLeft = { count: MOST_NOTE_BENDS };
  return data.tracks.flatMap((track, index): Part[] => {
    const found = notesOf(track, secondsAt, bendsLeft);
    const named = track.find((event) => event.type === 'trackName');
    const place = {
      title: named?.type === 'trackName' ? nameIn(named.text) : null,
      track: index + 1,
      channel: null,
    };
    const programs = new Set(
      track.flatMap((event) => (event.type === 'programChange' ? [event.programNumber] : [])),
    );
    if (!single || programs.size <= 1) return [{ place, notes: found.map(({ note }) => note) }];
    const channels = [...new Set(found.map(({ channel }) => channel))].sort((a, b) => a - b);
    return channels.map((channel) => ({
      place: { title: null, track: null, channel: channel + 1 },
      notes: found.filter((one) => one.channel === channel).map(({ note }) => note),
    }));
  });
}

function isLine({ notes }: Part): boolean {
  const together = notes.filter((note, k) => {
    const before = notes[k - 1];
    return before !== undefined && before.offsetSeconds > note.onsetSeconds + LEGATO_OVERLAP_SECONDS;
  });
  return together.length <= MOST_TOGETHER * notes.length;
}

/**
 * Reads the line out of a standard MIDI file.
 * @param name the file, for the problems.
 * @param part which part to take, from 1, in the order of the file; null to choose.
 */
export function readMidi(bytes: Uint8Array, name: string, part: number | null = null): Outcome<MidiLine> {
  const damaged = bad('midiFile.damaged', { name });
  const warnings: Notice[] = [];
  let data: MidiData;
  try {
    const kept = tracksOnly(bytes);
    data = parseMidi(kept.bytes);
    const tracks = data.tracks.map(wholeEvents);
    const isShorter = tracks.some((track, i) => track.length < data.tracks[i]!.length);
    data = { ...data, tracks };
    if (kept.cut || isShorter) warnings.push(notice('midiFile.cut', { name }));
  } catch {
    return damaged;
  }
  if (data.header.format > 1) return bad('midiFile.format', { name, format: data.header.format });
  const secondsAt = midiClock(data);
  if (!secondsAt) return damaged;
  let found: Part[];
  try {
    found = parts(data, secondsAt).filter(({ notes }) => notes.length > 0);
  } catch (error) {
    if (error instanceof TooManyBends) return bad('midiFile.tooManyBends', { name, most: MOST_NOTE_BENDS });
    throw error;
  }
  if (found.length === 0) return bad('midiFile.noNotes', { name });
  const byLength = [...found].sort((a, b) => b.notes.length - a.notes.length);
  const chosen = part === null ? (byLength.find(isLine) ?? byLength[0]!) : found[part - 1];
  if (!chosen) return bad('midiFile.noPart', { name, parts: found.length, part: part ?? 0 });
  if (part === null && found.length > 1)
    warnings.push(
      notice('midiFile.partTaken', {
        name,
        parts: found.length,
        part: found.indexOf(chosen) + 1,
        ...chosen.place,
      }),
    );
  return good({ notes: chosen.notes, warnings });
}
