import { describe, expect, it } from 'vitest';
import { BEHIND_SECONDS, clockWatch } from '../../../src/audio/microphone/clock-watch.ts';

const HOP_SECONDS = 512 / 48_000;

interface Minute {
  /** How far the audio clock is behind at a time, seconds. */
  readonly behind?: (seconds: number) => number;
  /** How late a message comes that is sent at a time, seconds. */
  readonly late?: (seconds: number) => number;
  readonly seconds?: number;
}

/** How often it is told in a minute of hops. */
function told({ behind = () => 0, late = () => 0.003, seconds = 60 }: Minute): number {
  let times = 0;
  const watch = clockWatch(() => times++);
  for (let at = 0; at < seconds; at += HOP_SECONDS) watch.look(at - behind(at), at + late(at));
  return times;
}

describe('a watch of the audio clock', () => {
  it('is silent while both clocks run alike', () => {
    expect(told({})).toBe(0);
    expect(told({ late: (at) => 0.003 + 0.1 * Math.abs(Math.sin(37 * at)) })).toBe(0);
  });

  it('tells each time that the audio clock stands still for some time', () => {
    expect(told({ behind: (at) => (at > 20 ? 0.3 : 0) })).toBe(1);
    expect(told({ behind: (at) => (at > 20 ? 0.2 : 0) })).toBe(0);
    expect(told({ behind: (at) => Math.floor(at / 15) })).toBe(3);
  });

  it('adds up many short stops', () => {
    // 1.2 seconds in a minute, of which each second is allowed a thousandth.
    expect(told({ behind: (at) => 0.02 * Math.floor(at) })).toBe(4);
  });

  it('does not take a busy page for a busy audio thread', () => {
    // For four seconds nothing is taken in, then all that waited at once.
    expect(told({ late: (at) => (at > 20 && at < 24 ? 24 - at : 0.003) })).toBe(0);
  });

  it('allows for two clocks that do not run equally fast', () => {
    // 300 parts in a million: more than any crystal; in half an hour half a second.
    expect(told({ behind: (at) => 3e-4 * at, seconds: 1800 })).toBe(0);
    expect(told({ behind: (at) => -3e-4 * at, seconds: 1800 })).toBe(0);
  });

  it('begins anew after a stop on purpose', () => {
    let times = 0;
    const watch = clockWatch(() => times++);
    for (let at = 0; at < 10; at += HOP_SECONDS) watch.look(at, at);
    watch.restart();
    for (let at = 10; at < 20; at += HOP_SECONDS) watch.look(at - 5, at);
    expect(times).toBe(0);
    for (let at = 20; at < 25; at += HOP_SECONDS) watch.look(at - 5 - 2 * BEHIND_SECONDS, at);
    expect(times).toBe(1);
  });
});
