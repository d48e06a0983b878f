/** Ticks of a standard MIDI file to seconds: a tempo map, or the constant rate of SMPTE time. */
import type { MidiData } from 'midi-file';
import { lastAtOrBefore } from '../../chart/beat-maps.ts';

/** The tempo before any is set (Standard MIDI Files 1.0): 120 quarter notes a minute. */
const DEFAULT_SECONDS_PER_BEAT = 0.5;

interface TempoChange {
  readonly tick: number;
  readonly seconds: number;
  readonly secondsPerTick: number;
}

/**
 * The seconds at which a tick falls. Tempo changes of every track count, as format 0 and 1 share one clock.
 * @returns null where the header names no usable division.
 */
export function midiClock({ header, tracks }: MidiData): ((tick: number) => number) | null {
  if (header.framesPerSecond && header.ticksPerFrame) {
    // 29 stands for 29.97, drop-frame.
    const framesPerSecond = header.framesPerSecond === 29 ? 30_000 / 1001 : header.framesPerSecond;
    const secondsPerTick = 1 / (framesPerSecond * header.ticksPerFrame);
    return (tick) => tick * secondsPerTick;
  }
  const ticksPerBeat = header.ticksPerBeat ?? 0;
  if (!(ticksPerBeat > 0)) return null;
  const tempos = tracks.flatMap((track) => {
    let tick = 0;
    return track.flatMap((event) => {
      tick += event.deltaTime;
      return event.type === 'setTempo' && event.microsecondsPerBeat > 0
        ? [{ tick, secondsPerBeat: event.microsecondsPerBeat / 1e6 }]
        : [];
    });
  });
  const changes: TempoChange[] = [
    { tick: 0, seconds: 0, secondsPerTick: DEFAULT_SECONDS_PER_BEAT / ticksPerBeat },
  ];
  for (const { tick, secondsPerBeat } of tempos.sort((a, b) => a.tick - b.tick)) {
    const last = changes.at(-1)!;
    const seconds = last.seconds + (tick - last.tick) * last.secondsPerTick;
    changes.push({ tick, seconds, secondsPerTick: secondsPerBeat / ticksPerBeat });
  }
  const ticks = changes.map((change) => change.tick);
  return (tick) => {
    const change = changes[Math.max(0, lastAtOrBefore(ticks, tick))]!;
    return change.seconds + (tick - change.tick) * change.secondsPerTick;
  };
}
