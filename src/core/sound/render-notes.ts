/** Notes that were played or written down → mono samples on a sound of the kit, chords and bent pitches included. */
import type { HeardNote } from '../take/note.ts';
import { voiceFor, type Voice } from './note-voice.ts';
import type { Stereo } from './stereo.ts';
import { drumChannel, type Synth } from './synth.ts';

const octave = 12;
/** A pitch wheel turns its whole channel: notes that sound together take channels in turn. */
const channels = Array.from({ length: 16 }, (_, channel) => channel).filter(
  (channel) => channel !== drumChannel,
);
/** For notes of which nobody knows how hard they were struck: firmly. */
const usualVelocity = 90;
/** Brings a firmly struck note near a third of full scale: a chord of three must not clip. */
const gain = 2;

/**
 * Renders notes from second 0 to the end of the take.
 * @param notes seconds from the take's beginning; pitches as sounding MIDI numbers, fractions allowed
 * @param instrument id of the instrument whose sound is wanted: see `voiceFor`
 */
export function renderNotes(
  synth: Synth,
  notes: readonly HeardNote[],
  durationSeconds: number,
  instrument = 'guitar',
): Float32Array<ArrayBuffer> {
  const frameOf = (seconds: number) => Math.round(Math.max(0, seconds) * synth.sampleRate);
  const length = Math.max(1, frameOf(durationSeconds));
  const sound: Stereo = [new Float32Array(length), new Float32Array(length)];
  const voice = voiceFor(
    instrument,
    notes.map(({ midi }) => midi),
  );
  synth.reset();
  for (const channel of channels) synth.program(channel, voice.program);
  let at = 0;
  for (const { frame, act } of commandsOf(synth, notes, voice, frameOf)) {
    if (frame >= length) break;
    synth.render([sound], at, frame);
    at = frame;
    act();
  }
  synth.render([sound], at, length);
  return Float32Array.from(sound[0], (left, i) => clipped((gain * (left + sound[1][i]!)) / 2));
}

interface Command {
  readonly frame: number;
  readonly strike: boolean;
  readonly act: () => void;
}

/** Releases come before strikes on the same frame, so that a repeated key is struck anew. */
function commandsOf(
  synth: Synth,
  notes: readonly HeardNote[],
  voice: Voice,
  frameOf: (seconds: number) => number,
): readonly Command[] {
  const commands = notes.flatMap((note, i): Command[] => {
    const channel = channels[i % channels.length]!;
    const midi = inCompass(note.midi, voice);
    const key = Math.round(midi);
    const strike = () => {
      synth.bend(channel, midi - key);
      synth.strike(channel, key, velocityOf(note));
    };
    return [
      { frame: frameOf(note.onsetSeconds), strike: true, act: strike },
      { frame: frameOf(note.offsetSeconds), strike: false, act: () => synth.release(channel, key) },
    ];
  });
  return commands.toSorted((a, b) => a.frame - b.frame || Number(a.strike) - Number(b.strike));
}

/** A note outside of the compass of the voice is played an octave or two nearer to it. */
function inCompass(midi: number, { lowest, highest }: Voice): number {
  if (midi < lowest) return midi + octave * Math.ceil((lowest - midi) / octave);
  if (midi > highest) return midi - octave * Math.ceil((midi - highest) / octave);
  return midi;
}

/** A velocity of 127 is 0 dB. */
const velocityOf = ({ levelDb }: HeardNote): number =>
  levelDb === null ? usualVelocity : Math.min(127, Math.max(1, Math.round(127 * 10 ** (levelDb / 20))));

const clipped = (sample: number): number => Math.min(1, Math.max(-1, sample));
