/** A staff as geometry: where a written note stands on its lines, for instruments at any transposition. */
import type { Instrument } from '../../core/music/instruments.ts';
import { writtenMidi } from '../../core/music/instruments.ts';
import { noteName } from '../../core/music/pitch-names.ts';
import { moveByInterval } from '../../core/music/spelling.ts';

export type Clef = 'treble' | 'bass';

/** Diatonic steps from C0 of the middle line: B4 in the treble, D3 in the bass. *Common practice.* */
const MIDDLE_STEP: Readonly<Record<Clef, number>> = { treble: 4 * 7 + 6, bass: 3 * 7 + 1 };
/** From sounding to written, by semitones up within an octave. */
const INTERVALS = ['1P', '2m', '2M', '3m', '3M', '4P', '4A', '5P', '6m', '6M', '7m', '7M'] as const;

export interface WrittenNote {
  /** As the player reads it, spelled, ASCII accidentals. */
  readonly name: string;
  /** "#", "b", "##", "bb" or "". */
  readonly accidental: string;
  /** Steps above the middle line of the staff, negative below. */
  readonly step: number;
}

/** A concert note name as the player of this instrument reads it: "Eb" is "F" for a tenor sax. */
export const writtenName = (name: string, { soundingFromWritten }: Instrument): string => {
  const up = ((-soundingFromWritten % 12) + 12) % 12;
  return up === 0 ? name : moveByInterval(name, INTERVALS[up]!);
};

/**
 * Where a note stands.
 * @param midi sounding, whole
 * @param name concert spelling of its pitch class
 * @example writeNote(58, 'Bb', tenorSax, 'treble') // written C5: step 1
 */
export function writeNote(midi: number, name: string, instrument: Instrument, clef: Clef): WrittenNote {
  const written = writtenName(name, instrument);
  const full = noteName(writtenMidi(midi, instrument), written);
  const octave = Number(/-?\d+$/.exec(full)![0]);
  const letter = 'CDEFGAB'.indexOf(written[0]!);
  return { name: written, accidental: written.slice(1), step: octave * 7 + letter - MIDDLE_STEP[clef] };
}

/** Ledger lines that a note at this step needs, as steps from the middle line; empty on the staff. */
export function ledgerSteps(step: number): readonly number[] {
  const lines: number[] = [];
  for (let line = 6; line <= step; line += 2) lines.push(line);
  for (let line = -6; line >= step; line -= 2) lines.push(line);
  return lines;
}

/** Whole sounding MIDI numbers of a pitch class within reach of the register, from the lowest. */
export function octavesNear(pitchClass: number, register: number, reach: number): readonly number[] {
  const lowest = Math.ceil(register - reach);
  const first = lowest + ((((pitchClass - lowest) % 12) + 12) % 12);
  const found: number[] = [];
  for (let midi = first; midi <= register + reach; midi += 12) found.push(midi);
  return found;
}

/** The sounding pitch in the middle of what an instrument plays on this clef: where the page lies at first. */
export const middleOf = (instrument: Instrument, clef: Clef): number =>
  (clef === 'treble' ? 71 : 50) + instrument.soundingFromWritten;

/** Steps of the page, from the lowest to the highest that is drawn; the staff itself lies from −4 to 4. */
export interface Steps {
  readonly lowest: number;
  readonly highest: number;
}

/** Room over and under the staff where the line stays on it: a clef reaches so far, and so do two ledger lines. */
const AROUND_STAFF = 9;
/** Steps that a reach of semitones spans, and room for a label. */
const STEPS_A_SEMITONE = 7 / 12;
const LABEL_STEPS = 3;

/**
 * The part of the staff that is drawn for a register: the five lines always, and as many ledger lines as the line needs.
 * It depends on the register alone, so that the drawing does not move from chord to chord.
 * @param registerStep where the register stands, in steps from the middle line
 * @param reachSemitones how far to either side notes are drawn
 */
export function stepsFor(registerStep: number, reachSemitones: number): Steps {
  const reach = reachSemitones * STEPS_A_SEMITONE + LABEL_STEPS;
  return {
    lowest: Math.min(-AROUND_STAFF, registerStep - reach),
    highest: Math.max(AROUND_STAFF, registerStep + reach),
  };
}
