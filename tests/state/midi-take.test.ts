import { english } from '../english.ts';
import { describe, expect, it } from 'vitest';
import { usualPractice } from '../../src/state/practice-settings.ts';
import { gradedByCommand, makeReview } from './by-command.ts';
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
    await w.settle();
    expect(w.library.takes).toMatchObject([{ id, source: 'midi', durationSeconds: 6 }]);
    expect(w.open).toEqual({ microphone: 0, band: 0 });
  });

  it('is heard again on the kit', async () => {
    const w = await world({ settings: { input: 'midi' } });
    await played(w);
    await w.session.stop();
    await w.until('review');
    expect(w.notesOpened.map(({ notes }) => notes.map(({ midi }) => midi))).toEqual([melody]);
    await w.session.playback!.play(2);
    expect(w.players[0]).toMatchObject({ position: 2, bandLevelDb: -18 });
    w.session.playback!.setMix('line');
    expect(w.players[0]!.bandLevelDb).toBe(-60);
    w.session.close();
    expect(w.players[0]!.disposed).toBe(true);
  });

  it('opens from the disk with the very same report, graded anew as well', async () => {
    const w = await world({ settings: { input: 'midi' } });
    await played(w);
    await w.session.stop();
    const first = await makeReview(w);
    await w.session.openTake(first.id!);
    expect((await makeReview(w)).report).toEqual(first.report);
    const stored = await w.takes.open(first.id!);
    if (!stored.ok) throw new Error(english(stored.problem));
    await w.takes.saveReport(first.id!, 'a report of a version to come' as never, first.report.summary);
    await w.session.openTake(first.id!);
    expect((await makeReview(w)).report).toEqual(first.report);
  });

  it('cut off in the middle, it is offered and graded as far as it was played', async () => {
    const w = await world({ settings: { input: 'midi' } });
    await played(w);
    // The page dies here: the messages lie on the disk, nobody called it finished.
    await w.library.load();
    expect(w.library.unfinished).toEqual([]);
    const id = 'take-0';
    await w.session.openTake(id);
    const review = await makeReview(w);
    expect(review.report.notes.map(({ midi }) => midi)).toEqual(melody);
    expect(review.report.landings.map(({ role }) => role)).toEqual(['third', 'third']);
  });

  it('leaves as a MIDI file and the words that grade it to the same line', async () => {
    const w = await world({ settings: { input: 'midi', practice: { ...usualPractice.practice } } });
    await played(w);
    await w.session.stop();
    const { report } = await makeReview(w);
    w.session.save('line');
    w.session.save('band');
    expect(w.saved.map(({ fileName }) => fileName)).toEqual(['landfall 2026-03-01 10-15 A7 D7.mid']);
    const again = await gradedByCommand(w);
    expect(again.source.kind).toBe('notes');
    expect(again.notes.map(({ midi, degree, role }) => ({ midi, degree, role }))).toEqual(
      report.notes.map(({ midi, degree, role }) => ({ midi, degree, role })),
    );
    again.notes.forEach(({ beat }, i) => expect(beat).toBeCloseTo(report.notes[i]!.beat, 3));
    expect(again.summary).toEqual(report.summary);
    expect(again.shares).toEqual(report.shares);
  });

  it('a note that is bent, and pedals, keep their place in the file', async () => {
    const w = await world({ settings: { input: 'midi' } });
    await w.session.start();
    await w.play(silence(2));
    w.send(0xb0, 64, 127);
    w.send(0x90, 69, 80);
    w.send(0xe0, 0, 0x60);
    await w.play(silence(0.5));
    w.send(0x80, 69, 0);
    await w.play(silence(0.5));
    await w.session.stop();
    const { report } = await makeReview(w);
    // Half way up of two semitones, General MIDI's range.
    expect(report.notes.map(({ midi }) => midi)).toEqual([70]);
    w.session.save('line');
    expect((await gradedByCommand(w)).notes.map(({ midi }) => midi)).toEqual([70]);
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
    const [steps, notes] = [[] as string[], [] as number[]];
    w.midi.listen((message) => notes.push(message[0]!));
    w.midi.onFoot((step) => steps.push(step));
    w.send(0xb0, 64, 127);
    w.send(0xb0, 64, 0);
    w.send(0x90, 60, 64);
    w.midi.onFoot(null);
    w.send(0xb0, 64, 127);
    expect(steps).toEqual(['down', 'up']);
    expect(notes).toEqual([0x90, 0xb0]);
  });
});
