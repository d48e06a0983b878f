/** The built command line at the limits that the machine sets: a file that it may not read, and little memory. */
import { spawnSync } from 'node:child_process';
import {
  chmodSync,
  closeSync,
  cpSync,
  openSync,
  readFileSync,
  statSync,
  truncateSync,
  writeSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { writeWav } from '../../src/core/files/sound/write-wav.ts';
import { needs } from '../needs.ts';
import { build, fixture, LANDFALL, scratch } from './built.ts';

beforeAll(build);
const files = scratch();
afterAll(files.dispose);

const CHART = ['--chart', '| A7 | D7 |', '--tempo', '120'];

describe('a file that may not be read', () => {
  const isAdministrator = process.getuid?.() === 0;
  /** The administrator may read everything, so the command line then runs as the user "nobody" of most systems. */
  const user = isAdministrator ? { uid: 65_534, gid: 65_534 } : {};
  const canStart = spawnSync(process.execPath, ['--version'], { cwd: '/', ...user }).status === 0;
  const needsUser = needs(canStart, 'Run by the administrator, and Node can’t be started by another user.');

  it('ends with 1 and one sentence', needsUser, () => {
    const path = files.file('secret.wav', readFileSync(fixture('s16.wav')));
    chmodSync(path, 0);
    // Where everyone may read it: the project may lie in a folder of the administrator.
    cpSync(dirname(LANDFALL), join(files.folder, 'cli'), { recursive: true });
    chmodSync(files.folder, 0o755);
    const program = join(files.folder, 'cli/landfall.js');
    const { status, stdout, stderr } = spawnSync(process.execPath, [program, 'grade', path, ...CHART], {
      encoding: 'utf8',
      cwd: files.folder,
      ...user,
    });
    expect({ status, stdout }).toEqual({ status: 1, stdout: '' });
    expect(stderr).toMatch(/^[^\n]*not allowed[^\n]*\.\n$/);
  });
});

describe('a long recording', () => {
  /** Silence, so that the time goes into reading and listening alone. Sparse: it takes no place on the disk. */
  function silence(name: string, seconds: number, sampleRate: number): string {
    const path = files.file(name, writeWav(new Int16Array(0), sampleRate));
    const headerBytes = statSync(path).size;
    const bytes = 2 * seconds * sampleRate;
    const file = openSync(path, 'r+');
    const length = Buffer.alloc(4);
    length.writeUInt32LE(bytes);
    // The length of the data stands at the end of a plain WAV header.
    writeSync(file, length, 0, 4, headerBytes - 4);
    closeSync(file);
    truncateSync(path, headerBytes + bytes);
    return path;
  }

  /** Megabytes of JavaScript objects that Node may hold. A minute needs less than 10. */
  const HEAP_MEGABYTES = 16;
  /** Tells on the fourth channel how much memory the process had at most, sound outside of that heap included. */
  const TELL_MEMORY =
    'data:text/javascript,import{writeSync}from"node:fs";process.on("exit",()=>writeSync(3,String(process.resourceUsage().maxRSS)))';

  function gradeInLittleMemory(path: string) {
    const { status, output } = spawnSync(
      process.execPath,
      [
        `--max-old-space-size=${HEAP_MEGABYTES}`,
        '--import',
        TELL_MEMORY,
        LANDFALL,
        'grade',
        path,
        ...CHART,
        '--json',
      ],
      { encoding: 'utf8', maxBuffer: 1 << 28, stdio: ['ignore', 'pipe', 'pipe', 'pipe'] },
    );
    const [, stdout, stderr, kilobytes] = output;
    expect({ status, stderr }).toEqual({
      status: 0,
      stderr: expect.stringMatching(/^\S+ is silent from beginning to end: [^\n]*\n$/) as string,
    });
    const report = JSON.parse(stdout!) as { source: { durationSeconds: number }; notes: unknown[] };
    expect(report.notes).toEqual([]);
    return { seconds: report.source.durationSeconds, megabytes: Number(kilobytes) / 1024 };
  }

  // As many bytes as two hours at 8 kHz, in a sixth of the time that those take to hear. That sound of two hours is
  // read to its end is checked in tests/core/files/damage.test.ts.
  it('is graded in little memory', () => {
    const short = gradeInLittleMemory(silence('minute.wav', 60, 8000));
    const long = gradeInLittleMemory(silence('long.wav', 1200, 48_000));
    expect([short.seconds, long.seconds]).toEqual([60, 1200]);
    // Kept as 32-bit samples the recording would take 220 MB, as 16-bit samples 110. Measured: 30 MB more than a minute.
    expect(long.megabytes - short.megabytes).toBeLessThan(80);
  });
});
