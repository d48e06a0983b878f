/** A line of any length of which every onset is known, and what is measured on it; for the long takes. */
import { closeSync, openSync, readFileSync, writeSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { toPcm16 } from '../../src/core/base/pcm16.ts';
import { wavHeader } from '../../src/core/files/sound/write-wav.ts';
import { renderLine } from '../../src/core/sound/render-line.ts';
import { createSynth, loadKit } from '../../src/core/sound/synth.ts';
import type { ReportNote } from '../../src/core/take/schema.ts';

const RATE = 44_100;
export const BPM = 120;
const SECONDS_A_NOTE = 60 / BPM;
/** General MIDI 28, counted from 1: clean electric guitar. */
const CLEAN_GUITAR = 27;
export const LINE = [61, 64, 67, 69, 66, 72, 69, 62, 73, 71, 69, 64, 68, 71, 74, 64];

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

/** Where a stretch of the line was heard, against where it was played. */
export interface HeardLate {
  /** Heard minus played, ms. A whole note more, or several, is seen by the pitches; 8 s more is the same line again. */
  readonly ms: number;
  /** Notes of the stretch that lie where the line has them. */
  readonly notes: number;
  /** Their share of the notes that were heard. */
  readonly share: number;
}

interface Onsets {
  readonly notes: readonly Pick<ReportNote, 'onsetSeconds' | 'midi'>[];
}

/** A note further off than a fifth of the distance of two notes is another note. */
const SAME_NOTE_MS = 200 * SECONDS_A_NOTE;

/**
 * How late the line was heard between two seconds. A whole line of notes can be late by one note, or by several, without any
 * onset being off its grid: of all places of the line, the one is taken at which most pitches are right.
 * @param beginSeconds where in the recording the line begins; the place of its grid is enough
 */
export function heardLate({ notes }: Onsets, from: number, to: number, beginSeconds = 0): HeardLate {
  const here = notes
    .map(({ onsetSeconds, midi }) => ({ onsetSeconds: onsetSeconds - beginSeconds, midi }))
    .filter(({ onsetSeconds }) => onsetSeconds >= from && onsetSeconds < to);
  // The stretch's own grid: one that has slipped by half a note would lie between the notes of the first.
  const own = gridOf({ notes: here }, Infinity);
  const stretch = here
    .map(({ onsetSeconds, midi }) => {
      const place = Math.round((onsetSeconds - own) / SECONDS_A_NOTE);
      return { place, midi, ms: 1000 * (onsetSeconds - own - place * SECONDS_A_NOTE) };
    })
    .filter(({ ms }) => Math.abs(ms) < SAME_NOTE_MS);
  const half = LINE.length / 2;
  const rightWhere = Array.from({ length: LINE.length }, (_, i) => {
    const later = i - half;
    return { later, right: stretch.filter(({ place, midi }) => isAt(place - later, midi)) };
  });
  const { later, right } = rightWhere.reduce((best, next) =>
    next.right.length > best.right.length ? next : best,
  );
  return {
    ms: 1000 * (SECONDS_A_NOTE * later + own) + mean(right.map(({ ms }) => ms)),
    notes: right.length,
    share: right.length / Math.max(1, stretch.length),
  };
}

const isAt = (place: number, midi: number) =>
  Math.abs(midi - LINE[((place % LINE.length) + LINE.length) % LINE.length]!) < 0.5;

/** Where the grid of the line lies in a recording, from 0 to a note: the mean of its first onsets on a circle. */
export function gridOf({ notes }: Onsets, notesTaken = 40): number {
  const angles = notes
    .slice(0, notesTaken)
    .map(({ onsetSeconds }) => (2 * Math.PI * onsetSeconds) / SECONDS_A_NOTE);
  const angle = Math.atan2(mean(angles.map(Math.sin)), mean(angles.map(Math.cos)));
  return ((SECONDS_A_NOTE * (angle + 2 * Math.PI)) / (2 * Math.PI)) % SECONDS_A_NOTE;
}

/** From one place of the line to another, ms: the shorter way round the line. */
export function driftMs(first: HeardLate, last: HeardLate): number {
  const round = 1000 * SECONDS_A_NOTE * LINE.length;
  const drift = last.ms - first.ms;
  return drift - round * Math.round(drift / round);
}
