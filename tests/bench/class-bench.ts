/**
 * `npm run bench -- --class`: a class graded at the command line. Recordings of a plucked line are made, one a
 * student, and graded with one worker thread and with two; once more after the batch was killed in the middle; and 200
 * lists of notes at once. Ratios are what counts: times depend on the machine and on what else it does.
 *
 *   npm run build && npm run bench -- --class [--takes 40] [--seconds 180]
 *
 * Memory is the highest resident set of the process (proc(5), VmHWM), so the script runs on Linux.
 */
import { spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { toPcm16 } from '../../src/core/base/pcm16.ts';
import { writeWav } from '../../src/core/files/sound/write-wav.ts';
import { onTheBeat, pluckLine } from '../analysis/pluck.ts';
import { LANDFALL } from '../cli/built.ts';
import { THIRDS_SHEET } from '../core/lesson/thirds-sheet.ts';

const LISTS = 200;
const RATE = 44_100;
const BPM = 120;
/** How often memory and kept results are looked at. */
const LOOK_MS = 100;

interface ClassSize {
  readonly takes: number;
  /** Of each take. */
  readonly seconds: number;
}

/** A folder of its own within the one that is thrown away. */
function into(folder: string, name: string): string {
  mkdirSync(join(folder, name));
  return join(folder, name);
}

/** Chord tones and others, another line a student. */
const midis = (student: number, seconds: number) =>
  Array.from(
    { length: Math.floor((seconds * BPM) / 60) },
    (_, beat) => 55 + ((beat * (3 + (student % 5)) + student) % 22),
  );

function makeTakes(folder: string, { takes, seconds }: ClassSize): string {
  const made = into(folder, 'takes');
  for (let student = 0; student < takes; student++)
    writeFileSync(
      join(made, `student ${student} - 1.wav`),
      writeWav(toPcm16(pluckLine(onTheBeat(midis(student, seconds), BPM, 0), RATE, seconds)), RATE),
    );
  return made;
}

function makeLists(folder: string, seconds: number): string {
  const made = into(folder, 'lists');
  for (let student = 0; student < LISTS; student++) {
    const rows = midis(student, seconds).map((midi, beat) => `${(beat * 60) / BPM},0.4,${midi}`);
    writeFileSync(join(made, `student ${student} - 1.csv`), ['onset,duration,pitch', ...rows, ''].join('\n'));
  }
  return made;
}

interface Run {
  readonly seconds: number;
  readonly megabytes: number;
  readonly rows: number;
  readonly kept: number;
}

const keptIn = (cache: string) => {
  try {
    return readdirSync(join(cache, 'landfall/results')).filter((name) => name.endsWith('.json')).length;
  } catch {
    return 0;
  }
};

/** @param killAt so many kept results end it by SIGKILL */
async function run(
  sheet: string,
  of: string,
  cache: string,
  threads: number,
  killAt = Infinity,
): Promise<Run> {
  const started = performance.now();
  const child = spawn(
    process.execPath,
    [LANDFALL, 'class', of, '--sheet', sheet, '--json', '--threads', String(threads)],
    { env: { ...process.env, XDG_CACHE_HOME: cache }, stdio: ['ignore', 'pipe', 'ignore'] },
  );
  let text = '';
  child.stdout.setEncoding('utf8').on('data', (piece: string) => (text += piece));
  let megabytes = 0;
  const look = setInterval(() => {
    try {
      const kb = /^VmHWM:\s+(\d+) kB/m.exec(readFileSync(`/proc/${child.pid}/status`, 'utf8'))?.[1];
      megabytes = Math.max(megabytes, Number(kb ?? 0) / 1024);
    } catch {
      // It has ended.
    }
    if (keptIn(cache) >= killAt) child.kill('SIGKILL');
  }, LOOK_MS);
  await new Promise((resolve) => child.once('close', resolve));
  clearInterval(look);
  return {
    seconds: (performance.now() - started) / 1000,
    megabytes,
    rows: text.split('\n').filter((line) => line.startsWith('{')).length,
    kept: keptIn(cache),
  };
}

const told = ({ seconds: took, megabytes, rows }: Run) =>
  `${took.toFixed(1)} s, ${Math.round(megabytes)} MB, ${rows} rows`;

export async function benchClass(size: ClassSize): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'landfall-class-bench-'));
  const sheet = join(folder, 'sheet.json');
  writeFileSync(sheet, JSON.stringify(THIRDS_SHEET));
  try {
    const made = makeTakes(folder, size);
    console.log(`${size.takes} takes of ${size.seconds} s`);
    const one = await run(sheet, made, into(folder, 'kept-1'), 1);
    console.log(`one thread: ${told(one)}`);
    const keptOfTwo = into(folder, 'kept-2');
    const two = await run(sheet, made, keptOfTwo, 2);
    console.log(`two threads: ${told(two)}, ${(one.seconds / two.seconds).toFixed(2)} times as fast as one`);
    const again = await run(sheet, made, keptOfTwo, 2);
    console.log(`the same again: ${told(again)}, ${(two.seconds / again.seconds).toFixed(0)} times as fast`);
    const cache = into(folder, 'kept-killed');
    const killed = await run(sheet, made, cache, 2, Math.ceil(size.takes / 2));
    const resumed = await run(sheet, made, cache, 2);
    console.log(
      `killed with ${killed.kept} of ${size.takes} kept, started again: ${told(resumed)}, ` +
        `${(resumed.seconds / two.seconds).toFixed(2)} of the time of all`,
    );
    const lists = makeLists(folder, size.seconds);
    const listed = await run(sheet, lists, into(folder, 'kept-lists'), 2);
    console.log(`${LISTS} lists of ${midis(0, size.seconds).length} notes: ${told(listed)}`);
  } finally {
    rmSync(folder, { recursive: true });
  }
}
