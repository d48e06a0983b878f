/**
 * The sums are checked against a machine that is built sample by sample: an output buffer, a player who plays exactly
 * with what is heard, and an input buffer. Nothing in it knows the formulas of the module.
 * The meaning of `baseLatency` and `outputLatency`: Web Audio API 1.1 (W3C), section AudioContext, attributes.
 */
import { describe, expect, it } from 'vitest';
import {
  assumedRoundTripSeconds,
  canBeRoundTrip,
  chooseRoundTrip,
  firstBeatAfterChange,
  firstBeatInHeardTime,
  firstBeatInRecording,
  heardClockSeconds,
} from '../../../src/core/take/round-trip.ts';

const RATE = 1000;

/** A queue of so many samples: what goes in comes out later. */
function delayLine(frames: number) {
  const queue = new Array<number>(frames).fill(0);
  return (sample: number): number => {
    queue.push(sample);
    return queue.shift()!;
  };
}

/** Plays one click at a frame of the clock and answers with the place of the player's note in the recording. */
function playThrough({
  clickFrame,
  startFrame,
  output,
  input,
}: Readonly<Record<'clickFrame' | 'startFrame' | 'output' | 'input', number>>) {
  const [toEar, toRecording] = [delayLine(output), delayLine(input)];
  const recording: number[] = [];
  let heardFrame = -1;
  for (let frame = 0; frame < 3000; frame++) {
    const heard = toEar(frame === clickFrame ? 1 : 0);
    if (heard === 1) heardFrame = frame;
    // The player plays exactly with what is heard.
    const recorded = toRecording(heard);
    if (frame >= startFrame) recording.push(recorded);
  }
  return { noteFrame: recording.indexOf(1), heardFrame };
}

describe('the round trip', () => {
  it.each([
    { clickFrame: 1200, startFrame: 100, output: 40, input: 50 },
    { clickFrame: 700, startFrame: 650, output: 3, input: 190 },
  ])('puts the first downbeat where a note played with it is recorded: %o', (machine) => {
    const { noteFrame, heardFrame } = playThrough(machine);
    const { clickFrame, startFrame, output, input } = machine;
    const place = firstBeatInRecording(clickFrame / RATE, startFrame / RATE, (output + input) / RATE);
    expect(place * RATE).toBeCloseTo(noteFrame, 6);
    // At the moment when the click is heard, the clock that the screen reads shows the click.
    const read = heardClockSeconds({ currentTime: heardFrame / RATE, outputLatency: output / RATE });
    expect(read * RATE).toBeCloseTo(clickFrame, 6);
  });

  it('moves the first downbeat when another round trip is measured', () => {
    const machine = { clickFrame: 1000, startFrame: 10, output: 60, input: 35 };
    const assumed = firstBeatInRecording(1, 0.01, 0.08);
    const moved = firstBeatAfterChange(assumed, { roundTripSeconds: 0.08 }, { roundTripSeconds: 0.095 });
    expect(moved * RATE).toBeCloseTo(playThrough(machine).noteFrame, 6);
  });

  it('adds nothing to a take that is timed in heard time', () => {
    // The take begins when the click before it is heard; both times carry the same output delay.
    const { heardFrame } = playThrough({ clickFrame: 500, startFrame: 0, output: 70, input: 0 });
    const start = heardClockSeconds({ currentTime: heardFrame / RATE, outputLatency: 0.07 });
    expect(firstBeatInHeardTime(1.5, start)).toBeCloseTo(1, 9);
  });

  it('takes what was set by hand, else what was measured, and else what is assumed', () => {
    const assumed = () => 0.08;
    expect(chooseRoundTrip({ delaySeconds: 0.1, setSeconds: 0.09 }, assumed)).toEqual({
      seconds: 0.09,
      basis: 'set',
    });
    expect(chooseRoundTrip({ delaySeconds: null, setSeconds: 0 }, assumed)).toEqual({
      seconds: 0,
      basis: 'set',
    });
    expect(chooseRoundTrip({ delaySeconds: 0.1, setSeconds: null }, assumed)).toEqual({
      seconds: 0.1,
      basis: 'measured',
    });
    // A player who strikes ahead of the click through a fast machine: a recording can't be ahead of its sound.
    expect(chooseRoundTrip({ delaySeconds: -0.02, setSeconds: null }, assumed).seconds).toBe(0);
    expect(chooseRoundTrip({ delaySeconds: null, setSeconds: null }, assumed)).toEqual({
      seconds: 0.08,
      basis: 'assumed',
    });
    expect(chooseRoundTrip(null, assumed).basis).toBe('assumed');
  });

  it('counts a delay that a browser does not tell as none', () => {
    expect(assumedRoundTripSeconds({ baseLatency: 0.01, outputLatency: 0.03 })).toBeCloseTo(0.08, 9);
    expect(assumedRoundTripSeconds({ baseLatency: 0.01, outputLatency: NaN })).toBeCloseTo(0.02, 9);
    expect(assumedRoundTripSeconds({})).toBe(0);
    expect(heardClockSeconds({ currentTime: 2 })).toBe(2);
  });

  it('takes no delay for a round trip that no machine makes', () => {
    expect([-0.01, 0, 0.2, 0.999, 1.5].map(canBeRoundTrip)).toEqual([false, false, true, true, false]);
  });
});
