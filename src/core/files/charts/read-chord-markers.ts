/** A MIDI file whose markers, texts or lyrics are chord symbols, as a chart. */
import { largest } from '../../base/extremes.ts';
import { parseMidi, type MidiData } from 'midi-file';
import { formEnd } from '../../band/write-midi.ts';
import { meterOf, type Chart, type ChartBar, type Meter } from '../../chart/chart.ts';
import { parseChart } from '../../chart/parse-chart.ts';
import { writeChart } from '../../chart/write-chart.ts';
import type { Chord, Key } from '../../music/chord.ts';
import { keyOfSignature, keyOn } from '../../music/keys.ts';
import { parseChord } from '../../music/parse-chord.ts';
import { bad, good, type Outcome } from '../../base/outcome.ts';
import { MOST_BARS, MOST_CHART_CHORDS, MOST_MIDI_BYTES } from '../../base/limits.ts';
import { notice, problem } from '../../words/problem.ts';
import { midiText } from '../notes/midi-text.ts';
import { wholeEvents } from '../notes/midi-events.ts';
import { meterFrom, usableBpm } from './meters.ts';
import type { ReadChartFile } from './read-musicxml.ts';

const NO_CHORD = /^n\.?c\.?$/i;
/** At most so many texts that are no chords are named. */
const MOST_NAMED = 5;
/** A form that goes round is taken once, if it is no shorter than a phrase. */
const SHORTEST_ROUND_BARS = 4;
/** Beats are rounded to so many parts: a sequencer's hand is no finer. */
const PARTS_OF_A_BEAT = 12;
/** The kinds of text in which programs write chords (Standard MIDI Files 1.0). */
const TEXTS = ['marker', 'text', 'lyrics', 'cuePoint'] as const;
type TextKind = (typeof TEXTS)[number];

interface Placed {
  readonly tick: number;
  readonly text: string;
}

/** The chord of a text, null for N.C., undefined for what is no chord. */
type SymbolOf = (text: string) => Chord | null | undefined;

/** Reads each symbol once: a file may hold the same few of them a hundred thousand times. */
function symbolReader(): SymbolOf {
  const known = new Map<string, Chord | null | undefined>();
  return (text) => {
    if (!known.has(text)) known.set(text, NO_CHORD.test(text) ? null : (parseChord(text) ?? undefined));
    return known.get(text);
  };
}
const isEnd = (text: string) => text.toLowerCase() === formEnd;

/** Texts of one kind over all tracks, in order. */
function textsOf({ tracks }: MidiData, kind: TextKind): readonly Placed[] {
  return tracks
    .flatMap((track) => {
      let tick = 0;
      return track.flatMap((event) => {
        tick += event.deltaTime;
        return event.type === kind ? [{ tick, text: midiText(event.text) }] : [];
      });
    })
    .toSorted((a, b) => a.tick - b.tick);
}

interface Facts {
  readonly meter: Meter;
  readonly key: Key | null;
  readonly bpm: number | null;
  readonly ticksPerQuarter: number;
  readonly endTick: number;
}

function factsOf({ header, tracks }: MidiData, name: string): Outcome<Facts> {
  // A division of 0 counts nothing; frames have their own fields.
  if (header.ticksPerBeat === 0) return bad('midiFile.damaged', { name });
  if (!header.ticksPerBeat) return bad('midiFile.noTempo', { name });
  const events = tracks.flat();
  const meters = new Map(
    events.flatMap((event) =>
      event.type === 'timeSignature' && event.denominator > 0
        ? [[`${event.numerator}/${event.denominator}`, event] as const]
        : [],
    ),
  );
  const [first, second] = [...meters.keys()];
  if (second !== undefined) return bad('midiFile.meterChanges', { name, from: first!, to: second });
  const meter = first === undefined ? meterOf('4/4') : meterFrom(...(first.split('/') as [string, string]));
  if (!meter) return bad('midiFile.meter', { name, meter: first ?? '4/4' });
  const tempo = events.find((event) => event.type === 'setTempo');
  const quarters = tempo?.type === 'setTempo' ? 60e6 / tempo.microsecondsPerBeat : null;
  const signature = events.find((event) => event.type === 'keySignature');
  return good({
    meter,
    key:
      signature?.type === 'keySignature' && Math.abs(signature.key) <= 7
        ? keyOfSignature(signature.key, signature.scale === 1 ? 'minor' : 'major')
        : null,
    bpm: quarters === null ? null : usableBpm(Math.round((quarters * 200) / meter.divisions) / 100),
    ticksPerQuarter: header.ticksPerBeat,
    endTick: largest(
      tracks.map((track) => track.reduce((sum, event) => sum + event.deltaTime, 0)),
      0,
    ),
  });
}

/**
 * Reads the chords. Whole bars before the first chord (a count-in) are left out, and so is what follows a marker
 * "end"; a form that goes round several times is taken once.
 * @param name the file, for the problems
 */
export function readChordMarkers(bytes: Uint8Array, name: string): Outcome<ReadChartFile> {
  if (bytes.length > MOST_MIDI_BYTES) return bad('chartFile.tooLong', { name });
  let data: MidiData;
  try {
    data = parseMidi(bytes);
    data = { ...data, tracks: data.tracks.map(wholeEvents) };
  } catch {
    return bad('midiFile.damaged', { name });
  }
  const facts = factsOf(data, name);
  if (!facts.ok) return facts;
  const symbolOf = symbolReader();
  const count = (texts: readonly Placed[]) => texts.filter(({ text }) => symbolOf(text) !== undefined).length;
  const texts = TEXTS.map((kind) => textsOf(data, kind)).reduce((most, one) =>
    count(one) > count(most) ? one : most,
  );
  if (count(texts) === 0) return bad('midiFile.noChords', { name });
  const end = texts.find(({ text }) => isEnd(text))?.tick ?? facts.value.endTick;
  const unread = texts.filter(({ text, tick }) => tick < end && symbolOf(text) === undefined);
  const chords = texts.flatMap(({ tick, text }) => {
    const chord = symbolOf(text);
    return chord === undefined || tick >= end ? [] : [{ tick, chord }];
  });
  if (!(barsBetween(chords, end, facts.value) <= MOST_BARS))
    return bad('chartFile.unreadable', {
      name,
      cause: problem('chart.chorusTooLong', { bars: MOST_BARS }),
    });
  // Chords at every twelfth of a beat are the most that can be told apart; a file of more is no chart.
  if (chords.length > MOST_CHART_CHORDS)
    return bad('chartFile.unreadable', {
      name,
      cause: problem('chart.tooManyChords', { most: MOST_CHART_CHORDS }),
    });
  const chart = chartFrom(chords, end, facts.value);
  const written = parseChart(writeChart(chart));
  if (!written.ok) return bad('chartFile.unreadable', { name, cause: written.problem });
  const named = [...new Set(unread.map(({ text }) => text))].slice(0, MOST_NAMED);
  return good({
    chart: written.value,
    warnings: unread.length === 0 ? [] : [notice('midiFile.unread', { name, texts: named })],
  });
}

type Counting = Pick<Facts, 'meter' | 'ticksPerQuarter'>;

const beatOf = (tick: number, { meter, ticksPerQuarter }: Counting): number =>
  Math.round((tick / ticksPerQuarter) * (2 / meter.divisions) * PARTS_OF_A_BEAT) / PARTS_OF_A_BEAT;

/** Bars from that of the first chord to the end. */
function barsBetween(chords: readonly { readonly tick: number }[], end: number, counting: Counting): number {
  const { beatsPerBar } = counting.meter;
  const [first, last] = [chords[0]?.tick ?? 0, chords.at(-1)?.tick ?? 0].map((tick) =>
    beatOf(tick, counting),
  );
  const lastBeat = Math.max(beatOf(end, counting), last! + 1 / PARTS_OF_A_BEAT);
  return Math.ceil(lastBeat / beatsPerBar) - Math.floor(first! / beatsPerBar);
}

function chartFrom(
  chords: readonly { readonly tick: number; readonly chord: Chord | null }[],
  end: number,
  { meter, key, bpm, ticksPerQuarter }: Facts,
): Chart {
  const { beatsPerBar } = meter;
  const placed = chords.map(({ tick, chord }) => ({ at: beatOf(tick, { meter, ticksPerQuarter }), chord }));
  const firstBar = Math.floor((placed[0]?.at ?? 0) / beatsPerBar);
  const count = barsBetween(chords, end, { meter, ticksPerQuarter });
  let next = 0;
  let standing: Chord | null = null;
  const bars = Array.from({ length: count }, (_, i): ChartBar => {
    const [from, to] = [(firstBar + i) * beatsPerBar, (firstBar + i + 1) * beatsPerBar];
    for (; next < placed.length && placed[next]!.at <= from; next++) standing = placed[next]!.chord;
    const before = standing;
    const inside: { readonly at: number; readonly chord: Chord | null }[] = [];
    for (; next < placed.length && placed[next]!.at < to; next++) {
      inside.push(placed[next]!);
      standing = placed[next]!.chord;
    }
    const starts = [{ at: from, chord: before }, ...inside];
    return {
      chords: starts.flatMap(({ at, chord }, k) => {
        const beats = (starts[k + 1]?.at ?? to) - at;
        return beats > 0 ? [{ chord, beats }] : [];
      }),
      repeatStart: false,
      repeatTimes: 0,
      endings: [],
    };
  });
  return {
    title: null,
    key: key ?? keyOn(0, 'major'),
    keyWritten: key !== null,
    meter,
    feel: null,
    bpm,
    swing: null,
    pickup: null,
    sections: [{ name: null, feel: null, bars: onceRound(bars) }],
  };
}

function onceRound(bars: readonly ChartBar[]): readonly ChartBar[] {
  const said = bars.map(({ chords }) =>
    chords.map(({ chord, beats }) => `${chord?.symbol}:${beats}`).join(' '),
  );
  for (let round = SHORTEST_ROUND_BARS; round <= bars.length / 2; round++) {
    if (bars.length % round === 0 && said.every((one, i) => one === said[i % round]))
      return bars.slice(0, round);
  }
  return bars;
}
