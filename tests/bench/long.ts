/**
 * A long take at the command line: memory while it is heard, and whether onsets drift between its first and its last minutes.
 *
 *   npm run build && npx tsx tests/bench/long.ts [--minutes 60]
 *
 * One line of sixteen notes, a sampled guitar at 120, is repeated sample for sample, so that every onset is known. Memory is
 * the process's own resident set (proc(5), VmRSS), read twice a second; so the script runs on Linux.
 */
import { spawn } from 'node:child_process';
import { closeSync, mkdtempSync, openSync, readFileSync, rmSync, writeSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { toPcm16 } from '../../src/core/files/sound/pcm16.ts';
import { wavHeader } from '../../src/core/files/sound/write-wav.ts';
import { renderLine } from '../../src/core/sound/render-line.ts';
import { createSynth, loadKit } from '../../src/core/sound/synth.ts';
import type { Report } from '../../src/core/take/schema.ts';

const { values } = parseArgs({ options: { minutes: { type: 'string', default: '60' } } });
const minutes = Number(values.minutes);

const RATE = 44_100;
const BPM = 120;
const SECONDS_A_NOTE = 60 / BPM;
/** General MIDI 28, counted from 1: clean electric guitar. */
const CLEAN_GUITAR = 27;
const LINE = [61, 64, 67, 69, 66, 72, 69, 62, 73, 71, 69, 64, 68, 71, 74, 64];
/** Onsets of so many minutes at each end are compared. */
const END_MINUTES = 5;
/** Before this share of the run the program is still being compiled. */
const WARM_UP = 0.2;

const root = (path: string) => fileURLToPath(new URL(`../../${path}`, import.meta.url));

async function period(): Promise<Int16Array> {
  const bank = readFileSync(root('src/audio/kit/landfall-kit.sf3'));
  const synth = createSynth(await loadKit(new Uint8Array(bank).buffer), RATE);
  const strokes = LINE.map((midi, beat) => ({ beat, durationBeats: 0.9, midi, velocity: 96 }));
  const frames = LINE.length * SECONDS_A_NOTE * RATE;
  const whole = new Int16Array(frames);
  whole.set(
    toPcm16(renderLine(synth, strokes, CLEAN_GUITAR, { bpm: BPM, startBeat: 0 })).subarray(0, frames),
  );
  return whole;
}

function writeLong(file: string, samples: Int16Array): number {
  const times = Math.round((minutes * 60) / (LINE.length * SECONDS_A_NOTE));
  const out = openSync(file, 'w');
  writeSync(out, wavHeader({ sampleRate: RATE, channels: 1, frames: times * samples.length }));
  for (let i = 0; i < times; i++)
    writeSync(out, new Uint8Array(samples.buffer, samples.byteOffset, samples.byteLength));
  closeSync(out);
  return times * LINE.length;
}

/** MB, or null where the process is gone. */
function residentMb(pid: number): number | null {
  try {
    const kb = /^VmRSS:\s+(\d+) kB/m.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1];
    return kb === undefined ? null : Number(kb) / 1024;
  } catch {
    return null;
  }
}

async function grade(file: string): Promise<{ report: Report; memory: readonly number[]; seconds: number }> {
  const started = Date.now();
  const child = spawn(
    process.execPath,
    [
      root('dist/cli/landfall.js'),
      'grade',
      file,
      '--chart',
      '| A7 | D7 | A7 | E7 |',
      '--tempo',
      String(BPM),
      '--json',
    ],
    { stdio: ['ignore', 'pipe', 'inherit'] },
  );
  const output: Buffer[] = [];
  child.stdout.on('data', (data: Buffer) => output.push(data));
  const memory: number[] = [];
  const look = setInterval(() => {
    const mb = residentMb(child.pid!);
    if (mb !== null) memory.push(mb);
  }, 500);
  await new Promise((ended) => child.on('close', ended));
  clearInterval(look);
  return {
    report: JSON.parse(Buffer.concat(output).toString('utf8')) as Report,
    memory,
    seconds: (Date.now() - started) / 1000,
  };
}

const mean = (numbers: readonly number[]) => numbers.reduce((sum, x) => sum + x, 0) / numbers.length;

/** Heard minus played, ms, of the onsets between two seconds; a note further off than half its length is another note. */
function offsetsMs(report: Report, from: number, to: number): readonly number[] {
  return report.notes
    .filter(({ onsetSeconds }) => onsetSeconds >= from && onsetSeconds < to)
    .map(
      ({ onsetSeconds }) =>
        1000 * (onsetSeconds - Math.round(onsetSeconds / SECONDS_A_NOTE) * SECONDS_A_NOTE),
    )
    .filter((ms) => Math.abs(ms) < 100);
}

const folder = mkdtempSync(join(tmpdir(), 'landfall-long-'));
try {
  const file = join(folder, 'long.wav');
  const played = writeLong(file, await period());
  const { report, memory, seconds } = await grade(file);
  const warm = memory.slice(Math.round(WARM_UP * memory.length));
  const tenths = Array.from(
    { length: 11 },
    (_, i) => memory[Math.round((i * (memory.length - 1)) / 10)] ?? NaN,
  );
  const end = 60 * Math.min(END_MINUTES, minutes / 2);
  const [first, last] = [offsetsMs(report, 0, end), offsetsMs(report, 60 * minutes - end, 60 * minutes)];
  console.log(
    `${minutes} minutes, graded in ${seconds.toFixed(0)} s (${((60 * minutes) / seconds).toFixed(0)} times real time)`,
  );
  console.log(`notes: ${played} played, ${report.notes.length} heard`);
  console.log(`memory by tenths of the run, MB: ${tenths.map((mb) => mb.toFixed(0)).join(' ')}`);
  console.log(`after warm-up: ${Math.min(...warm).toFixed(0)} to ${Math.max(...warm).toFixed(0)} MB`);
  console.log(
    `onsets, heard minus played: ${mean(first).toFixed(2)} ms in the first minutes, ${mean(last).toFixed(2)} ms in the last: drift ${(mean(last) - mean(first)).toFixed(2)} ms`,
  );
} finally {
  rmSync(folder, { recursive: true, force: true });
}
