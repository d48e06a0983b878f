import { describe, expect, it } from 'vitest';
import { RATE, world } from './world.ts';

const silence = (seconds: number) => new Float32Array(Math.round(seconds * RATE));
/** Over | A7 | D7 |, a note a beat at 120: the third of A7 and the third of D7 as each arrives. */
const melody = [73, 69, 64, 69, 66, 69, 74, 69];

async function played(w: Awaited<ReturnType<typeof world>>) {
  await w.session.start();
  // The world's clock goes as samples come, whoever listens to them.
  await w.play(silence(2));
  for (const key of melody) {
    w.send(0x90, key, 100);
    await w.play(silence(0.4));
    w.send(0x80, key, 0);
    await w.play(silence(0.1));
  }
}

describe('a take on a MIDI instrument', () => {
  it('is graded like one that was heard, without a microphone', async () => {
    const w = await world({
      settings: { input: 'midi' },
      microphone: () => Promise.reject(new Error('nobody asked for a microphone')),
    });
    await played(w);
    expect(w.session.landingsSoFar.map(({ role }) => role)).toEqual(['third', 'third']);
    await w.session.stop();
    await w.until('review');
    if (w.session.phase.kind !== 'review') throw new Error('no review');
    const { report, id } = w.session.phase.review;
    expect(report.source.kind).toBe('notes');
    expect(report.notes.map(({ midi }) => midi)).toEqual(melody);
    expect(report.notes.map(({ beat }) => Math.round(beat))).toEqual([0, 1, 2, 3, 4, 5, 6, 7]);
    expect(report.landings.map(({ role }) => role)).toEqual(['third', 'third']);
    // It has no sound to keep, and the player is told so.
    expect(id).toBeNull();
    expect(w.session.notices.join()).toMatch(/not kept/);
    expect(w.open).toEqual({ microphone: 0, band: 0 });
  });

  it('shows the note while the key is down', async () => {
    const w = await world({ settings: { input: 'midi' } });
    await w.session.start();
    await w.play(silence(2.2));
    w.send(0x90, 73, 100);
    await w.play(silence(0.2));
    expect(w.session.live?.note).toMatchObject({ name: 'C#5', degree: '3', role: 'third' });
    w.send(0x80, 73, 0);
    await w.play(silence(0.2));
    expect(w.session.live?.note).toBeNull();
    w.session.close();
  });

  it('refused MIDI is a sentence with a way on', async () => {
    const w = await world({ settings: { input: 'midi' }, midiRefused: true });
    await w.session.start();
    expect(w.session.phase).toMatchObject({ kind: 'trouble', wayOn: 'try again' });
  });
});

describe('the MIDI pedal', () => {
  it('runs the screen where the player said so; else it is the instrument’s own', async () => {
    const w = await world();
    await w.midi.connect();
    expect(w.midi.names).toEqual(['a keyboard']);
    const [steps, notes] = [[] as boolean[], [] as number[]];
    w.midi.listen((message) => notes.push(message[0]!));
    w.midi.onFoot((down) => steps.push(down));
    w.send(0xb0, 64, 127);
    w.send(0xb0, 64, 0);
    w.send(0x90, 60, 64);
    w.midi.onFoot(null);
    w.send(0xb0, 64, 127);
    expect(steps).toEqual([true, false]);
    expect(notes).toEqual([0x90, 0xb0]);
  });
});
