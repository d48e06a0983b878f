/**
 * Early or late over the whole take. Skilled soloists lie 16 ms behind the beat on average (Weimar Jazz Database, measured
 * for the project): from 40 ms on a line is heard as late, from 25 ms on as early.
 */
import { describe, expect, it } from 'vitest';
import { measureTiming, offsetMs } from '../../../../src/core/grade/landings/timing.ts';
import { gradedOver } from '../graded.ts';
import { chart, type Played } from '../line.ts';

const { beatMap } = chart('| C7 |');
/** Notes on so many beats, each so many ms off; at 120 bpm a beat lasts 500 ms. */
const timing = (offsets: readonly number[], more: readonly Played[] = []) =>
  measureTiming(
    gradedOver('| C7 |', [...offsets.map((ms, i): Played => [i + 1 + ms / 500, 0.2, 60]), ...more]),
    beatMap,
  );
const all = (ms: number, count = 12) => new Array<number>(count).fill(ms);

describe('the timing of a take', () => {
  it('is on the beat where skilled players lie, behind and ahead of it past that', () => {
    expect(timing(all(16)).verdict).toBe('on the beat');
    expect(timing(all(39)).verdict).toBe('on the beat');
    expect(timing(all(41)).verdict).toBe('behind');
    expect(timing(all(-24)).verdict).toBe('on the beat');
    expect(timing(all(-26)).verdict).toBe('ahead');
  });

  it('is the middle of the offsets, with their spread', () => {
    const { medianMs, spreadMs, notes } = timing([...all(10, 6), ...all(30, 5), 100]);
    expect(notes).toBe(12);
    expect(medianMs).toBeCloseTo(20, 6);
    // Sample standard deviation of six tens, five thirties and a hundred: √(7091.67 / 11).
    expect(spreadMs).toBeCloseTo(25.39, 2);
  });

  it('takes a dozen notes on beats; those between beats are not asked', () => {
    expect(timing(all(60, 11)).verdict).toBe('too short to tell');
    const between = [20, 21, 22].map((beat): Played => [beat + 0.5, 0.2, 60]);
    expect(timing(all(60, 11), between)).toMatchObject({ notes: 11, verdict: 'too short to tell' });
    expect(timing([])).toEqual({ notes: 0, medianMs: null, spreadMs: null, verdict: 'too short to tell' });
  });

  it('counts early as less than nought', () => {
    const [note] = gradedOver('| C7 |', [[0.9, 0.2, 60]]);
    expect(offsetMs(note!, 1, beatMap)).toBeCloseTo(-50, 6);
  });
});
