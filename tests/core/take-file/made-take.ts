/** A take as the app keeps one, small enough to be read two hundred times. */
import { grade } from '../../../src/core/grade.ts';
import { timelineOf } from '../../../src/core/timeline-of-order.ts';
import { choiceOf, gradeOrder } from '../../../src/core/grade-order.ts';
import { bytesInMemory, type ByteSource } from '../../../src/core/files/bytes/bytes.ts';
import type { TakeFile, TakeToWrite } from '../../../src/core/take-file/take-file.ts';
import { writeTakeFile } from '../../../src/core/take-file/write-take-file.ts';
import type { TakeDetails } from '../../../src/core/take/details-schema.ts';
import type { HeardNote } from '../../../src/core/take/note.ts';
import type { Report } from '../../../src/core/take/schema.ts';

export const details: TakeDetails = {
  title: 'Blues in A',
  name: 'evening, <b>slow</b>',
  starred: true,
  setup: { form: 'blues', key: 'A', bpm: 96, practice: { loop: null } },
  startedAt: '2026-03-01T10:00:00.000Z',
  source: 'microphone',
  chartText: 'key: A\n| A7 | D7 | A7 | E7 |',
  key: 'A',
  bpm: 120,
  feel: 'shuffle',
  swing: 0.62,
  reference: 440,
  sampleRate: 8000,
  firstBeatSeconds: 0.25,
  instrument: 'guitar',
  aim: 'thirds',
  bandKept: true,
  path: { heldBackSamples: 120, taps: Float32Array.from([0.1, -0.25, 1 / 3]) },
  levels: { all: 0, drums: -3, bass: 0, chords: -6, line: 0, click: -60 },
  noteChoices: [{ onsetSeconds: 0.75, midi: 61, counts: false }],
};

const note = (onsetSeconds: number, midi: number): HeardNote => ({
  onsetSeconds,
  offsetSeconds: onsetSeconds + 0.4,
  midi,
  confidence: 0.9,
  levelDb: -12.5,
  attack: 'struck',
  bendSemitones: 0,
  vibrato: null,
  second: null,
});

export const heard = [note(0.25, 61), note(0.75, 61), note(2.25, 66), note(4.25, 61.1), note(6.25, 68)];

const wave = (frames: number, period: number) =>
  Int16Array.from({ length: frames }, (_, i) => Math.round(20_000 * Math.sin(i / period)));

/** Eight seconds and a bit, an odd number of samples. */
const FRAMES = 65_001;

/** Made once: hundreds of takes have the same sound and, where nothing of it was changed, the same report. */
const samples = wave(FRAMES, 7);
const band = wave(FRAMES - 100, 31);
let usualReport: Report | null = null;

function reportOf(made: TakeDetails): Report {
  const order = gradeOrder(made);
  const timeline = timelineOf(order);
  if (!timeline.ok) throw new Error(timeline.problem.code);
  return grade(heard, timeline.value, {
    source: { kind: 'microphone', durationSeconds: FRAMES / 8000, sampleRate: 8000 },
    referenceHz: 440,
    ...choiceOf(order),
  });
}

export function madeTake(change: Partial<TakeToWrite> = {}): TakeToWrite {
  const made = { ...details, ...change.details };
  const report = change.details === undefined ? (usualReport ??= reportOf(made)) : reportOf(made);
  return {
    id: 'a-take-1',
    frames: FRAMES,
    messages: null,
    report: { ...report, heard },
    samples,
    band,
    ...change,
    details: made,
  };
}

export const joined = (parts: readonly Uint8Array[]): Uint8Array<ArrayBuffer> =>
  new Uint8Array(Buffer.concat(parts));

export const fileOf = (take: TakeToWrite): Uint8Array<ArrayBuffer> => joined(writeTakeFile(take));

export const sourceOf = (bytes: Uint8Array, name = 'take.landfall'): ByteSource => bytesInMemory(name, bytes);

export async function soundOf(part: TakeFile['line']): Promise<number[]> {
  const samples: number[] = [];
  if (part) for await (const piece of part.samples()) for (const sample of piece) samples.push(sample);
  return samples;
}
