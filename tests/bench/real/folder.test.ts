import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { wavBytes } from '../../../fixtures/lines/wav.ts';
import type { Read } from './read.ts';
import { benchReal } from './bench-real.ts';
import { readFolder, readSound } from './folder.ts';
import { instrumentOf, readTruth } from './truth.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'real-'));
});
afterEach(() => {
  rmSync(folder, { recursive: true });
});

const write = (name: string, value: unknown): void => {
  writeFileSync(join(folder, name), typeof value === 'string' ? value : JSON.stringify(value));
};
const sentenceOf = (outcome: Read<unknown>): string => (outcome.ok ? '' : outcome.sentence);

const RATE = 24_000;
/** Each tone 0.4 s with a decay, 0.5 s apart, 0.3 s of silence before the first. */
function plucks(midi: readonly number[]): Float32Array {
  const samples = new Float32Array(RATE * (0.6 + 0.5 * midi.length));
  midi.forEach((pitch, index) => {
    const hz = 440 * 2 ** ((pitch - 69) / 12);
    const start = Math.round(RATE * (0.3 + 0.5 * index));
    for (let i = 0; i < 0.4 * RATE; i++) {
      const t = i / RATE;
      let sum = 0;
      for (let k = 1; k <= 6; k++) sum += Math.sin(2 * Math.PI * k * hz * t) / k;
      samples[start + i] = 0.25 * sum * Math.exp(-4 * t) * Math.min(1, (0.4 - t) / 0.02);
    }
  });
  return samples;
}

test('the instrument is the name without its number', () => {
  expect(['wooden-flute-03', 'cello-1', 'voice'].map(instrumentOf)).toEqual([
    'wooden-flute',
    'cello',
    'voice',
  ]);
});

test('notes come in order of onset, doubtful ones and graces set aside', () => {
  const read = readTruth(
    JSON.stringify({
      notes: [
        { on: 2, off: 3, midi: 62, grace: true },
        { on: 1, off: 2, midi: 60.5, string: 3 },
        { on: 3, off: 4, midi: 64, unsure: true },
      ],
    }),
    'x.json',
  );
  expect(read).toEqual({
    ok: true,
    value: {
      kind: 'notes',
      notes: [
        { onsetSeconds: 1, offsetSeconds: 2, midi: 60.5, setAside: false },
        { onsetSeconds: 2, offsetSeconds: 3, midi: 62, setAside: true },
        { onsetSeconds: 3, offsetSeconds: 4, midi: 64, setAside: true },
      ],
    },
  });
});

test.each([
  ['{', 'x.json is not JSON.'],
  ['{"notes":[{"on":"1","off":2,"midi":60}]}', 'x.json must hold "notes" with on, off and midi'],
  ['[]', 'x.json must hold "notes"'],
])('%s is refused with one sentence', (text, sentence) => {
  expect(sentenceOf(readTruth(text, 'x.json'))).toContain(sentence);
});

test('a folder that is not there, or holds nothing to hear, says so', () => {
  expect(sentenceOf(readFolder(join(folder, 'none'), []))).toContain('There is no folder');
  write('alone.json', { sequence: [60] });
  expect(sentenceOf(readFolder(folder, []))).toContain('put NAME.flac beside NAME.json');
});

test('the catalogue tells source and tolerance; without it the name does', () => {
  for (const name of ['cello-01', 'clarinet-01', 'guitar-01']) {
    writeFileSync(join(folder, `${name}.wav`), wavBytes(plucks([60]), RATE));
    write(`${name}.json`, { sequence: [60] });
  }
  write('catalogue.json', [{ name: 'cello-01', tier: 'C', source: 'wedge' }, { name: 'absent-01' }]);
  const read = readFolder(folder, ['clarinet']);
  expect(
    read.ok &&
      read.value.map(({ name, source, onsetToleranceSeconds }) => [name, source, onsetToleranceSeconds]),
  ).toEqual([
    ['cello-01', 'wedge', 0.1],
    ['clarinet-01', 'clarinet', 0.1],
    ['guitar-01', 'guitar', 0.05],
  ]);
  write('catalogue.json', { name: 'x' });
  expect(sentenceOf(readFolder(folder, []))).toContain('catalogue.json must be a list');
});

test('sound is decoded at its own rate', async () => {
  writeFileSync(join(folder, 'a.wav'), wavBytes(plucks([60]), RATE));
  const sound = await readSound(join(folder, 'a.wav'));
  expect(sound.ok && [sound.value.sampleRate, sound.value.samples.length]).toEqual([RATE, 26_400]);
});

test('the whole bench on two made recordings: plain tones are heard, and the table says so', async () => {
  const midi = [57, 60, 64, 69];
  writeFileSync(join(folder, 'tone-01.wav'), wavBytes(plucks(midi), RATE));
  write('tone-01.json', {
    notes: midi.map((pitch, index) => ({ on: 0.3 + 0.5 * index, off: 0.7 + 0.5 * index, midi: pitch })),
  });
  writeFileSync(join(folder, 'order-01.wav'), wavBytes(plucks(midi), RATE));
  write('order-01.json', { sequence: midi });
  const table = await benchReal({
    folder,
    by: 'instrument',
    only: [],
    without: ['aubionotes', 'Basic Pitch'],
    sure: 0.5,
    wide: [],
    files: false,
    write: null,
  });
  const ours = (name: string): string | undefined =>
    table
      .find((line) => line.startsWith(name))
      ?.slice(24, 48)
      .trim();
  expect(ours('tone')).toBe('1.000 (1.00, 1.00)');
  expect(ours('order')).toBe('1 of 1 exact');
});
