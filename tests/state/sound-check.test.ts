import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { convolve } from '../../fixtures/lines/room.ts';
import { speakerPath } from '../../fixtures/room/band-in-a-room.ts';
import { random } from '../../fixtures/lines/random.ts';
import { SWEEP_GAP_SECONDS } from '../../src/core/room/check/sound-check.ts';
import { deviceFields } from '../../src/state/measured-room.ts';
import { readTuning } from '../../src/state/tuning-check.ts';
import type { HeardNote } from '../../src/core/take/note.ts';
import { Listener } from '../../src/core/listen.ts';
import { pluckLine } from '../analysis/pluck.ts';
import { RATE, world } from './world.ts';

type World = Awaited<ReturnType<typeof world>>;

/** Presses the button and lets the room answer. */
async function sweepThrough(w: World, gain: number, delaySeconds = 0.09) {
  const swept = w.soundCheck.sweep();
  const { sounds, startFrames } = w.played()!;
  const first = startFrames[0]! - w.frame();
  const last = startFrames.at(-1)! - w.frame() + sounds.at(-1)!.length;
  const sound = new Float32Array(last + Math.ceil((SWEEP_GAP_SECONDS + 0.2) * RATE));
  sounds.forEach((sweep, i) => sound.set(sweep, first + startFrames[i]! - startFrames[0]!));
  const dice = random(2);
  const echo = convolve(sound, speakerPath(RATE, delaySeconds, 3));
  await w.play(echo.map((x) => gain * x + 2e-4 * dice.normal()));
  await swept;
}

describe('the sound check', () => {
  it('measures speakers, keeps them for the pair of devices, and a take uses what was measured', async () => {
    const w = await world({ roundTripSeconds: 0.3 });
    await w.soundCheck.open();
    expect(w.soundCheck.step).toBe('listening');
    expect(w.soundCheck.warnings).toHaveLength(1);
    expect(w.soundCheck.room).toBeNull();
    await sweepThrough(w, 0.5);
    expect(w.soundCheck.problem).toBeNull();
    const room = w.soundCheck.room!;
    expect(room).toMatchObject({ input: 'fake', output: 'speakers', setSeconds: null });
    expect(room.delaySeconds).toBeCloseTo(0.09, 3);
    expect(room.removedDb).toBeGreaterThan(15);
    expect(room.path).not.toBeNull();
    w.soundCheck.setDelay(0.095);
    w.soundCheck.close();
    expect(w.open.microphone).toBe(0);

    await w.session.start();
    await w.play(new Float32Array(3 * RATE));
    expect(w.session.phase.kind).toBe('playing');
    await w.session.stop();
    await w.until('review');
    if (w.session.phase.kind !== 'review') throw new Error('no review');
    const { details, report } = w.session.phase.review;
    // One bar of count-in at 120 takes 2 s.
    expect(details.firstBeatSeconds).toBeCloseTo(2 + 0.095, 2);
    expect(report.source.backing).toMatchObject({ removedDb: expect.any(Number) as number });
  });

  it('left while it lists the devices: nothing is watched, and the devices of the next opening stand', async () => {
    const w = await world();
    const { audio } = w;
    const listed: ((devices: Awaited<ReturnType<typeof audio.devices>>) => void)[] = [];
    let watching = 0;
    audio.devices = () => new Promise((resolve) => listed.push(resolve));
    audio.onDevicesChanged = () => {
      watching += 1;
      return () => void (watching -= 1);
    };
    const first = w.soundCheck.open();
    await expect.poll(() => listed.length).toBe(1);
    const second = w.soundCheck.chooseInput('other');
    await expect.poll(() => listed.length).toBe(2);
    listed[1]!({ inputs: [{ deviceId: 'other', label: 'other' }], outputs: [] });
    await second;
    listed[0]!({ inputs: [{ deviceId: 'fake', label: 'fake' }], outputs: [] });
    await first;
    expect(w.soundCheck.inputs).toEqual([{ deviceId: 'other', label: 'other' }]);
    expect(watching).toBe(1);
    w.soundCheck.close();
    expect(watching).toBe(0);
    expect(w.open.microphone).toBe(0);
  });

  it('headphones: nothing to take out, and the delay stays the assumed one', async () => {
    const w = await world();
    await w.soundCheck.open();
    await sweepThrough(w, 0);
    expect(w.soundCheck.room).toMatchObject({ path: null, delaySeconds: null, leakDb: null });
    w.soundCheck.close();
  });

  it('a refusal and a microphone pulled out in mid-sweep leave a sentence and a way on', async () => {
    const w = await world();
    await w.soundCheck.open();
    const swept = w.soundCheck.sweep();
    await w.pullOut();
    await swept;
    expect(w.soundCheck.problem).toEqual({ code: 'microphone.lost' });
    expect(w.open.microphone).toBe(0);
    await w.soundCheck.open();
    expect(w.soundCheck.problem).toBeNull();
    w.soundCheck.close();
  });
});

/** Presses the button and strikes with the eight clicks, so many seconds after each was sent to the output. */
async function strikeAfter(w: World, delays: (i: number) => number) {
  const struck = w.soundCheck.strike();
  expect(w.soundCheck.step).toBe('striking');
  const { startFrames } = w.played()!;
  const start = w.frame();
  const sound = new Float32Array(startFrames.at(-1)! - start + RATE);
  const dice = random(5);
  for (let i = 0; i < sound.length; i++) sound[i] = 3e-4 * dice.normal();
  startFrames.slice(4).forEach((frame, i) => {
    const from = frame - start + Math.round(delays(i) * RATE);
    for (let k = 0; k < 0.05 * RATE; k++)
      sound[from + k]! += 0.1 * Math.exp(-k / (0.01 * RATE)) * dice.normal();
  });
  await w.play(sound);
  await struck;
}

describe('the delay through headphones', () => {
  it('comes from eight muted strokes, is kept for the devices, and a take counts with it', async () => {
    const w = await world({ roundTripSeconds: 0.05 });
    await w.soundCheck.open();
    await sweepThrough(w, 0);
    expect(w.soundCheck.delay).toEqual({ seconds: 0.05, basis: 'assumed' });
    await strikeAfter(w, (i) => 0.2 + (i % 2 === 0 ? 0.01 : -0.01));
    expect(w.soundCheck.problem).toBeNull();
    expect(w.soundCheck.room).toMatchObject({ delayFrom: 'strokes', strokes: 8, isSwept: true, path: null });
    expect(w.soundCheck.room!.spreadSeconds).toBeCloseTo(0.02, 2);
    expect(w.soundCheck.delay!.basis).toBe('measured');
    expect(w.soundCheck.delay!.seconds).toBeCloseTo(0.2, 2);
    // Headphones that are swept again are still not heard; the strokes stand.
    await sweepThrough(w, 0);
    expect(w.soundCheck.delay!.seconds).toBeCloseTo(0.2, 2);
    w.soundCheck.close();

    await w.session.start();
    await w.play(new Float32Array(3 * RATE));
    await w.session.stop();
    await w.until('review');
    if (w.session.phase.kind !== 'review') throw new Error('no review');
    expect(w.session.phase.review.details.firstBeatSeconds).toBeCloseTo(2 + 0.2, 2);
  });

  it('is refused with what to do where strokes and clicks were not together', async () => {
    const w = await world();
    await w.soundCheck.open();
    await strikeAfter(w, (i) => [0.1, 0.4, 0.25, 0.5, 0.02, 0.33, 0.17, 0.46][i]!);
    expect(w.soundCheck.problem).toMatchObject({ code: 'soundCheck.strokesApart' });
    expect(w.soundCheck.room).toBeNull();
    w.soundCheck.close();
  });

  it('can be set by hand within its limits, also before anything is measured, and given back', async () => {
    const w = await world({ roundTripSeconds: 0.05 });
    await w.soundCheck.open();
    w.soundCheck.setDelay(0.25);
    expect(w.soundCheck.delay).toEqual({ seconds: 0.25, basis: 'set' });
    // Nobody knows whether the band comes back through the microphone: it is kept beside the take.
    expect(w.soundCheck.room).toMatchObject({ isSwept: false, delaySeconds: null });
    w.soundCheck.setDelay(2);
    expect(w.soundCheck.delay!.seconds).toBe(0.6);
    w.soundCheck.setDelay(-1);
    expect(w.soundCheck.delay!.seconds).toBe(0);
    w.soundCheck.setDelay(null);
    expect(w.soundCheck.delay).toEqual({ seconds: 0.05, basis: 'assumed' });
    w.soundCheck.close();
  });

  it('that an earlier version kept as a nudge is the one that was meant', () => {
    const stored = {
      ...{ input: 'a', output: 'b', measuredAt: '2026-01-01T00:00:00.000Z', delaySeconds: 0.09 },
      ...{ spreadSeconds: 0, leakDb: null, removedDb: 0, path: null, nudgeSeconds: -0.01 },
    };
    const [read] = v.parse(deviceFields.rooms, [stored]);
    expect(read).toMatchObject({ isSwept: true, delayFrom: 'sweep', setSeconds: 0.08 });
    expect(v.parse(deviceFields.rooms, [{ ...stored, nudgeSeconds: 0 }])[0]!.setSeconds).toBeNull();
  });
});

describe('open strings', () => {
  const note = (midi: number, at: number) =>
    ({ onsetSeconds: at, offsetSeconds: at + 1, midi, contour: [], strength: 1 }) as never;
  it('are told apart, each with its own cents', () => {
    const { strings } = readTuning([40, 45, 50, 55, 59, 64], [note(40.05, 0), note(44.9, 2), note(52, 3)]);
    expect(strings.map(({ name }) => name)).toEqual(['E2', 'A2', 'D3', 'G3', 'B3', 'E4']);
    expect(strings[0]!.cents).toBeCloseTo(5);
    expect(strings[1]!.cents).toBeCloseTo(-10);
    expect(strings.slice(2).every(({ cents }) => cents === null)).toBe(true);
  });
});

it('reads six open strings from the notes that the listener hands out while they ring', () => {
  const rate = 44_100;
  const strings = [40, 45, 50, 55, 59, 64];
  // A guitar that is tuned 20 cents sharp of A = 440 Hz, its B string 15 cents flat of the others.
  const played = strings.map((midi) => midi + 0.2 - (midi === 59 ? 0.15 : 0));
  const plucks = [...played, ...played].map((midi, i) => ({ atSeconds: 0.5 + 1.2 * i, midi, seconds: 1.1 }));
  const sound = pluckLine(plucks, rate, 16);
  const listener = new Listener({ sampleRate: rate });
  const notes: HeardNote[] = [];
  for (let from = 0; from < sound.length; from += 1024) {
    listener.push(sound.subarray(from, from + 1024));
    notes.push(...listener.takeNotes());
  }
  const tuning = readTuning(strings, notes);
  expect(1200 * Math.log2(tuning.referenceHz! / 440)).toBeCloseTo(20, -0.5);
  [0, 0, 0, 0, -15, 0].forEach((cents, i) => expect(tuning.strings[i]!.cents).toBeCloseTo(cents, -0.5));
});
