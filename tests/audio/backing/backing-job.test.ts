/** The backing worker's work: what a file has to be, and what is said of one that is not. */
import { english } from '../../english.ts';
import { beforeAll, describe, expect, test } from 'vitest';
import type {
  BackingAnswer,
  BackingFacts,
  BackingRequest,
  BakedRound,
  DetectedBeats,
} from '../../../src/audio/backing/backing-messages.ts';
import { BackingJob } from '../../../src/audio/backing/backing-job.ts';
import { toPcm16 } from '../../../src/core/base/pcm16.ts';
import { writeWav } from '../../../src/core/files/sound/write-wav.ts';
import type { Outcome } from '../../../src/core/base/outcome.ts';
import { renderTrack, wanderingSeconds, type RenderedTrack } from '../../core/beats/rendered-track.ts';
import { kitSynth } from '../../core/sound/kit-file.ts';

const RATE = 44_100;
let track: RenderedTrack;
beforeAll(async () => {
  track = renderTrack(await kitSynth(RATE), {
    chart: '| Cm7 | Fm7 | Cm7 | G7 |',
    feel: 'rock',
    bpm: 124,
    seed: 5200,
    choruses: 2,
    secondsAt: wanderingSeconds(124, 0.06, 24),
  });
});

function openJob() {
  const answers = new Map<number, Outcome<unknown>>();
  const told: number[] = [];
  const worker = new BackingJob((message: BackingAnswer) => {
    if (message.kind === 'answer') answers.set(message.id, message.outcome);
    else told.push(message.share);
  });
  let id = 0;
  const ask = async <T>(
    request: BackingRequest extends infer R ? (R extends unknown ? Omit<R, 'id'> : never) : never,
  ) => {
    const own = ++id;
    await worker.handle({ ...request, id: own } as BackingRequest);
    return answers.get(own) as Outcome<T>;
  };
  return { ask, told };
}
const wav = (samples: Int16Array) => new Blob([writeWav(samples, RATE)]);
const sentence = (outcome: Outcome<unknown>) => (outcome.ok ? null : english(outcome.problem));

describe('a recording', () => {
  test('is read once, drawn, its beats found, a round of it rendered slower', async () => {
    const { ask, told } = openJob();
    const facts = await ask<BackingFacts>({
      kind: 'open',
      file: wav(toPcm16(track.mono)),
      name: 'groove.wav',
    });
    if (!facts.ok) throw new Error(english(facts.problem));
    expect(facts.value.durationSeconds).toBeCloseTo(track.mono.length / RATE, 6);
    expect(Math.max(...facts.value.peaks)).toBeGreaterThan(0.05);
    const beats = await ask<DetectedBeats>({ kind: 'beats' });
    if (!beats.ok) throw new Error(english(beats.problem));
    expect(Math.abs(beats.value.beats[0]! - track.beats[0]!)).toBeLessThan(0.02);
    const [fromSeconds, toSeconds] = [track.beats[0]!, track.beats[8]!];
    const round = await ask<BakedRound>({
      kind: 'round',
      order: { fromSeconds, toSeconds, speed: 0.8, cents: 0 },
    });
    if (!round.ok) throw new Error(english(round.problem));
    expect(round.value.channels[0]!.length / RATE).toBeCloseTo((toSeconds - fromSeconds) / 0.8, 4);
    expect(told.length).toBeGreaterThan(0);
  });

  test.each([
    ['no sound', () => new Blob(['these are words, and no sound at all']), /words\.wav/],
    ['too short', () => wav(toPcm16(track.mono.subarray(0, 3 * RATE))), /too short/],
    ['silent', () => wav(new Int16Array(8 * RATE)), /silent/],
  ])('%s: told in a sentence that names the file', async (_, file, words) => {
    const { ask } = openJob();
    const told = sentence(await ask({ kind: 'open', file: file(), name: 'words.wav' }));
    expect(told).toMatch(words);
    expect(told).toContain('words.wav');
    expect(sentence(await ask({ kind: 'beats' }))).toMatch(/open one first/);
  });
});
