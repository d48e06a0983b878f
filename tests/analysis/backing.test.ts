/**
 * A recording with its backing, in the app and at the command line: one report. And what does not fit is said.
 * The line and its trio come from a General MIDI bank, through a simulated room (fixtures/room).
 */
import { en } from '../../src/core/words/en.ts';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { wavBytes } from '../../fixtures/lines/wav.ts';
import { bandInARoom } from '../../fixtures/room/band-in-a-room.ts';
import { AnalysisClient } from '../../src/analysis/client.ts';
import { gradeSound, type Backing } from '../../src/core/grade-samples.ts';
import type { GradeOrder } from '../../src/core/grade-order.ts';
import { readArgs } from '../../src/cli/args.ts';
import { gradeFile } from '../../src/cli/grade-command.ts';
import type { Outcome } from '../../src/core/base/outcome.ts';
import { readReport, type Report } from '../../src/core/take/schema.ts';
import { noteScore } from '../bench/note-metrics.ts';
import { english } from '../english.ts';
import { InProcessWorker } from './in-process.ts';

const RATE = 16_000;
const heard = await bandInARoom({
  instrument: 'clean',
  sampleRate: RATE,
  seconds: 10,
  seed: 753,
  delaySeconds: 0.06,
  bandDb: 0,
});
/** The backing's file begins a second before the recording does. */
const files = {
  'take.wav': heard.microphone.map((x) => x / 2),
  'alone.wav': heard.player.map((x) => x / 2),
  'backing.wav': Float32Array.from([...new Float32Array(RATE), ...heard.band]),
  'silence.wav': new Float32Array(3 * RATE),
};
type Name = keyof typeof files;

const folder = mkdtempSync(join(tmpdir(), 'landfall-backing-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const bytesOf = (name: Name) => wavBytes(files[name], RATE);
for (const name of Object.keys(files) as Name[]) writeFileSync(join(folder, name), bytesOf(name));

const order: GradeOrder = {
  chartText: '| A7 |',
  bpm: 100,
  swing: 0.5,
  firstBeatSeconds: 0.3,
  reference: 440,
  source: 'audio',
};

const value = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(english(outcome.problem));
  return outcome.value;
};

/** As the app does it: the worker reads both files, the worker grades. */
async function inTheApp(line: Name, backing: Name) {
  const client = new AnalysisClient(() => InProcessWorker.asWorker(new InProcessWorker()));
  const read = async (name: Name) => {
    const sound = value(await client.read(new Blob([new Uint8Array(bytesOf(name))]), name));
    if (sound.kind !== 'sound') throw new Error('no sound');
    return sound;
  };
  const told: string[] = [];
  const taken: Backing = { kind: 'recording', name: backing, sound: await read(backing) };
  const graded = await client.grade({ ...(await read(line)), name: line, backing: taken }, order, {
    progress: () => undefined,
    message: (message) => told.push(english(message)),
  });
  return { report: value(graded).report, told };
}

async function atTheCommandLine(line: Name, backing: Name): Promise<{ report: Report; told: string[] }> {
  const words = ['--chart', '| A7 |', '--tempo', '100', '--swing', '0.5', '--first-beat', '0.3'];
  const paths = [join(folder, line), '--backing', join(folder, backing)];
  const read = value(readArgs(['grade', ...paths, ...words, '--json']));
  if (read.command !== 'grade') throw new Error('not grade');
  const graded = value(await gradeFile(read, { at: () => undefined, dispose: () => undefined }, en));
  const told = graded.warnings.map((warning) => english(warning).replaceAll(`${folder}/`, ''));
  return { report: value(readReport(JSON.parse(graded.page))), told };
}

describe('a recording with its backing', () => {
  it('is the same report in the app and at the command line', async () => {
    const app = await inTheApp('take.wav', 'backing.wav');
    expect(app).toEqual(await atTheCommandLine('take.wav', 'backing.wav'));
    const { backing } = app.report.source;
    expect(backing?.offsetSeconds).toBeCloseTo(0.06 - 1, 2);
    expect(backing?.removedDb).toBeGreaterThan(8);
    expect(noteScore(heard.truth, app.report.notes).f1).toBeGreaterThan(0.85);
  });

  it('that is not in it costs nothing and is said: headphones, another recording', async () => {
    const app = await inTheApp('alone.wav', 'backing.wav');
    expect(app).toEqual(await atTheCommandLine('alone.wav', 'backing.wav'));
    expect(app.report.source.backing).toBeNull();
    expect(app.told.join()).toMatch(/^backing\.wav is not heard in alone\.wav .*graded as it is\.$/);
  });

  it('is refused with a problem of its own where it is silent', async () => {
    const app = await inTheApp('take.wav', 'silence.wav');
    expect(app).toEqual(await atTheCommandLine('take.wav', 'silence.wav'));
    expect(app.told).toEqual([
      'silence.wav is silent, so there is nothing to take out; the take is graded as it is.',
    ]);
  });

  it('is waited for with a progress that never goes back', () => {
    const shares: number[] = [];
    const sound = { samples: files['take.wav'].subarray(0, 3 * RATE), sampleRate: RATE };
    const backing: Backing = {
      kind: 'recording',
      name: 'backing.wav',
      sound: { samples: files['backing.wav'], sampleRate: RATE },
    };
    gradeSound({ ...sound, name: 'take.wav', backing }, order, {
      progress: (share) => shares.push(share),
      message: () => undefined,
    });
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect(shares.at(-1)).toBe(1);
  });
});
