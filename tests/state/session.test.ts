import { gradeOrder } from '../../src/core/grade-order.ts';
import { en } from '../../src/core/words/en.ts';
import { describe, expect, it, vi } from 'vitest';
import { AnalysisClient } from '../../src/analysis/client.ts';
import { timelineFromTempo } from '../../src/core/chart/build-timeline.ts';
import { parseChart } from '../../src/core/chart/parse-chart.ts';
import { gradeSound } from '../../src/core/grade-samples.ts';
import { bytesInMemory } from '../../src/core/files/bytes/bytes.ts';
import { openAudio, readWhole } from '../../src/core/files/audio.ts';
import { toPcm16 } from '../../src/core/base/pcm16.ts';
import { writeTakeMidi } from '../../src/core/files/notes/write-take-midi.ts';
import { writeWav } from '../../src/core/files/sound/write-wav.ts';
import { lostSentence } from '../../src/core/report/sentences.ts';
import { bad, good, type Outcome } from '../../src/core/base/outcome.ts';
import type { MeasuredRoom } from '../../src/state/measured-room.ts';
import type { Review } from '../../src/state/phase.ts';
import { onTheBeat, pluckLine } from '../analysis/pluck.ts';
import { english } from '../english.ts';
import { RATE, world } from './world.ts';

/** Over | A7 | D7 |: the third of A7 and the third of D7, as each arrives. Count-in of a bar: 2 s at 120. */
const melody = [73, 69, 64, 69, 66, 69, 74, 69];
const COUNT_IN = 2;
/** Behind the beat, as soloists play: by 16 ms in the mean (Weimar Jazz Database, 64,141 on-beat notes). */
const LATE = 0.016;
const line = (roundTrip = 0) =>
  pluckLine(onTheBeat(melody, 120, COUNT_IN + LATE + roundTrip), RATE, COUNT_IN + 4.5);
const soundOf = ({ content }: Review) => {
  if (content.kind !== 'sound') throw new Error('no sound');
  return content.audio.samples;
};
const pitches = (review: Review) => review.report.notes.map((note) => Math.round(note.midi));

async function reviewed(of: Awaited<ReturnType<typeof world>>): Promise<Review> {
  await of.until('review');
  if (of.session.phase.kind !== 'review') throw new Error('no review');
  return of.session.phase.review;
}

const value = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(english(outcome.problem));
  return outcome.value;
};

describe('a take', () => {
  it('goes from count-in to playing to review, and hears what was played', async () => {
    const w = await world();
    await w.session.start();
    expect(w.session.phase.kind).toBe('counting-in');
    expect(w.session.notices).toMatchObject([{ code: 'microphone.processing', facts: { echo: true } }]);
    const sound = line();
    await w.play(sound.subarray(0, RATE));
    expect(w.session.phase.kind).toBe('counting-in');
    expect(w.session.live?.beat).toBeLessThan(0);
    expect(w.session.live?.next?.startBeat).toBe(0);
    await w.play(sound.subarray(RATE, 3.6 * RATE));
    expect(w.session.phase.kind).toBe('playing');
    expect(w.session.live).toMatchObject({ bar: 0, chorus: 0 });
    expect(w.session.live?.chordNow?.symbol).toBe('A7');
    expect(w.session.live?.targets.map((tone) => tone.name)).toEqual(['F#', 'C']);
    expect(w.session.landingsSoFar.map((landing) => landing.role)).toEqual(['third']);
    await w.play(sound.subarray(3.6 * RATE));
    await w.session.stop();
    const review = await reviewed(w);
    expect(pitches(review)).toEqual(melody);
    expect(review.report.landings.map((landing) => landing.role)).toEqual(['third', 'third']);
    expect(review.report.source.kind).toBe('microphone');
    expect(soundOf(review)).toEqual(toPcm16(sound));
    expect(w.open).toEqual({ microphone: 0, band: 0 });
    expect(w.session.live).toBeNull();
    await w.settle();
    expect(w.library.takes).toMatchObject([{ id: review.id, durationSeconds: sound.length / RATE }]);
    expect(w.library.takes[0]?.summary?.landings.thirds).toBe(2);
    w.session.close();
    expect(w.session.phase.kind).toBe('ready');
    expect(w.players[0]?.disposed).toBe(true);
  });

  it('places notes by the audio clock, the round trip taken off', async () => {
    const w = await world({ roundTripSeconds: 0.125 });
    await w.session.start();
    await w.play(line(0.125));
    await w.session.stop();
    const review = await reviewed(w);
    const { beatMap } = review.timeline;
    for (const [i, note] of review.report.notes.entries())
      expect(Math.abs(note.onsetSeconds - LATE - beatMap.secondsAt(i))).toBeLessThan(0.01);
    expect(review.details.firstBeatSeconds).toBeCloseTo(COUNT_IN + 0.125, 6);
    const known: MeasuredRoom = {
      input: 'fake',
      output: 'speakers',
      measuredAt: '2026-03-01T10:00:00.000Z',
      delaySeconds: 0.03,
      spreadSeconds: 0,
      leakDb: null,
      removedDb: 0,
      path: null,
      delayFrom: 'sweep' as const,
      strokes: 0,
      isSwept: true,
      setSeconds: 0.02,
    };
    const measured = await world({ roundTripSeconds: 0.125, known });
    await measured.session.start();
    await measured.play(line(0.02));
    await measured.session.stop();
    expect((await reviewed(measured)).details.firstBeatSeconds).toBeCloseTo(COUNT_IN + 0.02, 6);
  });

  it('makes a wrong delay suspect, and takes the right one for its notes and for its devices', async () => {
    // The band goes round at 100 bpm, a bar of count-in lasts 2.4 s; the delay is assumed to be 20 ms and is 130.
    const midis = Array.from({ length: 32 }, (_, i) => melody[i % melody.length]!);
    const w = await world({ roundTripSeconds: 0.02, settings: { bpm: 100 } });
    await w.session.start();
    await w.play(pluckLine(onTheBeat(midis, 100, 2.4 + LATE + 0.13), RATE, 2.4 + 32 * 0.6 + 0.5));
    await w.session.stop();
    const before = await reviewed(w);
    const suspected = before.report.suspectedDelay!;
    expect(Math.abs(suspected.ms - 126)).toBeLessThan(10);
    await w.session.takeSuspected('delay');
    const after = await reviewed(w);
    expect(after.report.suspectedDelay).toBeNull();
    expect(after.id).toBe(before.id);
    expect(after.details.firstBeatSeconds! - before.details.firstBeatSeconds!).toBeCloseTo(
      suspected.ms / 1000,
      6,
    );
    expect(w.rooms.find('fake', 'speakers')!.setSeconds).toBeCloseTo(0.02 + suspected.ms / 1000, 6);
    // The next visit finds the take as it was left.
    const kept = value(await w.takes.open(after.id!));
    expect(kept.details.firstBeatSeconds).toBeCloseTo(after.details.firstBeatSeconds!, 9);
    w.session.close();
  });

  it('leaves as a WAV that grades to the very same notes, and a JSON of the same report', async () => {
    const w = await world();
    await w.session.start();
    await w.play(line());
    await w.session.stop();
    const review = await reviewed(w);
    w.session.save('line');
    w.session.save('report');
    const [wav, json] = w.saved;
    expect(wav?.fileName).toMatch(/^landfall 2026-03-01 10-15 .*\.wav$/);
    const bytes = new Uint8Array(await wav!.blob.arrayBuffer());
    const read = value(await readWhole(value(await openAudio(bytesInMemory('take.wav', bytes))), 'take.wav'));
    const { report: again } = value(
      gradeSound({ ...read, name: 'take.wav', backing: null }, gradeOrder(review.details), {
        progress: () => undefined,
        message: () => undefined,
      }),
    );
    expect(again).toEqual(review.report);
    expect(JSON.parse(await json!.blob.text())).toEqual(review.report);
  });

  it('stops by itself after its choruses', async () => {
    const w = await world({ settings: { choruses: 1 } });
    await w.session.start();
    await w.play(line());
    const review = await reviewed(w);
    expect(pitches(review)).toEqual(melody);
  });

  it('stopped before the first downbeat is thrown away', async () => {
    const w = await world();
    await w.session.start();
    await w.play(line().subarray(0, RATE));
    await w.session.stop();
    await w.settle();
    expect(w.session.phase.kind).toBe('ready');
    expect(w.open).toEqual({ microphone: 0, band: 0 });
    await w.library.load();
    expect(w.library.takes).toEqual([]);
    expect(w.library.unfinished).toEqual([]);
  });

  it('can be played again from its review', async () => {
    const w = await world();
    await w.session.start();
    await w.play(line());
    await w.session.stop();
    await reviewed(w);
    await w.session.again();
    expect(w.session.phase.kind).toBe('counting-in');
    expect(w.session.landingsSoFar).toEqual([]);
    expect(w.players[0]?.disposed).toBe(true);
  });
});

describe('what can go wrong', () => {
  it('a chart that can’t be read: its sentence, and back', async () => {
    const w = await world({ settings: { ownChart: '| A7 | Q9 |' } });
    await w.session.start();
    expect(w.session.phase).toMatchObject({ kind: 'trouble', wayOn: 'back' });
    expect(w.session.phase.kind === 'trouble' && english(w.session.phase.problem)).toContain('Q9');
  });

  it('a microphone refused: its sentence, try again, nothing left open', async () => {
    const w = await world({ microphone: () => Promise.resolve(bad('microphone.blocked')) });
    await w.session.start();
    expect(w.session.phase).toEqual({
      kind: 'trouble',
      problem: { code: 'microphone.blocked' },
      wayOn: 'try again',
    });
    expect(w.open).toEqual({ microphone: 0, band: 0 });
  });

  it('a microphone that is granted after the player went back: it is closed again', async () => {
    let grant: (granted: Outcome<void>) => void = () => undefined;
    const w = await world({ microphone: () => new Promise((resolve) => (grant = resolve)) });
    const starting = w.session.start();
    await w.settle();
    expect(w.session.phase).toEqual({ kind: 'opening', what: { kind: 'microphone' } });
    w.session.close();
    grant(good(undefined));
    await starting;
    await w.settle();
    expect(w.session.phase.kind).toBe('ready');
    expect(w.open).toEqual({ microphone: 0, band: 0 });
    await w.library.load();
    expect(w.library.takes.length + w.library.unfinished.length).toBe(0);
  });

  it('a microphone pulled out in mid-take: what was played is kept and graded', async () => {
    const w = await world();
    await w.session.start();
    await w.play(line().subarray(0, 4.4 * RATE));
    await w.pullOut();
    const review = await reviewed(w);
    expect(w.session.notices).toContainEqual({ code: 'microphone.lost' });
    expect(pitches(review)).toEqual(melody.slice(0, 5));
    expect(review.id).not.toBeNull();
    expect(w.library.takes).toHaveLength(1);
  });

  it('a microphone pulled out while counting in: its sentence, nothing left open', async () => {
    const w = await world();
    await w.session.start();
    await w.play(line().subarray(0, RATE));
    await w.pullOut();
    expect(w.session.phase).toMatchObject({ kind: 'trouble', wayOn: 'try again' });
    expect(w.open).toEqual({ microphone: 0, band: 0 });
  });

  it('a full disk: told once, the whole take graded from memory, what fitted offered later', async () => {
    const w = await world({ room: 2 * RATE });
    await w.session.start();
    const sound = line();
    await w.play(sound);
    await w.session.stop();
    const review = await reviewed(w);
    expect(w.session.notices.filter((message) => /disk is full/.test(english(message)))).toHaveLength(1);
    expect(review.id).toBeNull();
    expect(pitches(review)).toEqual(melody);
    expect(soundOf(review)).toEqual(toPcm16(sound));
    // The page asks before it is closed, until the take is saved as a file.
    expect(w.session.isOnlyInMemory).toBe(true);
    w.session.save('notes');
    expect(w.session.isOnlyInMemory).toBe(true);
    // So does each way that leaves it.
    for (const leave of [
      () => w.session.close(),
      () => void w.session.again(),
      () => void w.session.playDemo(),
    ]) {
      leave();
      expect(w.session.asksBeforeLeaving).toBe(true);
      expect(w.session.phase.kind).toBe('review');
      w.session.answerLeaving('stay');
      expect(w.session.asksBeforeLeaving).toBe(false);
      expect(w.session.phase.kind).toBe('review');
    }
    w.session.save('take');
    expect(w.session.isOnlyInMemory).toBe(false);
    w.session.close();
    expect(w.session.phase.kind).toBe('ready');
    await w.library.load();
    expect(w.library.unfinished).toMatchObject([{ durationSeconds: 2 }]);
  });

  it.each(['save', 'lose'] as const)('a full disk: left once the player has said “%s”', async (answer) => {
    const w = await world({ room: 2 * RATE });
    await w.session.start();
    await w.play(line());
    await w.session.stop();
    await reviewed(w);
    w.session.close();
    w.session.answerLeaving(answer);
    expect(w.session.phase.kind).toBe('ready');
    expect(w.session.asksBeforeLeaving).toBe(false);
    expect(w.saved.map(({ fileName }) => /\.landfall$/.test(fileName))).toEqual(
      answer === 'save' ? [true] : [],
    );
  });

  it('sound that the browser lost: silence in its place, later notes on their beats, kept with its bar', async () => {
    const w = await world();
    await w.session.start();
    const sound = line();
    // From just before the third beat for half a second nothing comes.
    await w.play(sound.subarray(0, 2.9 * RATE));
    w.skip(0.5);
    await w.play(sound.subarray(3.4 * RATE));
    await w.session.stop();
    const review = await reviewed(w);
    expect(soundOf(review).length).toBe(sound.length);
    expect(review.report.source.lost).toEqual([
      { atSeconds: 2.9, seconds: 0.5, beat: 1.8, bar: 0, chorus: 0 },
    ]);
    expect(lostSentence(review.report.source.lost, en)).toMatch(
      /^The browser lost 500 ms of sound, in bar 1;/,
    );
    // The record on the disk knows it too.
    expect(value(await w.takes.open(review.id!)).details.lost).toEqual([{ atSeconds: 2.9, seconds: 0.5 }]);
    const last = review.report.notes.at(-1)!;
    expect(last.beat).toBeCloseTo(7, 1);
    expect(pitches(review)).toEqual(melody.filter((_, beat) => beat !== 2));
  });

  it('a listener that fails in mid-take: told, and the take is graded from its recording', async () => {
    const w = await world();
    await w.session.start();
    const sound = line();
    await w.play(sound.subarray(0, 3 * RATE));
    w.workers[0]!.crash();
    await w.play(sound.subarray(3 * RATE));
    expect(w.session.notices.some(({ code }) => code === 'listener.stopped')).toBe(true);
    await w.session.stop();
    expect(pitches(await reviewed(w))).toEqual(melody);
  });

  it('leaving while it grades: the take is kept, the answer does not come back as a screen', async () => {
    const w = await world();
    await w.session.start();
    await w.play(line());
    const stopping = w.session.stop();
    expect(w.session.phase.kind).toBe('grading');
    w.session.close();
    await stopping;
    await w.settle();
    expect(w.session.phase.kind).toBe('ready');
    await w.library.load();
    expect(w.library.takes).toHaveLength(1);
  });
});

describe('a grading that is stopped', () => {
  it('a recording: the open page at once, and its late answer is dropped', async () => {
    const w = await world();
    const wav = writeWav(toPcm16(line()), RATE);
    const stopped = vi.fn();
    vi.spyOn(AnalysisClient.prototype, 'grade').mockImplementationOnce(
      (_sound, _order, _events, signal) =>
        new Promise((resolve) =>
          signal?.addEventListener('abort', () => {
            stopped();
            resolve(bad('listener.stopped'));
          }),
        ),
    );
    const opening = w.openRecording({ line: new File([wav], 'mine.wav'), backing: null }, COUNT_IN);
    await expect.poll(() => w.session.phase.kind).toBe('grading');
    w.session.stopGrading?.();
    expect(stopped).toHaveBeenCalledOnce();
    expect(w.session.phase.kind).toBe('ready');
    expect(w.session.stopGrading).toBeNull();
    await opening;
    await w.settle();
    expect(w.session.phase.kind).toBe('ready');
    expect(w.session.notices).toEqual([]);
    await w.library.load();
    expect(w.library.takes).toEqual([]);
  });

  it('a take on a full disk can’t be: it would be lost', async () => {
    const w = await world({ room: 2 * RATE });
    await w.session.start();
    await w.play(line());
    const stopping = w.session.stop();
    expect(w.session.phase.kind).toBe('grading');
    expect(w.session.stopGrading).toBeNull();
    await stopping;
    await reviewed(w);
  });
});

describe('other ways to a review', () => {
  it('opens a recording and grades it against the setup', async () => {
    const w = await world();
    const wav = writeWav(toPcm16(line()), RATE);
    await w.openRecording({ line: new File([wav], 'mine.wav'), backing: null }, COUNT_IN);
    const review = await reviewed(w);
    expect(pitches(review)).toEqual(melody);
    expect(review.details).toMatchObject({
      title: 'mine.wav',
      source: 'recording',
      firstBeatSeconds: COUNT_IN,
    });
    expect(review.report.source.kind).toBe('audio');
    expect(review.id).not.toBeNull();
  });

  it('opens a line that is written down: a table, heard again on the kit', async () => {
    const w = await world();
    const rows = melody.map((midi, beat) => `${COUNT_IN + beat / 2},0.4,${midi}`);
    const table = new File([['onset,duration,pitch', ...rows].join('\n')], 'line.csv');
    await w.openRecording({ line: table, backing: null }, COUNT_IN);
    const review = await reviewed(w);
    expect(pitches(review)).toEqual(melody);
    expect(review.report.source).toEqual({ kind: 'notes', durationSeconds: 5.9, sampleRate: null });
    expect(review.report.landings.map(({ role }) => role)).toEqual(['third', 'third']);
    await w.session.playback!.play();
    expect(w.notesOpened).toHaveLength(1);
    // Nothing else would be heard with it: the band plays along.
    expect(w.session.playback!.mix).toBe('both');
    w.session.save('line');
    expect(w.saved).toEqual([]);
  });

  it('opens a MIDI file, and says where no backing can be taken out', async () => {
    const w = await world();
    const messages = melody.flatMap((key, beat) => [
      { seconds: COUNT_IN + beat / 2, bytes: [0x90, key, 100] },
      { seconds: COUNT_IN + beat / 2 + 0.4, bytes: [0x80, key, 0] },
    ]);
    const midi = writeTakeMidi(
      { messages, notes: [], durationSeconds: 6, title: 'Line' },
      timelineFromTempo(value(parseChart('| C |')), { bpm: 120, firstBeatSeconds: COUNT_IN }),
    );
    const line = new File([midi], 'line.mid');
    await w.openRecording({ line, backing: null }, COUNT_IN);
    expect(pitches(await reviewed(w))).toEqual(melody);
    const backing = new File([writeWav(toPcm16(new Float32Array(RATE)), RATE)], 'band.wav');
    await w.openRecording({ line, backing }, COUNT_IN);
    await w.until('trouble');
    expect(w.session.phase).toMatchObject({
      problem: { code: 'take.notesHaveNoBacking', facts: { name: 'line.mid' } },
    });
    await w.openRecording({ line: backing, backing: line });
    await w.until('trouble');
    expect(w.session.phase).toMatchObject({
      problem: { code: 'take.backingIsNotes', facts: { name: 'line.mid' } },
    });
  });

  it('opens a recording with its backing, and tells where that does not fit', async () => {
    const w = await world();
    const wav = (name: string, samples: Float32Array) => new File([writeWav(toPcm16(samples), RATE)], name);
    const files = { line: wav('mine.wav', line()), backing: wav('quiet.wav', new Float32Array(RATE)) };
    await w.openRecording(files, COUNT_IN);
    const review = await reviewed(w);
    expect(pitches(review)).toEqual(melody);
    expect(review.report.source.backing).toBeNull();
    expect(w.session.notices.map(english)).toEqual([
      'quiet.wav is silent, so there is nothing to take out; the take is graded as it is.',
    ]);
  });

  it('says what is wrong with a file that is not a recording', async () => {
    const w = await world();
    await w.openRecording({ line: new File(['no sound in here'], 'notes.txt'), backing: null });
    await w.until('trouble');
    expect(w.session.phase.kind === 'trouble' && english(w.session.phase.problem)).toContain('notes.txt');
  });

  it('opens a stored take with its report, and grades one that was cut off', async () => {
    const w = await world();
    await w.session.start();
    await w.play(line());
    await w.session.stop();
    const first = await reviewed(w);
    await w.session.openTake(first.id!);
    expect((await reviewed(w)).report).toEqual(first.report);

    const writer = value(await w.takes.begin({ ...first.details, firstBeatSeconds: null }, () => undefined));
    writer.append(toPcm16(line()), null);
    writer.change({ firstBeatSeconds: COUNT_IN });
    await new Promise((resolve) => setTimeout(resolve, 50));
    await w.session.openTake(writer.id);
    const cut = await reviewed(w);
    // The last half second had not been written when it was cut off.
    expect(pitches(cut)).toEqual(melody);
    await w.settle();
    expect(w.library.takes.map((take) => take.id)).toContain(writer.id);
  });
});
