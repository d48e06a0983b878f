import type { BandSound } from '../../../src/core/sound/render-events.ts';
import type { Stereo } from '../../../src/core/sound/stereo.ts';

/** All stems of all stretches in one stereo recording that begins at `fromBeat` of the first. */
export function mixDown(sounds: readonly BandSound[], fromBeat: number): Stereo {
  const first = sounds[0];
  if (!first) throw new RangeError('mixDown needs at least one stretch');
  const offsetOf = (sound: BandSound) =>
    Math.round((sound.startBeat - fromBeat) * (60 / sound.bpm) * sound.sampleRate);
  const ends = sounds.flatMap((sound) =>
    Object.values(sound.stems).map((stem) => offsetOf(sound) + stem[0].length),
  );
  const mix: Stereo = [new Float32Array(Math.max(0, ...ends)), new Float32Array(Math.max(0, ...ends))];
  for (const sound of sounds) {
    for (const stem of Object.values(sound.stems)) {
      stem.forEach((side, i) => {
        const offset = offsetOf(sound);
        for (let frame = 0; frame < side.length; frame++) mix[i]![offset + frame]! += side[frame]!;
      });
    }
  }
  return mix;
}
