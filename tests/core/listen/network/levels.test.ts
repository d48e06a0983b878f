/** Levels, fine pitch and the network's sums. A frame lasts 16 ms; network frame 3 is the recording's beginning. */
import { describe, expect, it } from 'vitest';
import { finePitch } from '../../../../src/core/listen/network/fine-pitch.ts';
import { Levels } from '../../../../src/core/listen/network/levels.ts';
import { Outputs } from '../../../../src/core/listen/network/outputs.ts';
import { INNER_RATE, LONG_LAGS, PITCHES } from '../../../../src/core/listen/network/settings.ts';
import { hzOf } from '../sounds.ts';

/** Levels in dB by frame; the bright part lies as high unless it is given by blocks of 4 ms. */
function levels(db: readonly number[], bright?: (block: number) => number): Levels {
  const made = new Levels();
  db.forEach((level, frame) =>
    made.push(
      level,
      Float32Array.from({ length: 4 }, (_, b) => bright?.(4 * frame + b) ?? level),
    ),
  );
  return made;
}

describe('the level of a note', () => {
  it('is the loudest of the 80 ms after its onset', () => {
    const db = [-70, -60, -50, -40, -30, -20, -10, -5];
    // Network frame 3 answers for sound frame 0; six frames count from there on.
    expect(levels(db).peakDb(3)).toBe(-20);
    expect(levels(db).peakDb(5)).toBe(-5);
    expect(levels([-20, -60, -60]).peakDb(4)).toBe(-60);
    // What has not come yet is no level, nor is what lies before the recording.
    expect(levels([-20]).peakDb(9)).toBe(-90);
    expect(levels([-20, -30]).peakDb(1)).toBe(-20);
  });

  it('is loud within so many dB of the loudest of the last second', () => {
    const faded = [-10, ...new Array<number>(40).fill(-22)];
    expect(levels(faded).isLoud(30, 12)).toBe(true);
    expect(levels(faded).isLoud(30, 11)).toBe(false);
    // More than a second later the loud frame is forgotten.
    expect(levels([-10, ...new Array<number>(64).fill(-40)]).isLoud(60, 12)).toBe(true);
    expect(levels([-10, ...new Array<number>(63).fill(-40)]).isLoud(60, 12)).toBe(false);
  });
});

describe('a stroke', () => {
  const quiet = new Array<number>(40).fill(-40);
  /** The bright part leaps by so many dB in one block of 4 ms; network frame 20 answers for block 68. */
  const struck = (leap: number, block: number) =>
    levels(quiet, (b) => (b >= block ? -40 + leap : -40)).isStruck(20);

  it('is a leap of 6 dB in the bright part, 24 ms to either side of the onset', () => {
    expect([struck(6, 68), struck(5.9, 68)]).toEqual([true, false]);
    expect([struck(10, 74), struck(10, 75)]).toEqual([true, false]);
    expect([struck(10, 62), struck(10, 54)]).toEqual([true, false]);
  });

  it('is against the mean of the 32 ms before', () => {
    // Half of those eight blocks lie 10 dB higher already: a mean of 5, and a leap of 5 from it.
    expect(struck(10, 58)).toBe(false);
    expect(struck(12, 58)).toBe(true);
    expect(levels(quiet, (b) => (b === 55 ? 0 : b >= 68 ? -33 : -40)).isStruck(20)).toBe(false);
  });

  it('is taken for granted where the recording begins', () => {
    expect(levels(quiet).isStruck(6)).toBe(true);
    expect(levels(quiet).isStruck(7)).toBe(false);
  });
});

describe('a fine pitch', () => {
  /** The autocorrelation of a tone that dies away by `loss` a lag. */
  const correlation = (midi: number, height = 1, loss = 0) =>
    Float32Array.from(
      { length: LONG_LAGS },
      (_, lag) => height * Math.exp(-loss * lag) * Math.cos((2 * Math.PI * lag * hzOf(midi)) / INNER_RATE),
    );

  it('is read within a cent or two from where the network puts it', () => {
    for (const midi of [40, 47.3, 60.3, 69, 83.7]) {
      expect(finePitch(correlation(midi), midi + 0.3)).toBeCloseTo(midi, 1);
      expect(finePitch(correlation(midi), midi - 0.3)).toBeCloseTo(midi, 1);
      expect(Math.abs(finePitch(correlation(midi), midi)! - midi)).toBeLessThan(0.02);
    }
  });

  it('is looked for three quarters of a semitone to either side, and no further', () => {
    expect(finePitch(correlation(40), 40.75)).toBeCloseTo(40, 1);
    expect(finePitch(correlation(40), 39.25)).toBeCloseTo(40, 1);
    expect(finePitch(correlation(40), 41)).toBeNull();
    expect(finePitch(correlation(40), 39)).toBeNull();
  });

  it('is none where no peak of a fifth or more tells it', () => {
    expect(finePitch(correlation(60, 0.19), 60)).toBeNull();
    expect(finePitch(correlation(60, 0.21), 60)).not.toBeNull();
    expect(finePitch(new Float32Array(LONG_LAGS), 60)).toBeNull();
    // Half way between two peaks there is none.
    expect(finePitch(correlation(60), 67)).toBeNull();
  });

  it('is read by a later peak that keeps six tenths of the first, and by no lower one', () => {
    // Peaks at 46 and 94 samples: by the first alone the period is 46 samples, by the second 47.
    const peaks = (second: number) =>
      Float32Array.from({ length: LONG_LAGS }, (_, lag) =>
        Math.max(Math.exp(-(((lag - 46) / 3) ** 2)), second * Math.exp(-(((lag - 94) / 3) ** 2))),
      );
    const periodOf = (second: number) => INNER_RATE / hzOf(finePitch(peaks(second), 59.9)!);
    expect(periodOf(0.59)).toBeCloseTo(46, 1);
    expect(periodOf(0.61)).toBeCloseTo(47, 1);
  });

  it('is told by the first peak alone where later ones have died away', () => {
    const midi = 60.3;
    expect(finePitch(correlation(midi, 1, 0.02), midi)).toBeCloseTo(midi, 0);
  });
});

describe('the network’s answers', () => {
  const frame = (...entries: readonly (readonly [number, number])[]) => {
    const row = new Float32Array(PITCHES);
    for (const [pitch, value] of entries) row[pitch] = value;
    return row;
  };
  const last = PITCHES - 1;

  it('are summed over three frames and three semitones', () => {
    const outputs = new Outputs();
    const silent = frame();
    outputs.push(frame([30, 0.25], [0, 0.5], [last, 0.5]), silent);
    outputs.push(frame([31, 0.5], [1, 0.25]), frame([30, 0.5], [31, 0.25], [33, 1]));
    outputs.push(frame([29, 0.125], [last - 1, 0.25]), silent);
    outputs.push(silent, silent);
    expect(outputs.count).toBe(4);
    expect(outputs.onsetAbout(1, 30)).toBe(0.875);
    expect(outputs.onsetAbout(0, 30)).toBe(0.75);
    expect(outputs.onsetAbout(2, 30)).toBe(0.625);
    expect([outputs.onsetAbout(1, 0), outputs.onsetAbout(1, last)]).toEqual([0.75, 0.75]);
    expect([outputs.soundAbout(1, 30), outputs.soundAbout(1, 32), outputs.soundAbout(1, 28)]).toEqual([
      0.75, 1.25, 0,
    ]);
    expect([outputs.onset(0, 30), outputs.sounding(1, 31)]).toEqual([0.25, 0.25]);
  });

  it('have a mean pitch, and a fine one where it lies near', () => {
    const outputs = new Outputs();
    outputs.push(frame(), frame([30, 0.75], [31, 0.25], [0, 1], [last, 1]));
    expect(outputs.pitchOver(0, 30)).toBe(30.25);
    expect([outputs.pitchOver(0, 0), outputs.pitchOver(0, last)]).toEqual([0, last]);
    expect(outputs.finePitchOver(0, 30)).toBe(30.25);
    outputs.setFine(30, 30.5);
    expect(outputs.finePitchOver(0, 30)).toBe(30.5);
    outputs.setFine(30, 30.75);
    expect(outputs.finePitchOver(0, 30)).toBe(30.25);
    // The next frame has its own.
    outputs.setFine(30, 30.5);
    outputs.push(frame(), frame([30, 1]));
    expect([outputs.finePitchOver(0, 30), outputs.finePitchOver(1, 30)]).toEqual([30.5, 30]);
    // So has the one that takes its place after 64 frames.
    for (let f = 2; f <= 64; f++) outputs.push(frame(), frame([30, 0.75], [31, 0.25]));
    expect(outputs.finePitchOver(64, 30)).toBe(30.25);
  });

  it('are kept for a second', () => {
    const outputs = new Outputs();
    for (let f = 0; f < 70; f++) outputs.push(frame([30, f / 100]), frame());
    expect(outputs.onset(69, 30)).toBeCloseTo(0.69, 6);
    expect(outputs.onset(6, 30)).toBeCloseTo(0.06, 6);
  });
});
