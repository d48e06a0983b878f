/** How strongly each pitch class sounds in each register while each beat lasts. */
import { HIGHEST_MIDI, FOLDED, LOWEST_MIDI, REGISTERS, TONES } from './settings.ts';
import type { ToneSpectrum } from './tone-spectrum.ts';

export interface BeatTones {
  /** FOLDED numbers a beat: twelve pitch classes from C, register by register from the bass up; the longest vector is 1. */
  readonly folded: Float32Array;
  readonly beats: number;
  /** Level of each beat beside the loudest tenth of the recording, dB. */
  readonly levelsDb: Float32Array;
}

/** Less sound than this beside the recording's loud beats is a rest. */
const SILENT_DB = -60;

const registerOf = (midi: number): number => REGISTERS.findLastIndex((first) => midi >= first);

/**
 * @param beats seconds, rising; the last one only ends the beat before it
 * @returns one row a beat that has an end
 */
export function beatTones(spectrum: ToneSpectrum, beats: readonly number[]): BeatTones {
  const count = Math.max(0, beats.length - 1);
  const folded = new Float32Array(count * FOLDED);
  const levels = new Float32Array(count);
  const places = Array.from({ length: TONES }, (_, t) => {
    const midi = LOWEST_MIDI + t;
    return midi > HIGHEST_MIDI ? -1 : registerOf(midi) * 12 + (midi % 12);
  });
  const frameAt = (seconds: number) => (seconds - spectrum.firstSeconds) / spectrum.secondsPerFrame;
  for (let b = 0; b < count; b++) {
    // A frame reaches half a window either way: those about the beat's own middle hear the least of its neighbours.
    const [start, end] = [frameAt(beats[b]!), frameAt(beats[b + 1]!)];
    const from = Math.max(0, Math.round(start + 0.15 * (end - start)));
    const to = Math.min(spectrum.frames - 1, Math.max(from, Math.round(start + 0.95 * (end - start))));
    const row = folded.subarray(b * FOLDED, (b + 1) * FOLDED);
    let power = 0;
    for (let f = from; f <= to; f++) {
      power += spectrum.powers[f]!;
      for (let t = 0; t < TONES; t++) row[places[t]!]! += spectrum.tones[f * TONES + t]!;
    }
    levels[b] = 10 * Math.log10(power / Math.max(1, to - from + 1) + 1e-12);
    const length = Math.hypot(...row);
    if (length > 0) for (let i = 0; i < FOLDED; i++) row[i]! /= length;
  }
  const loud = Float32Array.from(levels).sort()[Math.floor(0.9 * count)] ?? 0;
  return {
    folded,
    beats: count,
    levelsDb: levels.map((level) => Math.max(SILENT_DB, level - loud)),
  };
}
