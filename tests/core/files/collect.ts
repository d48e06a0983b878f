import { english } from '../../english.ts';
import { openAudio, type AudioFile } from '../../../src/core/files/audio.ts';
import { bytesInMemory } from '../../../src/core/files/bytes/bytes.ts';

/** A file read to its end: samples and warnings, or the English sentence of a file that can't be opened. */
export async function readAudio(name: string, bytes: Uint8Array) {
  const opened = await openAudio(bytesInMemory(name, bytes));
  return opened.ok ? collect(opened.value) : english(opened.problem);
}

export async function collect(audio: AudioFile) {
  const warnings: string[] = [];
  const blocks: Float32Array[] = [];
  for await (const block of audio.blocks((warning) => warnings.push(english(warning))))
    blocks.push(block.slice());
  const samples = new Float32Array(blocks.reduce((sum, block) => sum + block.length, 0));
  let at = 0;
  for (const block of blocks) {
    samples.set(block, at);
    at += block.length;
  }
  return { ...audio, samples, warnings };
}
