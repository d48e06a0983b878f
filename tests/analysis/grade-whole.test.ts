/** A take that is sent in pieces, for the search for its band, is graded as the whole is: to the digit. */
import { expect, it } from 'vitest';
import { bandInARoom } from '../../fixtures/room/band-in-a-room.ts';
import { gradeWhole } from '../../src/analysis/grade-whole.ts';
import type { AnalysisRequest, Order } from '../../src/analysis/messages.ts';
import { AnalysisSession } from '../../src/analysis/session.ts';
import type { Outcome } from '../../src/core/base/outcome.ts';
import { toPcm16 } from '../../src/core/base/pcm16.ts';
import type { GradeOrder } from '../../src/core/grade-order.ts';
import { gradeSound, type SoundToGrade } from '../../src/core/grade-samples.ts';
import type { Message } from '../../src/core/words/problem.ts';

const RATE = 16_000;
const PIECE_SECONDS = 1.7;
const heard = await bandInARoom({
  instrument: 'clean',
  sampleRate: RATE,
  seconds: 10,
  seed: 753,
  delaySeconds: 0.06,
  bandDb: 0,
});
const band = toPcm16(heard.band);
const pcm = (samples: Float32Array) => toPcm16(samples.map((x) => x / 2));
const order: GradeOrder = {
  chartText: '| A7 |',
  bpm: 100,
  swing: 0.5,
  firstBeatSeconds: 0.3,
  reference: 440,
  source: 'microphone',
  assumedRoundTripSeconds: 0.1,
};
const take = (samples: Int16Array): SoundToGrade => ({
  name: 'a take',
  samples,
  sampleRate: RATE,
  backing: { kind: 'band', samples: band, path: null },
});

/** The page's side against a worker without a thread; what was sent is cloned, and given away, as between threads. */
async function inPieces(sound: SoundToGrade) {
  const told: Message[] = [];
  const sent: Order[] = [];
  let answer: (outcome: Outcome<unknown>) => void = () => undefined;
  const session = new AnalysisSession((message) => {
    if (message.kind === 'answer') answer(message.outcome);
    if (message.kind === 'message') told.push(message.message);
  });
  const ask = <T>(asked: Order, transfer: Transferable[] = []) =>
    new Promise<Outcome<T>>((resolve) => {
      answer = (outcome) => resolve(outcome as Outcome<T>);
      sent.push(asked);
      void session.handle(structuredClone({ ...asked, id: sent.length } as AnalysisRequest, { transfer }));
    });
  return { graded: await gradeWhole(sound, order, { ask }, PIECE_SECONDS), told, sent };
}

function atOnce(sound: SoundToGrade) {
  const told: Message[] = [];
  const graded = gradeSound(sound, order, { progress: () => undefined, message: (one) => told.push(one) });
  return { graded, told };
}

const kinds = (sent: readonly Order[]) => sent.map(({ kind }) => kind);
const PIECES = Array.from(
  { length: Math.ceil(Math.max(heard.microphone.length, band.length) / (PIECE_SECONDS * RATE)) },
  () => 'search piece',
);

it('with its band in it', async () => {
  const sound = take(pcm(heard.microphone));
  const { graded, told, sent } = await inPieces(sound);
  expect({ graded, told }).toEqual(atOnce(sound));
  expect(graded.ok && graded.value.report.source.backing?.offsetSeconds).toBeCloseTo(0.06, 2);
  expect(kinds(sent)).toEqual([...PIECES, 'grade searched']);
  // The page plays and draws the take afterwards.
  expect(sound.samples.length).toBe(heard.microphone.length);
});

it('without its band, the notes known or not', async () => {
  const sound = take(pcm(heard.player));
  const unknown = await inPieces(sound);
  expect({ graded: unknown.graded, told: unknown.told }).toEqual(atOnce(sound));
  expect(kinds(unknown.sent)).toEqual([...PIECES, 'grade searched', 'grade']);
  if (!unknown.graded.ok) throw new Error('not graded');
  const known = unknown.graded.value;
  const again = await inPieces({ ...sound, known });
  expect(again.graded).toEqual({ ok: true, value: known });
  expect(kinds(again.sent)).toEqual([...PIECES, 'grade searched']);
});
