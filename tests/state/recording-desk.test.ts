/** A recording that is opened: what was found is proposed, the player confirms it, and it stands among the takes. */
import { describe, expect, it } from 'vitest';
import { writeWav } from '../../src/core/files/sound/write-wav.ts';
import { toPcm16 } from '../../src/core/base/pcm16.ts';
import { RecordingDesk } from '../../src/state/recording-desk.svelte.ts';
import type { Review } from '../../src/state/phase.ts';
import { onTheBeat, pluckLine } from '../analysis/pluck.ts';
import { RATE, world } from './world.ts';

const melody = [73, 69, 64, 69, 66, 69, 74, 69];
/** Two choruses of | A7 | D7 | at 100 from 1.2 s on: quarters, so that the line alone tells its tempo. */
const sound = pluckLine(onTheBeat([...melody, ...melody], 100, 1.2), RATE, 12);
const wavFile = (name = 'mine.wav') =>
  new File([writeWav(toPcm16(sound), RATE) as Uint8Array<ArrayBuffer>], name);

function deskOf(w: Awaited<ReturnType<typeof world>>) {
  return new RecordingDesk({
    analysis: w.analysis,
    audio: w.audio,
    frames: { each: () => () => undefined },
    setup: w.setup,
    session: w.session,
    today: () => new Date('2026-03-01T10:15:00Z'),
  });
}

const reviewOf = (w: Awaited<ReturnType<typeof world>>): Review => {
  if (w.session.phase.kind !== 'review') throw new Error(`no review, but ${w.session.phase.kind}`);
  return w.session.phase.review;
};

describe('a recording on the desk', () => {
  it('proposes the tempo and the first beat of the line, and is graded by what the player says', async () => {
    const w = await world({ settings: { bpm: 110 } });
    const desk = deskOf(w);
    await desk.open({ line: wavFile(), backing: null });
    const { draft, found } = desk.lying!;
    expect(found).not.toBeNull();
    expect(Math.abs(draft.setup.settings.bpm / 100 - 1)).toBeLessThan(0.01);
    expect(Math.abs(draft.firstBeatSeconds - 1.2)).toBeLessThan(0.05);
    // What is said here is said of the recording alone.
    draft.setup.setBpm(100);
    draft.firstBeatSeconds = 1.2;
    draft.setup.chooseKey('D');
    expect(w.setup.settings).toMatchObject({ bpm: 110, ownChart: '| A7 | D7 |' });
    draft.setup.writeChart('| A7 | D7 |', 'My vamp');
    await desk.grade();
    await w.until('review');
    await w.settle();
    expect(desk.lying).toBeNull();
    expect(w.players.at(-2)?.disposed).toBe(true);
    const review = reviewOf(w);
    expect(review.report.landings.map(({ role }) => role)).toEqual(['third', 'third', 'third', 'third']);
    expect(review.details).toMatchObject({ title: 'mine.wav', bpm: 100, source: 'recording' });
    expect(w.library.takes).toMatchObject([{ id: review.id, title: 'mine.wav' }]);

    // It is opened again from among the takes, sound and all, and played by oneself over its chart.
    w.session.close();
    await w.session.openTake(review.id!);
    await w.until('review');
    const again = reviewOf(w);
    expect(again.report).toEqual(review.report);
    expect(again.content.kind === 'sound' && again.content.audio.samples.length).toBe(sound.length);
    await w.session.again();
    expect(w.setup.settings).toMatchObject({
      bpm: 100,
      form: null,
      ownChart: '| A7 | D7 |',
      ownTitle: 'My vamp',
    });
    w.session.close();
  });

  it('is graded again in place by another chart, key, tempo and first bar, and kept so', async () => {
    const w = await world({ settings: { bpm: 100 } });
    await w.openRecording({ line: wavFile(), backing: null }, 1.2);
    await w.until('review');
    const before = reviewOf(w);
    const listened = w.workers.length;
    await w.session.correct({ chartText: '| E7 | A7 |', key: 'E', firstBeatSeconds: 1.8 });
    expect(w.session.phase.kind).toBe('review');
    const after = reviewOf(w);
    expect(after.id).toBe(before.id);
    expect(after.timeline.beatMap.secondsAt(0)).toBeCloseTo(1.8, 9);
    expect(after.report.notes.map(({ midi }) => midi)).toEqual(before.report.notes.map(({ midi }) => midi));
    expect(after.report.landings[0]?.chord).toBe('E7');
    // The notes are known: nothing is listened to again.
    expect(w.workers.length).toBe(listened + 1);
    const kept = await w.takes.open(after.id!);
    expect(kept.ok && kept.value.details).toMatchObject({ key: 'E', firstBeatSeconds: 1.8 });
  });

  it('keeps a line that is written down with its notes', async () => {
    const w = await world({ settings: { bpm: 120 } });
    const rows = melody.map((midi, i) => `${i / 2},0.4,${midi}`);
    const line = new File([['onset,duration,pitch', ...rows].join('\n')], 'line.csv');
    await w.openRecording({ line, backing: null });
    await w.until('review');
    await w.settle();
    const { id, report } = reviewOf(w);
    w.session.close();
    await w.session.openTake(id!);
    await w.until('review');
    const again = reviewOf(w);
    expect(again.report).toEqual(report);
    expect(again.content).toMatchObject({ kind: 'notes', durationSeconds: report.source.durationSeconds });
    await w.session.correct({ chartText: '| A7 | D7 | E7 |' });
    expect(reviewOf(w).report.notes).toHaveLength(report.notes.length);
  });

  it('tells what can’t be read, and keeps nothing of it', async () => {
    const w = await world();
    const desk = deskOf(w);
    await desk.open({ line: new File(['no sound in here'], 'notes.txt'), backing: null });
    expect(desk.lying).toBeNull();
    expect(desk.reading).toBeNull();
    await w.until('trouble');
    expect(w.library.takes).toEqual([]);
  });
});
