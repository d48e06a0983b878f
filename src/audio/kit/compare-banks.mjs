/** Renders the same notes from two sound banks and compares them sample by sample. */
import { SoundBankLoader, SpessaSynthProcessor } from 'spessasynth_core';

const sampleRate = 48_000;
const blockFrames = 128;
const noteBlocks = 40;
const drumChannel = 9;

/** A synthesiser with one bank, no effects. */
const synthFor = (bank) => {
  const synth = new SpessaSynthProcessor(sampleRate, { effectsEnabled: false, eventsEnabled: false });
  synth.soundBankManager.addSoundBank(SoundBankLoader.fromArrayBuffer(bank.slice(0)), 'bank');
  return synth;
};

/** @returns {Float32Array} About a tenth of a second of one note, left then right. */
const renderNote = (synth, { program, drums }, key, velocity) => {
  const channel = drums ? drumChannel : 0;
  const frames = noteBlocks * blockFrames;
  const sound = new Float32Array(2 * frames);
  synth.stopAllChannels(true);
  synth.programChange(channel, program);
  synth.noteOn(channel, key, velocity);
  for (let at = 0; at < frames; at += blockFrames) {
    synth.process(sound.subarray(0, frames), sound.subarray(frames), at, blockFrames);
  }
  return sound;
};

/**
 * The first note that differs, as text, or null when all agree. A silent note counts as a difference: both
 * banks being empty is no agreement.
 * @param {ArrayBuffer} bank @param {ArrayBuffer} other
 * @param {readonly {name: string, program: number, drums: boolean, keys: number[]}[]} presets
 * @param {readonly number[]} velocities
 * @returns {string | null}
 */
export function firstDifference(bank, other, presets, velocities = [30, 64, 96, 127]) {
  const [one, two] = [synthFor(bank), synthFor(other)];
  for (const preset of presets) {
    for (const key of preset.keys) {
      for (const velocity of velocities) {
        const a = renderNote(one, preset, key, velocity);
        const b = renderNote(two, preset, key, velocity);
        const where = `${preset.name}, key ${key}, velocity ${velocity}`;
        if (a.every((sample) => sample === 0)) return `${where} is silent`;
        if (a.some((sample, i) => sample !== b[i])) return where;
      }
    }
  }
  return null;
}
