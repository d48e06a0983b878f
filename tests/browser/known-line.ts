/** A line of which every note is known, played by a real sampled guitar, as the fake microphone's file. */
import { existsSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { renderLine } from '../../src/core/sound/render-line.ts';
import { createSynth, loadKit } from '../../src/core/sound/synth.ts';
import { toPcm16 } from '../../src/core/base/pcm16.ts';
import { writeWav } from '../../src/core/files/sound/write-wav.ts';

/** What the fake microphone plays without a resampler in between. */
const RATE = 44_100;
/** General MIDI 28, counted from 1: clean electric guitar. */
const CLEAN_GUITAR = 27;
const BPM = 120;
/** The fake microphone begins when it is opened; the take begins a moment later, and its count-in lies on it too. */
const LEAD_IN_SECONDS = 3;

export const KNOWN_MIDI: readonly number[] = [61, 64, 67, 69, 66, 72, 69, 62, 73, 71, 69, 64, 68, 71, 74, 64];

export interface KnownLine {
  readonly file: string;
  /** From the opening of the microphone to a moment after the last note. */
  readonly seconds: number;
}

/**
 * A file that is made once in a run, in the folder that set-up.ts names, whichever tests of whichever process ask for it.
 * @param name of its own for each content
 * @returns its path
 */
export async function onceInARun(name: string, make: () => Promise<Uint8Array>): Promise<string> {
  const file = join(process.env.LANDFALL_LINES!, name);
  if (!existsSync(file)) {
    // Another process may be writing the same file: it appears whole, or not at all.
    const unfinished = `${file}.${process.pid}`;
    writeFileSync(unfinished, await make());
    renameSync(unfinished, file);
  }
  return file;
}

/** @param midis one note a beat at 120 */
export async function knownLine(midis: readonly number[] = KNOWN_MIDI): Promise<KnownLine> {
  const file = await onceInARun(`${midis.join('-')}.wav`, () => rendered(midis));
  return { file, seconds: LEAD_IN_SECONDS + (midis.length * 60) / BPM + 0.5 };
}

async function rendered(midis: readonly number[]): Promise<Uint8Array> {
  const bank = readFileSync(new URL('../../src/audio/kit/landfall-kit.sf3', import.meta.url));
  const synth = createSynth(await loadKit(new Uint8Array(bank).buffer), RATE);
  const strokes = midis.map((midi, beat) => ({ beat, durationBeats: 0.9, midi, velocity: 96 }));
  const startBeat = (-LEAD_IN_SECONDS * BPM) / 60;
  return writeWav(toPcm16(renderLine(synth, strokes, CLEAN_GUITAR, { bpm: BPM, startBeat })), RATE);
}

/** How many of the wanted notes come in this order among those heard. */
export function inOrder(wanted: readonly number[], heard: readonly number[]): number {
  let found = 0;
  for (const midi of heard) if (midi === wanted[found]) found++;
  return found;
}
