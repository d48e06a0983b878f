/**
 * A long take at the command line: memory while it is heard, and whether onsets drift between its first and its last minutes.
 *
 *   npm run build && npx tsx tests/bench/long.ts [--minutes 60] [--flac]
 *
 * --flac has the file compressed by sox, where that is installed.
 *
 * One line of sixteen notes, a sampled guitar at 120, is repeated sample for sample, so that every onset is known. Memory is
 * the process's own resident set (proc(5), VmRSS), read twice a second; so the script runs on Linux.
 */
import { spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import type { Report } from '../../src/core/take/schema.ts';
import { BPM, driftMs, heardLate, residentMb, writeLongLine } from './long-line.ts';

const { values } = parseArgs({
  options: { minutes: { type: 'string', default: '60' }, flac: { type: 'boolean', default: false } },
});
const minutes = Number(values.minutes);

/** Onsets of so many minutes at each end are compared. */
const END_MINUTES = 5;
/** Before this share of the run the program is still being compiled. */
const WARM_UP = 0.2;

const root = (path: string) => fileURLToPath(new URL(`../../${path}`, import.meta.url));

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

function compressed(file: string): string {
  const flac = file.replace(/wav$/, 'flac');
  const { status, stderr } = spawnSync('sox', [file, flac], { encoding: 'utf8' });
  if (status !== 0) throw new Error(`sox made no FLAC: ${stderr}`);
  return flac;
}

const folder = mkdtempSync(join(tmpdir(), 'landfall-long-'));
try {
  const file = join(folder, 'long.wav');
  const played = await writeLongLine(file, minutes);
  const { report, memory, seconds } = await grade(values.flac ? compressed(file) : file);
  const warm = memory.slice(Math.round(WARM_UP * memory.length));
  const tenths = Array.from(
    { length: 11 },
    (_, i) => memory[Math.round((i * (memory.length - 1)) / 10)] ?? NaN,
  );
  const end = 60 * Math.min(END_MINUTES, minutes / 2);
  const first = heardLate(report, 0, end);
  const last = heardLate(report, 60 * minutes - end, 60 * minutes);
  console.log(
    `${minutes} minutes, graded in ${seconds.toFixed(0)} s (${((60 * minutes) / seconds).toFixed(0)} times real time)`,
  );
  console.log(`notes: ${played} played, ${report.notes.length} heard`);
  console.log(`memory by tenths of the run, MB: ${tenths.map((mb) => mb.toFixed(0)).join(' ')}`);
  console.log(`after warm-up: ${Math.min(...warm).toFixed(0)} to ${Math.max(...warm).toFixed(0)} MB`);
  console.log(
    `onsets, heard minus played: ${first.ms.toFixed(2)} ms in the first minutes (${first.notes}), ${last.ms.toFixed(2)} ms in the last (${last.notes}): drift ${driftMs(first, last).toFixed(2)} ms`,
  );
} finally {
  rmSync(folder, { recursive: true, force: true });
}
