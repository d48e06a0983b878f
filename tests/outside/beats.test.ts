/**
 * Beat detection on bands of known tempo, against the standard measure: F of beats within ±70 ms, one to one (Dixon 2001;
 * Davies, Degara & Plumbley, "Evaluation Methods for Musical Audio Beat Tracking Algorithms", 2009). Our own count of it
 * is held against mir_eval.beat where that is installed. Seeds from 5000 on: nothing was set by them.
 */
import { english } from '../english.ts';
import { execFileSync } from 'node:child_process';
import { beforeAll, describe, expect, test } from 'vitest';
import { needs, pythonWith } from '../needs.ts';
import { chance } from '../../src/core/base/random.ts';
import { detectBeats } from '../../src/core/beats/detect-beats.ts';
import { atLevel } from '../../src/core/beats/levels.ts';
import type { Synth } from '../../src/core/sound/synth.ts';
import { beatFMeasure, renderTrack, wanderingSeconds } from '../core/beats/rendered-track.ts';
import { kitSynth } from '../core/sound/kit-file.ts';

const RATE = 44_100;
const blues = '| Eb7 | Ab7 | Eb7 | Bbm7 Eb7 | Ab7 | Adim7 | Eb7 | C7 | Fm7 | Bb7 | Eb7 C7 | Fm7 Bb7 |';
const waltz = 'meter: 3/4\n| G | Em7 | Am7 | D7 | Bm7 | E7 | Am7 | D7 |';

let synth: Synth;
beforeAll(async () => {
  synth = await kitSynth(RATE);
});

const found = (samples: Float32Array) => {
  const beats = detectBeats(samples, RATE);
  if (!beats.ok) throw new Error(english(beats.problem));
  return beats.value.beats;
};

describe('beats of a rendered band', () => {
  test.each([
    { feel: 'shuffle', bpm: 92, seed: 5000 },
    { feel: 'swing', bpm: 144, seed: 5001, share: 0.06 },
    { feel: 'straight', bpm: 108, seed: 5002, share: 0.1 },
    { feel: 'funk', bpm: 104, seed: 5003, share: 0.05 },
    { feel: 'bossa', bpm: 128, seed: 5004 },
    { feel: 'rock', bpm: 118, seed: 5005, share: 0.12 },
    { feel: 'slow-blues', bpm: 58, seed: 5006, share: 0.05 },
    { feel: 'swing', bpm: 156, seed: 5007, chart: waltz },
  ] as const)('$feel at $bpm', (order) => {
    const { feel, bpm, seed } = order;
    const share = 'share' in order ? order.share : 0;
    const track = renderTrack(synth, {
      feel,
      bpm,
      seed,
      chart: 'chart' in order ? order.chart : blues,
      secondsAt: wanderingSeconds(bpm, share, 48),
    });
    const beats = found(track.mono);
    expect(beatFMeasure(beats, track.beats)).toBeGreaterThan(0.97);
    // Much finer than the measure asks for: a landing's lateness is told in milliseconds.
    expect(beatFMeasure(beats, track.beats, 0.015)).toBeGreaterThan(0.93);
  });

  test('players who scatter by 10 ms: the beats under them come out finer than any stroke', () => {
    const secondsAt = wanderingSeconds(122, 0.06, 64);
    const luck = chance(5009);
    const stroke = () => Array.from({ length: 6 }, () => luck.next() - 0.5).reduce((a, b) => a + b) / 0.7071;
    const track = renderTrack(synth, {
      feel: 'rock',
      bpm: 122,
      seed: 5009,
      chart: blues,
      secondsAt: (beat) => secondsAt(beat) + 0.01 * stroke(),
    });
    const truth = track.beats.map((_, beat) => 0.8 + secondsAt(beat));
    expect(beatFMeasure(found(track.mono), truth)).toBeGreaterThan(0.97);
    expect(beatFMeasure(found(track.mono), truth, 0.015)).toBeGreaterThan(0.9);
  });

  test('a fast swing is heard at half its tempo, and the other level is one choice away', () => {
    const track = renderTrack(synth, { feel: 'swing', bpm: 216, seed: 5008, chart: blues });
    const beats = found(track.mono);
    expect(beatFMeasure(beats, track.beats)).toBeLessThan(0.7);
    expect(beatFMeasure(atLevel(beats, 'twice', 0), track.beats)).toBeGreaterThan(0.97);
  });
});

describe('what has no beat', () => {
  const seconds = 15;
  const noise = (seed: number) => {
    let state = seed;
    return Float32Array.from({ length: seconds * RATE }, () => {
      state = (state * 16_807) % 2_147_483_647;
      return 0.2 * ((2 * state) / 2_147_483_647 - 1);
    });
  };
  const sentence = (samples: Float32Array) => {
    const answer = detectBeats(samples, RATE);
    return answer.ok ? null : english(answer.problem);
  };

  test('noise, a held tone, silence and a snippet are told apart, each in a sentence', () => {
    expect(sentence(noise(5000))).toMatch(/tap the beats/);
    expect(sentence(Float32Array.from({ length: seconds * RATE }, (_, i) => 0.3 * Math.sin(i / 20)))).toMatch(
      /tap the beats/,
    );
    expect(sentence(new Float32Array(seconds * RATE))).toMatch(/silent/);
    expect(sentence(noise(5001).subarray(0, RATE))).toMatch(/too short/);
  });
});

const python = pythonWith('mir_eval');
const needsMirEval = needs(python !== null, 'No Python with mir_eval is installed.');

test('our count of the measure is that of mir_eval.beat', needsMirEval, () => {
  const lists = [1, 2, 3, 4, 5, 6].map((seed) => {
    const at = wanderingSeconds(90 + 7 * seed, 0.1, 30);
    const truth = Array.from({ length: 40 }, (_, i) => 6 + at(i));
    const guess = truth
      .map((beat, i) => beat + 0.1 * Math.sin(seed * 13 + i * 2.4))
      .filter((_, i) => (i * seed) % 7 !== 3)
      .toSorted((a, b) => a - b);
    return { truth, guess };
  });
  const script =
    'import json,sys,numpy as np,mir_eval;print(json.dumps([mir_eval.beat.f_measure(np.array(l["truth"]),np.array(l["guess"])) for l in json.load(sys.stdin)]))';
  const theirs = JSON.parse(
    execFileSync(python!, ['-c', script], { input: JSON.stringify(lists), encoding: 'utf8' }),
  ) as number[];
  lists.forEach(({ truth, guess }, i) => expect(beatFMeasure(guess, truth)).toBeCloseTo(theirs[i]!, 9));
  expect(Math.min(...theirs)).toBeLessThan(0.95);
});
