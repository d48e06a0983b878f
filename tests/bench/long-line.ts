/** A line of any length of which every onset is known, and what is measured on it; for the long takes. */
import { closeSync, openSync, readFileSync, writeSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { toPcm16 } from '../../src/core/files/sound/pcm16.ts';
import { wavHeader } from '../../src/core/files/sound/write-wav.ts';
import { renderLine } from '../../src/core/sound/render-line.ts';
import { createSynth, loadKit } from '../../src/core/sound/synth.ts';
import type { Report } from '../../src/core/take/schema.ts';

const RATE = 44_100;
export const BPM = 120;
const SECONDS_A_NOTE = 60 / BPM;
/** General MIDI 28, counted from 1: clean electric guitar. */
const CLEAN_GUITAR = 27;
const LINE = [61, 64, 67, 69, 66, 72, 69, 62, 73, 71, 69, 64, 68, 71, 74, 64];

async function period(): Promise<Int16Array> {
  const bank = readFileSync(fileURLToPath(new URL('../../src/audio/kit/landfall-kit.sf3', import.meta.url)));
  const synth = createSynth(await loadKit(new Uint8Array(bank).buffer), RATE);
  const strokes = LINE.map((midi, beat) => ({ beat, durationBeats: 0.9, midi, velocity: 96 }));
  const frames = LINE.length * SECONDS_A_NOTE * RATE;
  const whole = new Int16Array(frames);
  whole.set(
    toPcm16(renderLine(synth, strokes, CLEAN_GUITAR, { bpm: BPM, startBeat: 0 })).subarray(0, frames),
  );
  return whole;
}

/**
 * Writes sixteen notes, a sampled guitar at 120, repeated sample for sample.
 * @returns how many notes the file has
 */
export async function writeLongLine(file: string, minutes: number): Promise<number> {
  const samples = await period();
  const times = Math.round((minutes * 60) / (LINE.length * SECONDS_A_NOTE));
  const out = openSync(file, 'w');
  writeSync(out, wavHeader({ sampleRate: RATE, channels: 1, frames: times * samples.length }));
  for (let i = 0; i < times; i++)
    writeSync(out, new Uint8Array(samples.buffer, samples.byteOffset, samples.byteLength));
  closeSync(out);
  return times * LINE.length;
}

/** Resident set of a process (proc(5), VmRSS), MB; null where the process is gone. */
export function residentMb(pid: number): number | null {
  try {
    const kb = /^VmRSS:\s+(\d+) kB/m.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1];
    return kb === undefined ? null : Number(kb) / 1024;
  } catch {
    return null;
  }
}

export const mean = (numbers: readonly number[]) => numbers.reduce((sum, x) => sum + x, 0) / numbers.length;

/**
 * Heard minus played, ms, of the onsets between two seconds; a note further off than a fifth of the distance of two notes is
 * another note.
 * @param beginSeconds where in the recording the line begins
 */
export function offsetsMs(report: Report, from: number, to: number, beginSeconds = 0): readonly number[] {
  return report.notes
    .map(({ onsetSeconds }) => onsetSeconds - beginSeconds)
    .filter((seconds) => seconds >= from && seconds < to)
    .map((seconds) => 1000 * (seconds - Math.round(seconds / SECONDS_A_NOTE) * SECONDS_A_NOTE))
    .filter((ms) => Math.abs(ms) < 100);
}
