/**
 * The kit behind one plain face: strike, release, bend, render. Sample-exact: a command falls on the frame at
 * which it is given. No browser and no Node in here, so that a worker and a test run the same lines.
 */
import {
  BasicSoundBank,
  SoundBankLoader,
  SpessaSynthProcessor,
  type BasicSoundBank as Bank,
} from 'spessasynth_core';

/** A parsed sound bank. */
export type Kit = Bank;

/** The drum channel of General MIDI, counted from 0. */
export const drumChannel = 9;
/** Most frames that the synthesiser renders at once; its envelopes move once a block. */
const blockFrames = 128;
const mostVoices = 96;
const bankSelect = 0;
const volumeControl = 7;
const panControl = 10;

/** Parses a sound bank file. Throws when the bytes are none. */
export async function loadKit(bytes: ArrayBuffer): Promise<Kit> {
  await BasicSoundBank.isSF3DecoderReady;
  return SoundBankLoader.fromArrayBuffer(bytes);
}

export interface Synth {
  readonly sampleRate: number;
  /** Silences everything and forgets all controllers. */
  reset(): void;
  program(channel: number, program: number): void;
  /** -1 left to 1 right. */
  pan(channel: number, pan: number): void;
  strike(channel: number, midi: number, velocity: number): void;
  release(channel: number, midi: number): void;
  /** Semitones from the struck key, within ±`bendRange`. */
  bend(channel: number, semitones: number): void;
  /** Adds frames [from, to) of every channel to `outputs[channel % outputs.length]`, each a left and right array. */
  render(outputs: readonly (readonly [Float32Array, Float32Array])[], from: number, to: number): void;
}

/** Semitones that a full pitch wheel moves; set on every channel (MIDI RPN 0). */
export const bendRange = 12;
const wheelCentre = 8192;

export function createSynth(kit: Kit, sampleRate: number): Synth {
  const processor = new SpessaSynthProcessor(sampleRate, { effectsEnabled: false, eventsEnabled: false });
  processor.setSystemParameter('voiceCap', mostVoices);
  processor.soundBankManager.addSoundBank(kit, 'kit');
  const effects = [new Float32Array(blockFrames), new Float32Array(blockFrames)] as const;
  const setBendRange = (channel: number) => {
    for (const [controller, value] of [
      [101, 0],
      [100, 0],
      [6, bendRange],
      [38, 0],
    ] as const) {
      processor.controllerChange(channel, controller, value);
    }
  };
  return {
    sampleRate,
    reset: () => {
      processor.stopAllChannels(true);
      processor.reset();
    },
    program: (channel, program) => {
      processor.controllerChange(channel, bankSelect, 0);
      processor.programChange(channel, program);
      processor.controllerChange(channel, volumeControl, 127);
      if (channel !== drumChannel) setBendRange(channel);
    },
    pan: (channel, pan) => processor.controllerChange(channel, panControl, Math.round(64 + 63 * pan)),
    strike: (channel, midi, velocity) => processor.noteOn(channel, midi, velocity),
    release: (channel, midi) => processor.noteOff(channel, midi),
    bend: (channel, semitones) => {
      const wheel = Math.round(wheelCentre + (semitones / bendRange) * wheelCentre);
      processor.pitchWheel(channel, Math.min(2 * wheelCentre - 1, Math.max(0, wheel)));
    },
    render: (outputs, from, to) => {
      const pairs = outputs.map(([left, right]) => [left, right]);
      // With no voice sounding there is nothing to add, and commands count frames from here anyway.
      for (let at = from; at < to && (at === from || processor.voiceCount > 0); at += blockFrames) {
        processor.processSplit(pairs, effects[0], effects[1], at, Math.min(blockFrames, to - at));
      }
    },
  };
}
