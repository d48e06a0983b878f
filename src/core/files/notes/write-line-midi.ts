/**
 * What a MIDI instrument sent, as a standard MIDI file of format 0 ("Standard MIDI Files 1.0", MIDI Manufacturers
 * Association 1988): the player's own messages, at the tempo that was played to.
 */
import { writeMidi, type MidiEvent } from 'midi-file';
import type { PlayedMessage } from '../../midi/played-notes.ts';

/** Ticks in a quarter: at 40 beats a minute a tick is 0.16 ms, far below what a hand can place. */
const TICKS_PER_QUARTER = 9600;
const MICROSECONDS_PER_MINUTE = 60_000_000;
const BEND_MIDDLE = 8192;

/** @param bpm quarters a minute, written into the file; the times of the messages do not depend on it */
export function writeLineMidi(messages: readonly PlayedMessage[], bpm: number): Uint8Array<ArrayBuffer> {
  const microsecondsPerBeat = Math.round(MICROSECONDS_PER_MINUTE / bpm);
  // By the tempo as it is written, whole microseconds: else the rounding adds up over a take.
  const ticksPerSecond = (1e6 / microsecondsPerBeat) * TICKS_PER_QUARTER;
  let last = 0;
  const played = messages.flatMap(({ seconds, bytes }): MidiEvent[] => {
    const event = eventOf(bytes);
    if (event === null) return [];
    const tick = Math.max(last, Math.round(seconds * ticksPerSecond));
    const deltaTime = tick - last;
    last = tick;
    return [{ ...event, deltaTime }];
  });
  const bytes = writeMidi({
    header: { format: 0, numTracks: 1, ticksPerBeat: TICKS_PER_QUARTER },
    tracks: [
      [
        { deltaTime: 0, type: 'setTempo', microsecondsPerBeat },
        ...played,
        { deltaTime: 0, type: 'endOfTrack' },
      ],
    ],
  });
  return Uint8Array.from(bytes);
}

/** A channel message as the writer wants it; null for what a line is not made of, such as a change of sound. */
function eventOf(bytes: readonly number[]): MidiEvent | null {
  const [status = 0, first = 0, second = 0] = bytes;
  const channel = status & 0x0f;
  const deltaTime = 0;
  switch (status & 0xf0) {
    case 0x80:
      return { deltaTime, type: 'noteOff', channel, noteNumber: first, velocity: second };
    case 0x90:
      return second === 0
        ? { deltaTime, type: 'noteOff', channel, noteNumber: first, velocity: 0 }
        : { deltaTime, type: 'noteOn', channel, noteNumber: first, velocity: second };
    case 0xb0:
      return { deltaTime, type: 'controller', channel, controllerType: first, value: second };
    case 0xe0:
      return { deltaTime, type: 'pitchBend', channel, value: first + second * 128 - BEND_MIDDLE };
    default:
      return null;
  }
}
