/**
 * Seconds of a take → ticks of a MIDI file whose bar lines are those of the chart. The file begins with the take, so that its
 * times are the take's own; what lies before the first whole bar becomes one bar, at a tempo that fills it.
 */
import type { MidiEvent } from 'midi-file';
import type { Timeline } from '../../chart/timeline.ts';

/** Ticks in a quarter: at 40 beats a minute a tick is 0.16 ms, far below what a hand can place. */
export const TICKS_PER_QUARTER = 9600;
/** A tempo has 24 bits (Standard MIDI Files 1.0). */
const SLOWEST_MICROSECONDS = 0xff_ffff;
/** A new tempo is written where the bar lines would else be off by more. */
const MOST_ERROR_SECONDS = 0.0002;
/** The first bar line stands at least this share of a bar behind the beginning, so that no tempo is absurd. */
const LEAST_FIRST_BAR = 0.5;
/** MIDI clocks in a quarter note (MIDI 1.0): the metronome clicks once a beat. */
const CLOCKS_PER_QUARTER = 24;

interface Segment {
  readonly tick: number;
  readonly seconds: number;
  readonly microsecondsPerBeat: number;
}

/** An event at its tick. */
export interface Placed {
  readonly tick: number;
  readonly event: MidiEvent;
}

export interface MidiTempoMap {
  tickAt(seconds: number): number;
  /** The same of a beat: from the first bar line on exact. */
  tickOfBeat(beat: number): number;
  /** Tempos and the meter. */
  readonly events: readonly Placed[];
}

/** @param durationSeconds of the take: behind it the last tempo goes on */
export function midiTempoMap(timeline: Timeline, durationSeconds: number): MidiTempoMap {
  const { beatMap, beatsPerBar, divisions } = timeline;
  const quarters = divisions / 2;
  const barSeconds = (bar: number) =>
    beatMap.secondsAt((bar + 1) * beatsPerBar) - beatMap.secondsAt(bar * beatsPerBar);
  let bar = Math.floor(beatMap.beatAt(0) / beatsPerBar);
  while (beatMap.secondsAt(bar * beatsPerBar) < LEAST_FIRST_BAR * barSeconds(bar)) bar += 1;
  const segments: Segment[] = [];
  let tick = 0;
  let seconds = 0;
  /** So many quarters, which should end at a time of the take. */
  const go = (count: number, endSeconds: number) => {
    const last = segments.at(-1);
    const held = last && seconds + (count * last.microsecondsPerBeat) / 1e6;
    if (held === undefined || Math.abs(held - endSeconds) > MOST_ERROR_SECONDS) {
      const wanted = Math.round(((endSeconds - seconds) * 1e6) / count);
      const microsecondsPerBeat = Math.min(SLOWEST_MICROSECONDS, Math.max(1, wanted));
      segments.push({ tick, seconds, microsecondsPerBeat });
    }
    tick += Math.round(count * TICKS_PER_QUARTER);
    seconds += (count * segments.at(-1)!.microsecondsPerBeat) / 1e6;
  };
  go(beatsPerBar * quarters, beatMap.secondsAt(bar * beatsPerBar));
  for (let beat = bar * beatsPerBar; seconds < durationSeconds; beat++)
    go(quarters, beatMap.secondsAt(beat + 1));
  const compound = divisions === 3;
  const tickAt = (at: number): number => {
    const segment = segments.findLast((one) => one.seconds <= at) ?? segments[0]!;
    const quarter = segment.microsecondsPerBeat / 1e6;
    return Math.max(0, Math.round(segment.tick + ((at - segment.seconds) / quarter) * TICKS_PER_QUARTER));
  };
  return {
    tickAt,
    tickOfBeat: (beat) =>
      beat < bar * beatsPerBar
        ? tickAt(beatMap.secondsAt(beat))
        : Math.round((beat - (bar - 1) * beatsPerBar) * quarters * TICKS_PER_QUARTER),
    events: [
      {
        tick: 0,
        event: {
          deltaTime: 0,
          type: 'timeSignature',
          numerator: compound ? beatsPerBar * 3 : beatsPerBar,
          denominator: compound ? 8 : 4,
          metronome: CLOCKS_PER_QUARTER * quarters,
          thirtyseconds: 8,
        },
      },
      ...segments.map(({ tick, microsecondsPerBeat }): Placed => ({
        tick,
        event: { deltaTime: 0, type: 'setTempo', microsecondsPerBeat },
      })),
    ],
  };
}
