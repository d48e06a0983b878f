/** The events of a MIDI track as far as they are whole. */
import type { MidiEvent } from 'midi-file';

/** Events until the first one that the end of the file cut through. */
export function wholeEvents(track: readonly MidiEvent[]): MidiEvent[] {
  const end = track.findIndex(
    (event) =>
      !(event.deltaTime >= 0 && event.deltaTime < Infinity) ||
      dataOf(event).some((value) => value > MOST_DATA) ||
      Object.values(event).some((value) => value === undefined || Number.isNaN(value)),
  );
  return end < 0 ? track.slice() : track.slice(0, end);
}

/** What a channel message carries; a byte above 127 is a status and no data (MIDI 1.0). */
function dataOf(event: MidiEvent): readonly number[] {
  if (event.type === 'noteOn' || event.type === 'noteOff') return [event.noteNumber, event.velocity];
  if (event.type === 'controller') return [event.controllerType, event.value];
  return event.type === 'programChange' ? [event.programNumber] : [];
}
const MOST_DATA = 127;
