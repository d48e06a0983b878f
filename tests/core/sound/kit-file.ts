/** The committed kit, as the worker would fetch it. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { createSynth, loadKit, type Synth } from '../../../src/core/sound/synth.ts';

export const kitPath = fileURLToPath(new URL('../../../src/audio/kit/landfall-kit.sf3', import.meta.url));

export async function kitSynth(sampleRate = 48_000): Promise<Synth> {
  const file = readFileSync(kitPath);
  return createSynth(await loadKit(new Uint8Array(file).buffer), sampleRate);
}
