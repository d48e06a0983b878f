/**
 * A report as a transposing player reads it: every name of a note, a chord and a key moved to written pitch. Degrees,
 * roles, counts and verdicts do not change. For the screen only; what is kept and exported is at concert pitch.
 */
import { chartTextAsRead } from '../chart/as-read.ts';
import { moveChord } from '../chart/transpose-chart.ts';
import type { Key } from '../music/chord.ts';
import { keyOf } from '../music/keys.ts';
import { parseChord } from '../music/parse-chord.ts';
import { nameInKey, nameOverChord, noteName } from '../music/pitch-names.ts';
import { keyAsRead, midiOfName, type Reading } from '../music/reading.ts';
import { intervalBetween, wrapPitchClass } from '../music/spelling.ts';
import type { Advice, Corrections, Landing, Report, ReportNote, Suspected } from '../take/schema.ts';

/** Moves the names of one report; each chord symbol is moved once. */
class Mover {
  readonly #semitones: number;
  readonly #interval: string;
  readonly #symbols = new Map<string, string>();

  constructor(semitones: number, interval: string) {
    this.#semitones = semitones;
    this.#interval = interval;
  }

  symbol(symbol: string): string {
    const moved = this.#symbols.get(symbol) ?? moveChord(symbol, this.#interval);
    this.#symbols.set(symbol, moved);
    return moved;
  }

  symbolOrNone(symbol: string | null): string | null {
    return symbol === null ? null : this.symbol(symbol);
  }

  midi(midi: number): number {
    return midi + this.#semitones;
  }

  /** A name with its octave, in sharps as `second` has it. */
  plain(name: string): string {
    return noteName(this.midi(midiOfName(name)));
  }

  /** A name with its octave, spelled by its chord or its key. */
  spelled(name: string, chord: string | null, key: Key): string {
    const midi = this.midi(midiOfName(name));
    const over = chord === null ? null : parseChord(this.symbol(chord));
    const pitchClass = wrapPitchClass(midi);
    return noteName(midi, over === null ? nameInKey(pitchClass, key) : nameOverChord(pitchClass, over));
  }
}

/**
 * The same report in the player's pitch.
 * @example reportAsRead(report, readingOf(tenorSax, 'written')) // a Bb of the line is called C
 */
export function reportAsRead(report: Report, reading: Reading): Report {
  if (reading.semitones === 0) return report;
  const { timeline } = report;
  const sounding = keyOf(timeline.key);
  const key = keyAsRead(sounding, reading);
  const keys = timeline.keys?.map((one) => ({ fromBar: one.fromBar, key: keyAsRead(keyOf(one), reading) }));
  const keyIn = (bar: number | null) => keys?.findLast(({ fromBar }) => fromBar <= (bar ?? 0))?.key ?? key;
  const barOf = (beat: number) => Math.floor(beat / timeline.beatsPerBar) % timeline.bars;
  const keyAtBeat = (beat: number) => keyIn(beat < 0 ? null : barOf(beat));
  const mover = new Mover(reading.semitones, intervalBetween(sounding.tonic, key.tonic));
  const withChord = <T extends { readonly chord: string }>(item: T): T => ({
    ...item,
    chord: mover.symbol(item.chord),
  });
  const withAnyChord = <T extends { readonly chord: string | null }>(item: T): T => ({
    ...item,
    chord: mover.symbolOrNone(item.chord),
  });
  return {
    ...report,
    timeline: {
      ...timeline,
      chart: chartTextAsRead(timeline.chart, sounding, key),
      key: { tonic: key.tonic, mode: key.mode },
      ...(keys && {
        keys: keys.map((one) => ({ fromBar: one.fromBar, tonic: one.key.tonic, mode: one.key.mode })),
      }),
      spans: timeline.spans.map(withAnyChord),
    },
    notes: report.notes.map((note) => noteAsRead(note, keyIn(note.bar), mover)),
    doubtful: report.doubtful.map((note) => ({
      ...withAnyChord(note),
      midi: mover.midi(note.midi),
      name: mover.spelled(note.name, note.chord, keyAtBeat(note.beat)),
      spelling: mover.spelled(note.name, note.chord, keyAtBeat(note.beat)),
      ...correctedAsRead(note, mover),
    })),
    ...(report.corrections && { corrections: correctionsAsRead(report.corrections, mover) }),
    landings: report.landings.map((landing) => ({
      ...withChord(landing),
      fromChord: mover.symbolOrNone(landing.fromChord),
    })),
    phrases: report.phrases.map(withAnyChord),
    changes: {
      ...report.changes,
      byBar: report.changes.byBar.map(withChord),
      byChord: report.changes.byChord.map(withChord),
    },
    palette: { ...report.palette, byChord: report.palette.byChord.map(withChord) },
    advice: report.advice.map((advice) => adviceAsRead(advice, key, mover)),
    suspected: report.suspected && suspectedAsRead(report.suspected, sounding.mode, reading),
  };
}

const suspectedAsRead = (suspected: Suspected, mode: Key['mode'], reading: Reading): Suspected => ({
  ...suspected,
  tonic: keyAsRead(keyOf({ tonic: suspected.tonic, mode }), reading).tonic,
});

const noteAsRead = (note: ReportNote, key: Key, mover: Mover): ReportNote => ({
  ...note,
  midi: mover.midi(note.midi),
  name: mover.spelled(note.name, note.chord, key),
  spelling: mover.spelled(note.name, note.chord, key),
  chord: mover.symbolOrNone(note.chord),
  second: note.second === null ? null : mover.plain(note.second),
  ...correctedAsRead(note, mover),
});

const correctedAsRead = ({ corrected }: Pick<ReportNote, 'corrected'>, mover: Mover) =>
  corrected === undefined ? {} : { corrected: { ...corrected, was: placesAsRead(corrected.was, mover) } };

const correctionsAsRead = (corrections: Corrections, mover: Mover): Corrections => ({
  ...corrections,
  deleted: placesAsRead(corrections.deleted, mover),
  leftOut: placesAsRead(corrections.leftOut, mover),
});

const placesAsRead = <T extends { readonly midi: number }>(
  places: readonly T[],
  mover: Mover,
): readonly T[] => places.map((place) => ({ ...place, midi: mover.midi(place.midi) }));

function adviceAsRead(advice: Advice, key: Key, mover: Mover): Advice {
  const { chord, played, from, resolve, where } = advice;
  const name = (spelled: string) => mover.spelled(spelled, chord, key);
  return {
    ...advice,
    chord: mover.symbol(chord),
    played: { ...played, name: name(played.name) },
    from: { ...from, name: name(from.name) },
    resolve: { ...resolve, name: name(resolve.name), midi: mover.midi(resolve.midi) },
    // All names are at written pitch already.
    where: where?.kind === 'written' ? null : where,
  };
}

/**
 * A landing of a take that still goes on: only its chords have names.
 * @param interval from concert pitch to what is read; "1P" leaves it as it is
 */
export const landingAsRead = (landing: Landing, interval: string): Landing =>
  interval === '1P'
    ? landing
    : {
        ...landing,
        chord: moveChord(landing.chord, interval),
        fromChord: landing.fromChord === null ? null : moveChord(landing.fromChord, interval),
      };
