/** A recording that is being read, or searched for beats or chords, is ended with its worker as soon as nobody wants it. */
import { expect, test } from 'vitest';
import { BackingClient } from '../../../src/audio/backing/backing-client.ts';
import type {
  BackingAnswer,
  BackingFacts,
  BackingRequest,
} from '../../../src/audio/backing/backing-messages.ts';
import { BackingSounds } from '../../../src/audio/backing/backing-sounds.ts';
import { good, type Outcome } from '../../../src/core/base/outcome.ts';
import { fakeContext } from '../fake-context.ts';

const FACTS: BackingFacts = {
  durationSeconds: 30,
  sampleRate: 8000,
  peaks: new Float32Array(6000),
  peaksPerSecond: 200,
  warnings: [],
};
const WHOLE = { channels: [new Float32Array(8)], sampleRate: 8000, leadSeconds: 0 };

/** Workers that answer what they are told to answer, and are silent on the rest, as one that is busy. */
function workers(answers: (kind: BackingRequest['kind'], worker: number) => Outcome<unknown> | null) {
  /** To end one twice changes nothing. */
  const ended = new Set<number>();
  let made = 0;
  const asked: string[] = [];
  const client = () =>
    new BackingClient(() => {
      const number = ++made;
      const worker = {
        onmessage: (event: { data: BackingAnswer }) => void event,
        postMessage: ({ id, kind }: BackingRequest) => {
          asked.push(`${kind} ${number}`);
          const outcome = answers(kind, number);
          if (outcome !== null)
            queueMicrotask(() => worker.onmessage({ data: { kind: 'answer', id, outcome } }));
        },
        terminate: () => void ended.add(number),
      };
      return worker as unknown as Worker;
    });
  return { sounds: new BackingSounds(() => fakeContext().context, client), ended, asked };
}

const source = {
  id: 'a',
  name: 'a.wav',
  file: () => Promise.resolve({ ok: true, value: new Blob(['sound']) } as const),
};
const soon = () => new Promise((resolve) => setTimeout(resolve));

test('a reading that is stopped ends its worker at once, and the next one has a worker of its own', async () => {
  const { sounds, ended, asked } = workers((kind, worker) =>
    worker === 1 ? null : good(kind === 'open' ? FACTS : WHOLE),
  );
  const stop = new AbortController();
  const reading = sounds.open(source, stop.signal);
  await soon();
  expect(asked).toEqual(['open 1']);
  stop.abort();
  expect((await reading).ok).toBe(false);
  expect([...ended]).toEqual([1]);
  expect((await sounds.open(source)).ok).toBe(true);
  expect(asked).toEqual(['open 1', 'open 2', 'whole 2']);
});

test('stopped before the file is there, nothing is begun', async () => {
  const { sounds, asked } = workers(() => null);
  const stop = new AbortController();
  const reading = sounds.open(source, stop.signal);
  stop.abort();
  expect((await reading).ok).toBe(false);
  expect(asked).toEqual([]);
});

test('a search for beats that is stopped ends its worker; one that is done leaves it', async () => {
  let answersBeats = true;
  const { sounds, ended } = workers((kind) => {
    if (kind === 'open') return good(FACTS);
    if (kind === 'whole') return good(WHOLE);
    return answersBeats ? good({ beats: [], bpm: 120, attacks: [] }) : null;
  });
  const opened = await sounds.open(source);
  if (!opened.ok) throw new Error(opened.problem.code);
  const first = new AbortController();
  expect((await opened.value.findBeats(first.signal)).ok).toBe(true);
  first.abort();
  expect([...ended]).toEqual([]);
  answersBeats = false;
  const second = new AbortController();
  const searching = opened.value.findBeats(second.signal);
  await soon();
  second.abort();
  expect((await searching).ok).toBe(false);
  expect([...ended]).toEqual([1]);
});

test('a search for chords that is stopped while the recording is still being read ends that too', async () => {
  const { sounds, ended, asked } = workers(() => null);
  const search = sounds.search(source);
  const found = search.findChords(null, () => undefined);
  await soon();
  search.stopFinding();
  expect((await found).ok).toBe(false);
  expect([...ended]).toEqual([1]);
  expect(asked).toEqual(['open 1']);
});
