/** Orders of events by which a take that was played could be lost, or by which the player would be told what is not so. */
import { describe, expect, it, vi } from 'vitest';
import { AnalysisClient } from '../../src/analysis/client.ts';
import { bad, type Outcome } from '../../src/core/base/outcome.ts';
import { Listener } from '../../src/core/listen.ts';
import type { Review } from '../../src/state/phase.ts';
import { InProcessWorker } from '../analysis/in-process.ts';
import { onTheBeat, pluckLine } from '../analysis/pluck.ts';
import { english } from '../english.ts';
import { RATE, world } from './world.ts';

/** Over | A7 | D7 |, the world's own chart; a bar of count-in lasts 2 s at 120. */
const melody = [73, 69, 64, 69, 66, 69, 74, 69];
const COUNT_IN = 2;
const line = () => pluckLine(onTheBeat(melody, 120, COUNT_IN + 0.016), RATE, COUNT_IN + 4.5);
const pitches = (review: Review) => review.report.notes.map((note) => Math.round(note.midi));

type World = Awaited<ReturnType<typeof world>>;

function reviewOf(w: World): Review {
  if (w.session.phase.kind !== 'review') throw new Error(`no review, but ${w.session.phase.kind}`);
  return w.session.phase.review;
}

const value = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(english(outcome.problem));
  return outcome.value;
};

/** A take that was played to its end and stands in review. */
async function played(options: Parameters<typeof world>[0] = {}): Promise<World> {
  const w = await world(options);
  await w.session.start();
  await w.play(line());
  await w.session.stop();
  await w.until('review');
  return w;
}

describe('a take that was played while its page was out of sight, where nothing is drawn', () => {
  it('is kept and graded when its microphone is lost', async () => {
    const w = await world();
    await w.session.start();
    w.hide();
    await w.play(line().subarray(0, 4.4 * RATE));
    await w.pullOut();
    await w.until('review');
    expect(pitches(reviewOf(w))).toEqual(melody.slice(0, 5));
    expect(w.library.takes).toHaveLength(1);
  });

  it('is kept and graded when it is stopped, as a foot switch can', async () => {
    const w = await world();
    await w.session.start();
    w.hide();
    await w.play(line());
    await w.session.stop();
    await w.until('review');
    expect(pitches(reviewOf(w))).toEqual(melody);
  });
});

describe('a listener that fails at one hop', () => {
  it('is told, and the take is graded from its recording', async () => {
    const w = await world();
    await w.session.start();
    const sound = line();
    await w.play(sound.subarray(0, 3 * RATE));
    const fails = vi.spyOn(Listener.prototype, 'push').mockImplementationOnce(() => {
      throw new Error('a bug of the listener');
    });
    await w.play(sound.subarray(3 * RATE));
    fails.mockRestore();
    expect(w.session.notices).toContainEqual({ code: 'listener.stopped' });
    await w.session.stop();
    await w.until('review');
    expect(pitches(reviewOf(w))).toEqual(melody);
  });

  it('that stops while it opens is told once, with nothing said of a take that is going on', async () => {
    const w = await world();
    vi.spyOn(InProcessWorker.prototype, 'postMessage').mockImplementationOnce(function (
      this: InProcessWorker,
    ) {
      this.crash();
    });
    await w.session.start();
    expect(w.session.phase).toMatchObject({ kind: 'trouble', problem: { code: 'listener.stopped' } });
    expect(w.session.notices).not.toContainEqual({ code: 'listener.stopped' });
  });
});

describe('a take that is nowhere but in memory', () => {
  it('is known as such from the moment on at which the disk was full', async () => {
    const w = await world({ room: 2 * RATE });
    await w.session.start();
    const sound = line();
    await w.play(sound.subarray(0, RATE));
    expect(w.session.isOnlyInMemory).toBe(false);
    await w.play(sound.subarray(RATE));
    expect(w.session.phase.kind).toBe('playing');
    expect(w.session.isOnlyInMemory).toBe(true);
    expect(w.session.notices).toContainEqual({ code: 'take.onlyInMemory' });
    const stopping = w.session.stop();
    expect(w.session.isOnlyInMemory).toBe(true);
    await stopping;
    await w.until('review');
    expect(w.session.isOnlyInMemory).toBe(true);
  });

  it('is handed to the player as a file where it could not be graded', async () => {
    const w = await world({ room: 2 * RATE });
    vi.spyOn(AnalysisClient.prototype, 'grade').mockResolvedValueOnce(bad('listener.stopped'));
    await w.session.start();
    await w.play(line());
    await w.session.stop();
    await w.until('trouble');
    expect(w.saved.map(({ fileName }) => fileName.replace(/^.*\./, ''))).toEqual(['landfall']);
    expect(w.session.notices).toContainEqual({ code: 'take.savedUngraded' });
  });

  it('stays in review where it could not be graded once more', async () => {
    const w = await played({ room: 2 * RATE });
    const before = reviewOf(w);
    vi.spyOn(AnalysisClient.prototype, 'read').mockResolvedValueOnce(bad('listener.stopped'));
    await w.session.setBacking(new File(['no sound'], 'band.wav'));
    expect(reviewOf(w).report).toEqual(before.report);
    expect(w.session.notices).toContainEqual({ code: 'listener.stopped' });
    expect(w.session.isOnlyInMemory).toBe(true);
    vi.spyOn(AnalysisClient.prototype, 'grade').mockResolvedValueOnce(bad('listener.notLoaded'));
    await w.session.setBacking(null);
    expect(reviewOf(w).report).toEqual(before.report);
    expect(w.session.notices).toContainEqual({ code: 'listener.notLoaded' });
  });
});

describe('a take whose sound the disk has no more', () => {
  it('at its end is shown with the notes that were heard while it was played', async () => {
    const w = await world();
    await w.session.start();
    const sound = line();
    await w.play(sound.subarray(0, 4 * RATE));
    await w.play(sound.subarray(4 * RATE));
    const [id] = w.sounds.files.keys();
    w.sounds.files.set(id!, new Int16Array(0));
    await w.session.stop();
    await w.until('review');
    expect(pitches(reviewOf(w))).toEqual(melody);
  });

  it('and whose report can’t be read is not removed by opening it', async () => {
    const w = await played();
    const { id } = reviewOf(w);
    value(await w.takes.removeSound(id!));
    const [card] = (await w.takes.list()).takes;
    value(await w.takes.saveReport(id!, 'of another version', card!.summary!));
    await w.session.openTake(id!);
    await w.until('trouble');
    expect(value(await w.takes.open(id!)).report).toBe('of another version');
  });

  it('a graded take in which nothing is heard any more stays', async () => {
    const w = await played();
    const { id } = reviewOf(w);
    await w.settle();
    const [card] = (await w.takes.list()).takes;
    value(await w.takes.saveReport(id!, 'of another version', card!.summary!));
    w.sounds.files.set(id!, new Int16Array(RATE));
    await w.session.openTake(id!);
    await w.until('review');
    expect((await w.takes.list()).takes).toHaveLength(1);
  });
});
