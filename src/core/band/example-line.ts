/**
 * What the band plays in its own turns: a line that does what the player's aim asks for. On every change it lands on a
 * tone of the aim, it comes there by step, and between the landings it walks in eighths through chord and key. The
 * cheapest path through the keys (Viterbi) with seeded random parts in the costs, as for the walking bass.
 */
import { keyAt } from '../chart/keys-through.ts';
import { bandTurns } from '../chart/turns.ts';
import { aimChoiceOf } from '../grade/aims/aim-choices.ts';
import { targetsOf } from '../grade/aims/targets.ts';
import type { Chord, Key } from '../music/chord.ts';
import { sameChord } from '../music/same-chord.ts';
import type { BandEvent } from './events.ts';
import { feelOfBar, type BandForm } from './form.ts';
import { sameBeat, spanAt } from './pattern.ts';
import { loosen, type Chance } from '../base/random.ts';
import type { BandSettings, Trade } from './settings.ts';
import type { FeelName } from '../chart/feel-names.ts';
import { swungBeat } from '../chart/swing.ts';
import { inKey } from './voicing.ts';

/** B3 to G5: above the chords, within the range of the kit's guitar and piano. */
export const lineRange = { lowest: 59, highest: 79 } as const;
const restingKey = 68;
const never = 1e6;
/** An arch takes two bars and a half: no two bars begin alike. */
const archBeats = 10;
const archSemitones = 6;

const cost = {
  scaleTone: 0.5,
  /** A note on a beat that is no chord tone. */
  scaleToneOnBeat: 1.6,
  /** A note a half step above a chord tone of that moment, which is dissonant. */
  rubbing: 1.8,
  chromaticTone: 3,
  repeated: 2.4,
  /** By size of the move in semitones: a line goes by step and leaps by chord tones. */
  move: [0, 0, 0, 0.5, 0.7, 1, 3, 1.2, 3, 3],
  wideLeap: 6,
  drift: 0.22,
  taste: 1.1,
} as const;

/** Rhythms of one beat, a sign an eighth: `x` a note, `.` a rest, `-` the note goes on. */
const cells = {
  2: { signs: ['xx', 'x-', '.x', '..'], weights: [6, 2, 1.5, 0.8] },
  3: { signs: ['xxx', 'x-x', 'x--', '.xx'], weights: [3, 4, 2, 1] },
} as const;
/** Faster than this, every second pair of eighths is a quarter: an example is to be heard. */
const fastBpm = 190;
const velocity = { onBeat: 82, offBeat: 90, landing: 102 } as const;
const gate = 0.94;
/** The last note of a turn lasts a beat and a half at most; the rest of the bar is a pause for the player. */
const lastNoteBeats = 1.5;

interface Note {
  /** As written, from the chorus's first downbeat. */
  readonly writtenBeat: number;
  readonly durationBeats: number;
  readonly chord: Chord;
  /** The first note under its chord. */
  readonly lands: boolean;
}

/**
 * The band's turns of one chorus, beats from its first downbeat.
 * @param swingOf share of the beat that the first eighth takes in a feel
 */
export function exampleLine(
  form: BandForm,
  settings: BandSettings & { readonly trade: Trade },
  chorus: number,
  swingOf: (feel: FeelName) => number,
  chance: Chance,
): readonly BandEvent[] {
  const { bars, aim } = settings.trade;
  const firstBar = chorus * form.bars;
  return bandTurns(bars, firstBar, firstBar + form.bars).flatMap((turn) => {
    const notes = rhythm(form, turn.fromBar - firstBar, turn.toBar - firstBar, settings.bpm, chance);
    const keys = pitches(notes, aim, form, chance);
    return notes.map((note, i): BandEvent => {
      const beat = played(note.writtenBeat, form, settings, swingOf);
      const end = played(note.writtenBeat + note.durationBeats, form, settings, swingOf);
      const onBeat = Math.abs(note.writtenBeat - Math.round(note.writtenBeat)) < sameBeat;
      const plain = note.lands ? velocity.landing : onBeat ? velocity.onBeat : velocity.offBeat;
      return {
        beat,
        durationBeats: (end - beat) * gate,
        part: 'line',
        midi: keys[i]!,
        velocity: loosen(plain, chance),
      };
    });
  });
}

function played(
  beat: number,
  form: BandForm,
  settings: BandSettings,
  swingOf: (feel: FeelName) => number,
): number {
  if (form.divisions === 3) return beat;
  const bar = Math.min(form.bars - 1, Math.floor((beat + sameBeat) / form.beatsPerBar));
  return swungBeat(beat, swingOf(feelOfBar(form, bar) ?? settings.feel));
}

/** Where the line has its notes: every change of chord has one, and the last bar ends early. */
function rhythm(
  form: BandForm,
  fromBar: number,
  toBar: number,
  bpm: number,
  chance: Chance,
): readonly Note[] {
  const { beatsPerBar, divisions } = form;
  const [start, end] = [fromBar * beatsPerBar, toBar * beatsPerBar];
  const lastBeat = end - Math.max(1, Math.floor(beatsPerBar / 2));
  const { signs, weights } = cells[divisions];
  const starts: number[] = [];
  const stops: number[] = [];
  for (let beat = start; beat < end; beat++) {
    const arrives = form.spans.some(
      (span) => span.startBeat >= beat - sameBeat && span.startBeat < beat + 1 - sameBeat,
    );
    const cell =
      beat > lastBeat
        ? '.'.repeat(divisions)
        : beat === lastBeat
          ? 'x'.padEnd(divisions, '-')
          : chance.pick(signs, weights);
    const slow = bpm > fastBpm && (beat - start) % 2 === 1 && cell === 'xx' ? 'x-' : cell;
    [...slow].forEach((sign, i) => {
      const place = beat + i / divisions;
      if (sign === 'x' || (arrives && i === 0 && beat <= lastBeat)) starts.push(place);
      else if (sign === '.') stops.push(place);
    });
  }
  // Where a chord arrives between two eighths, the note is placed at the chord.
  for (const { startBeat } of form.spans) {
    if (
      startBeat >= start &&
      startBeat <= lastBeat &&
      !starts.some((at) => Math.abs(at - startBeat) < sameBeat)
    )
      starts.push(startBeat);
  }
  starts.sort((a, b) => a - b);
  const notes: Note[] = [];
  let before: Chord | null = null;
  starts.forEach((writtenBeat, i) => {
    const chord = spanAt(form, writtenBeat)?.chord;
    if (!chord) {
      before = null;
      return;
    }
    const until = Math.min(
      starts[i + 1] ?? writtenBeat + lastNoteBeats,
      stops.find((stop) => stop > writtenBeat + sameBeat) ?? Infinity,
      end,
    );
    notes.push({
      writtenBeat,
      durationBeats: until - writtenBeat,
      chord,
      lands: before === null || !sameChord(before, chord),
    });
    before = chord;
  });
  return notes;
}

/** A key for every note. */
function pitches(notes: readonly Note[], aim: string, form: BandForm, chance: Chance): readonly number[] {
  const choice = aimChoiceOf(aim);
  const keys = Array.from(
    { length: lineRange.highest - lineRange.lowest + 1 },
    (_, i) => lineRange.lowest + i,
  );
  const targets = new Map<Chord, ReadonlySet<number>>();
  const keyOf = ({ writtenBeat }: Note) => keyAt(form, writtenBeat);
  const targetsOver = (note: Note) => {
    const known =
      targets.get(note.chord) ??
      new Set(targetsOf(choice, note.chord, keyOf(note)).map((tone) => tone.pitchClass));
    targets.set(note.chord, known);
    return known;
  };
  // The line rises and falls in arches, as phrases do.
  const phase = chance.next();
  const contour = ({ writtenBeat }: Note) =>
    restingKey + archSemitones * Math.sin(2 * Math.PI * (writtenBeat / archBeats + phase));
  const back: number[][] = [];
  let totals: number[] = [];
  notes.forEach((note, n) => {
    const next = notes[n + 1];
    const last = next === undefined;
    const onTarget = note.lands || last ? targetsOver(note) : null;
    const own = keys.map(
      (midi) =>
        ownCost(midi, note, onTarget, next?.lands === true, keyOf(note)) +
        cost.drift * Math.abs(midi - contour(note)) +
        chance.next() * cost.taste,
    );
    if (n === 0) {
      totals = own;
      back.push([]);
      return;
    }
    const from: number[] = [];
    totals = keys.map((midi, k) => {
      let best = Infinity;
      let bestFrom = k;
      keys.forEach((previous, j) => {
        const sum = totals[j]! + moveCost(previous, midi, note.lands);
        if (sum < best) [best, bestFrom] = [sum, j];
      });
      from.push(bestFrom);
      return best + own[k]!;
    });
    back.push(from);
  });
  const line: number[] = [];
  let at = totals.indexOf(Math.min(...totals));
  for (let n = notes.length - 1; n >= 0; n--) {
    line.unshift(keys[at]!);
    at = back[n]![at] ?? 0;
  }
  return line;
}

function ownCost(
  midi: number,
  { chord, writtenBeat }: Note,
  targets: ReadonlySet<number> | null,
  approaches: boolean,
  key: Key,
): number {
  const pitchClass = midi % 12;
  if (targets !== null && targets.size > 0) return targets.has(pitchClass) ? 0 : never;
  const isTone = (wanted: number) =>
    chord.tones.some((tone) => tone.pitchClass === ((wanted % 12) + 12) % 12);
  if (isTone(pitchClass)) return 0;
  const onBeat = Math.abs(writtenBeat - Math.round(writtenBeat)) < sameBeat;
  if (!inKey(pitchClass, key)) return approaches ? cost.scaleTone : cost.chromaticTone;
  return (onBeat ? cost.scaleToneOnBeat : cost.scaleTone) + (isTone(pitchClass - 1) ? cost.rubbing : 0);
}

/** A landing is reached by step; what follows a landing is free. */
function moveCost(from: number, to: number, lands: boolean): number {
  const size = Math.abs(to - from);
  if (lands && size > 2) return cost.wideLeap + size;
  return size === 0 ? cost.repeated : (cost.move[size] ?? cost.wideLeap);
}
