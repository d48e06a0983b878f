/** What a file of the band is when writing it stops half way, and where the results of a batch can't be kept. */
import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import {
  chmodSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  readlinkSync,
  statSync,
  symlinkSync,
  writeSync,
} from 'node:fs';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { KeptResults } from '../../src/cli/kept-results.ts';
import { writeWholeFile } from '../../src/cli/whole-file.ts';
import { bad, good } from '../../src/core/base/outcome.ts';
import { build, LANDFALL, landfall, scratch } from './built.ts';

const disk = scratch();
const BEFORE = 'what stood there before';
const CHART = ['--chart', '| E7 | A7 |', '--tempo', '60'];
let folder = '';
let file = '';
let made = 0;
beforeEach(() => {
  folder = join(disk.folder, `${++made}`);
  mkdirSync(folder);
  file = join(folder, 'band.wav');
});
beforeAll(build, 120_000);
afterAll(disk.dispose);

const writes = (text: string) => (descriptor: number) => {
  writeSync(descriptor, text);
  return Promise.resolve(good(undefined));
};

describe('a file that is written whole', () => {
  it('takes the place of the old one only when it is whole', async () => {
    disk.file(`${made}/band.wav`, BEFORE);
    const refused = await writeWholeFile(file, async (descriptor) => {
      writeSync(descriptor, 'half');
      await setTimeout(1);
      return bad('cli.noTempo');
    });
    expect(refused.ok).toBe(false);
    expect(readFileSync(file, 'utf8')).toBe(BEFORE);
    const failed = writeWholeFile(file, () => Promise.reject(new RangeError('a fault')));
    await expect(failed).rejects.toThrow(RangeError);
    expect(readFileSync(file, 'utf8')).toBe(BEFORE);
    chmodSync(file, 0o640);
    expect(await writeWholeFile(file, writes('new'))).toEqual(good(undefined));
    expect(readFileSync(file, 'utf8')).toBe('new');
    expect(statSync(file).mode & 0o777).toBe(0o640);
    expect(readdirSync(folder)).toEqual(['band.wav']);
  });

  it('follows a link, also one that has no file behind it yet, and writes straight to a device', async () => {
    for (const [name, target] of [
      ['there.wav', 'a.wav'],
      ['yet.wav', 'b.wav'],
    ] as const) {
      if (target === 'a.wav') disk.file(`${made}/a.wav`, BEFORE);
      symlinkSync(target, join(folder, name));
      expect(await writeWholeFile(join(folder, name), writes('new'))).toEqual(good(undefined));
      expect(readlinkSync(join(folder, name))).toBe(target);
      expect(readFileSync(join(folder, target), 'utf8')).toBe('new');
    }
    expect(await writeWholeFile('/dev/null', writes('new'))).toEqual(good(undefined));
    expect(await writeWholeFile(folder, writes('new'))).toMatchObject({
      problem: { code: 'disk.write', facts: { reason: 'folder' } },
    });
  });
});

describe('landfall band', () => {
  it('leaves the old file where the new one has no room', () => {
    disk.file(`${made}/band.wav`, BEFORE);
    // No file may grow over 64 blocks (POSIX, ulimit): the system refuses the rest as a full disk would.
    const { status, stderr } = spawnSync(
      'sh',
      ['-c', 'ulimit -f 64; exec "$0" "$@"', process.execPath, LANDFALL, 'band', ...CHART, '--out', file],
      { encoding: 'utf8' },
    );
    expect(status).toBe(1);
    expect(stderr).toBe(`${file} can’t be written: the disk is full.\n`);
    expect(readFileSync(file, 'utf8')).toBe(BEFORE);
    expect(readdirSync(folder)).toEqual(['band.wav']);
  });

  it.each(['SIGINT', 'SIGTERM', 'SIGHUP'] as const)('stopped by %s leaves no half file', async (signal) => {
    disk.file(`${made}/band.wav`, BEFORE);
    const running = spawn(process.execPath, [
      ...[LANDFALL, 'band', ...CHART],
      ...['--choruses', '99', '--out', file],
    ]);
    const ended = once(running, 'exit');
    while (readdirSync(folder).length < 2 && running.exitCode === null) await setTimeout(20);
    expect(readdirSync(folder)).toHaveLength(2);
    running.kill(signal);
    expect(await ended).toEqual([null, signal]);
    expect(readdirSync(folder)).toEqual(['band.wav']);
    expect(readFileSync(file, 'utf8')).toBe(BEFORE);
  });

  it('says that standard output can’t be written where it is full', () => {
    const { status, stderr } = spawnSync(
      'sh',
      ['-c', `"$0" "$1" forms > /dev/full`, process.execPath, LANDFALL],
      {
        encoding: 'utf8',
      },
    );
    expect({ status, stderr }).toEqual({
      status: 1,
      stderr: 'Standard output can’t be written: the disk is full.\n',
    });
  });
});

describe('results that can’t be kept', () => {
  it('do not hold the batch up', () => {
    // Linux says of a new folder in /proc that there is none; Node's recursive mkdir tries again for ever.
    const kept = new KeptResults<unknown>('/proc/landfall/results', (value) => value);
    kept.keep('a', 1);
    expect(kept.find('a')).toBeNull();
  });

  it('are made with the folders above them', () => {
    const kept = new KeptResults<unknown>(join(folder, 'a/b/c'), (value) => value);
    kept.keep('a', 1);
    expect(kept.find('a')).toBe(1);
  });
});

describe('a take that is piped in', () => {
  it('is named by a dash', () => {
    const notes = 'onset,duration,pitch\n0,1,68\n2,1,67\n';
    const file = disk.file(`${made}/solo.csv`, notes);
    const piped = spawnSync(
      'sh',
      ['-c', 'cat "$2" | "$0" "$1" grade - --chart "| E7 |" --tempo 100', process.execPath, LANDFALL, file],
      { encoding: 'utf8' },
    );
    expect(piped).toMatchObject({ status: 0, stderr: '' });
    expect(piped.stdout).toBe(landfall('grade', file, '--chart', '| E7 |', '--tempo', '100').stdout);
  });
});
