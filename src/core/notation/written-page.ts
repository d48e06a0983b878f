/** A take as a page of music: the written line with its pitches, chords, degrees and places on the neck. */
import { keyAt } from '../chart/keys-through.ts';
import type { Timeline } from '../chart/timeline.ts';
import type { Chord, Key } from '../music/chord.ts';
import type { Instrument, Neck } from '../music/instruments.ts';
import { midiOfName, type Reading } from '../music/reading.ts';
import { sameChord } from '../music/same-chord.ts';
import type { Report, ReportNote } from '../take/schema.ts';
import { fingerLine, type Fingered } from './fingering.ts';
import { quantise } from './quantise.ts';
import type { WrittenLine } from './score.ts';

/** A pitch as it is written. */
export interface SpelledPitch {
  readonly letter: string;
  /** Sharps, flats below nought. */
  readonly alter: number;
  /** 4 for the octave from middle C up, as it stands on the staff. */
  readonly octave: number;
}

export interface PageNote {
  /** The note, and a second one that sounds with it. */
  readonly pitches: readonly SpelledPitch[];
  /** Over its chord, ASCII: "b3"; null where there is none. */
  readonly degree: string | null;
  /** On the neck, for each of the pitches that has a place; empty without a neck. */
  readonly places: Fingered;
  /** Bent up by so many whole semitones from where it is fretted; 0 for a plain note. */
  readonly bend: number;
}

export interface PageChord {
  /** From the start of the measure. */
  readonly atTicks: number;
  /** null is N.C. */
  readonly chord: Chord | null;
}

/** What stands over one measure. */
export interface OverMeasure {
  readonly chords: readonly PageChord[];
  /** Where the signature is written: at the first measure, and where it changes. */
  readonly key: Key | null;
  /** The chorus that begins here, from 1, where a take has more than one; else null. */
  readonly chorus: number | null;
}

export interface WrittenPage {
  readonly line: WrittenLine;
  /** One for each note of the report. */
  readonly notes: readonly PageNote[];
  /** One for each measure. */
  readonly over: readonly OverMeasure[];
  readonly clef: 'treble' | 'bass';
  /** From what is written to what sounds, semitones. */
  readonly soundingFromWritten: number;
  /** The same within an octave as a spelled interval up, from sounding to written: "2M". */
  readonly interval: string;
  readonly neck: Neck | null;
  readonly bpm: number | null;
  readonly swing: number;
}

/**
 * Lays a take out.
 * @param report as it is read: at written or at concert pitch, as `reading` says
 * @param timeline the same
 * @param instrument null where it is not known: treble or bass clef by the notes
 */
export function writtenPage(
  report: Report,
  timeline: Timeline,
  { instrument, reading }: { readonly instrument: Instrument | null; readonly reading: Reading },
): WrittenPage {
  const line = quantise(report.notes, timeline);
  // Guitar and bass are written an octave up, at concert pitch too.
  const octaves =
    (instrument?.soundingFromWritten ?? 0) % 12 === 0 ? -(instrument?.soundingFromWritten ?? 0) / 12 : 0;
  const neck = instrument?.neck ?? null;
  const bends = report.notes.map(bendOf);
  const places =
    instrument === null || neck === null
      ? report.notes.map(() => [])
      : fingerLine(
          report.notes.map((note, i) => ({
            onsetSeconds: note.onsetSeconds,
            midi: midiOfName(note.spelling) - reading.semitones - bends[i]!,
            second: note.second === null ? null : midiOfName(note.second) - reading.semitones,
            legato: note.attack === 'legato',
          })),
          instrument,
        );
  const notes = report.notes.map((note, i) => ({
    pitches: [note.spelling, ...(note.second === null ? [] : [note.second])].map((name) =>
      spelledPitch(name, octaves),
    ),
    degree: note.degree,
    places: places[i] ?? [],
    bend: bends[i]!,
  }));
  return {
    line,
    notes,
    over: overMeasures(line, timeline),
    clef: clefOf(instrument, report.notes),
    soundingFromWritten: -reading.semitones - 12 * octaves,
    interval: reading.interval,
    neck,
    bpm: timeline.beatMap.bpm,
    swing: timeline.swing,
  };
}

/** Less is a scoop or out of tune; more is a slide. */
const BENDS = { least: 0.75, most: 3.5 } as const;

const bendOf = ({ bendSemitones }: ReportNote): number =>
  bendSemitones >= BENDS.least && bendSemitones <= BENDS.most ? Math.round(bendSemitones) : 0;

/** @example spelledPitch('Gb4', 1) // { letter: 'G', alter: -1, octave: 5 } */
export function spelledPitch(name: string, octaves: number): SpelledPitch {
  const [, letter = 'C', signs = '', octave = '4'] = /^([A-G])(b*|#*)(-?\d+)$/.exec(name) ?? [];
  return {
    letter,
    alter: signs.startsWith('b') ? -signs.length : signs.length,
    octave: Number(octave) + octaves,
  };
}

/** Instruments that read the bass clef; a voice or a piano by where its line lies. */
const BASS_CLEF = ['bass', 'bass-5', 'trombone'];
const BY_RANGE = ['voice', 'piano'];
/** F3: lines about it sit in the middle of neither staff. */
const BETWEEN_CLEFS = 53;

function clefOf(instrument: Instrument | null, notes: readonly ReportNote[]): 'treble' | 'bass' {
  if (instrument !== null && BASS_CLEF.includes(instrument.id)) return 'bass';
  if (instrument !== null && !BY_RANGE.includes(instrument.id)) return 'treble';
  const sorted = notes.map(({ spelling }) => midiOfName(spelling)).sort((a, b) => a - b);
  return (sorted[Math.floor(sorted.length / 2)] ?? 60) < BETWEEN_CLEFS ? 'bass' : 'treble';
}

/** Chords where they change, and at the start of the take and of each chorus; keys where they change. */
function overMeasures({ measures, beatTicks }: WrittenLine, timeline: Timeline): readonly OverMeasure[] {
  let standing: Chord | null | undefined;
  let standingKey: Key | undefined;
  const rounds = (measures.at(-1)?.bar ?? 0) >= timeline.bars;
  return measures.map(({ bar, ticks }) => {
    const fromBeat = (bar * ticks) / beatTicks;
    const toBeat = fromBeat + ticks / beatTicks;
    const begins = bar >= 0 && bar % timeline.bars === 0 && rounds;
    if (begins) standing = undefined;
    const chords: PageChord[] = [];
    for (const { startBeat, chord } of timeline.spansBetween(fromBeat, toBeat)) {
      const unchanged =
        standing !== undefined &&
        (standing === null || chord === null ? standing === chord : sameChord(standing, chord));
      if (unchanged) continue;
      standing = chord;
      chords.push({ atTicks: Math.round(Math.max(0, startBeat - fromBeat) * beatTicks), chord });
    }
    const key = keyAt(timeline, fromBeat);
    const turned = standingKey?.tonic !== key.tonic || standingKey.mode !== key.mode;
    standingKey = key;
    return { chords, key: turned ? key : null, chorus: begins ? bar / timeline.bars + 1 : null };
  });
}
