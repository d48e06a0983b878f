/** `--backing` from end to end: a line over a trio, as loud in the microphone, through a living room. */
import { english } from '../english.ts';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { bandInARoom } from '../../fixtures/room/band-in-a-room.ts';
import { wavBytes } from '../../fixtures/lines/wav.ts';
import { readReport, type Report } from '../../src/core/take/schema.ts';
import { noteScore } from '../bench/note-metrics.ts';
import { build, landfall, scratch } from './built.ts';

beforeAll(build);
const files = scratch();
afterAll(files.dispose);

const scene = {
  instrument: 'clean',
  sampleRate: 44_100,
  seconds: 16,
  seed: 750,
  delaySeconds: 0.06,
  bandDb: 0,
};
const heard = await bandInARoom(scene);
const wav = (name: string, samples: Float32Array) => files.file(name, wavBytes(samples, scene.sampleRate));
const take = wav(
  'take.wav',
  heard.microphone.map((x) => x / 2),
);
const alone = wav(
  'alone.wav',
  heard.player.map((x) => x / 2),
);
/** The backing's file begins a second before what was played. */
const backing = wav('backing.wav', Float32Array.from([...new Float32Array(44_100), ...heard.band]));

const graded = (...args: readonly string[]) =>
  landfall('grade', ...args, '--chart', '| A7 |', '--tempo', '100');

function report(stdout: string): Report {
  const read = readReport(JSON.parse(stdout));
  if (!read.ok) throw new Error(english(read.problem));
  return read.value;
}
const f1 = (stdout: string) => noteScore(heard.truth, report(stdout).notes).f1;

describe('landfall grade --backing', () => {
  it('hears the player and not the band, and says what was taken out', () => {
    const plain = graded(take, '--json');
    const without = graded(take, '--backing', backing, '--json');
    expect(without).toMatchObject({ status: 0, stderr: '' });
    expect(f1(without.stdout)).toBeGreaterThan(f1(plain.stdout) + 0.1);
    const found = report(without.stdout).source.backing;
    expect(found?.offsetSeconds).toBeCloseTo(scene.delaySeconds - 1, 2);
    expect(Math.abs(found?.driftPpm ?? NaN)).toBeLessThan(20);
    expect(found?.removedDb).toBeGreaterThan(8);
    expect(report(plain.stdout).source).not.toHaveProperty('backing');
    expect(graded(take, '--backing', backing).stdout).toMatch(/Backing +Heard from -0\.9\d+ s on/);
  });

  it('grades a take with headphones as it is, and says so', () => {
    const result = graded(alone, '--backing', backing, '--json');
    expect(result.status).toBe(0);
    expect(result.stderr).toMatch(/is not heard in .*graded as it is\.\n$/);
    expect(report(result.stdout).source.backing).toBeNull();
    expect(report(result.stdout).notes).toEqual(report(graded(alone, '--json').stdout).notes);
  });

  it('refuses a backing that is not there, or a list of notes', () => {
    const notes = files.file('line.csv', 'onset,duration,pitch\n0,0.5,69\n');
    expect(graded(take, '--backing', 'none.wav')).toMatchObject({ status: 1, stdout: '' });
    expect(graded(take, '--backing', notes)).toMatchObject({ status: 1, stdout: '' });
    expect(graded(notes, '--backing', backing).stderr).toMatch(/is not a recording/);
  });
});
