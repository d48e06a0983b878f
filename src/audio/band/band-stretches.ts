/** The stretches that a band is rendered in, and a passage of the band as one sound. */
import { bandParts, type BandPart } from '../../core/band/events.ts';
import { chorusBeats, type BandForm } from '../../core/band/form.ts';
import type { BandSettings } from '../../core/band/settings.ts';
import { beatMapOf, tempoOf } from '../../core/band/tempo.ts';
import { good, type Outcome } from '../../core/base/outcome.ts';
import { nextTempoBeat } from '../../core/chart/tempo-rise.ts';
import type { BandRenderer } from './render-client.ts';
import { gainOf } from '../base/level.ts';

/** Never across the end of a chorus, nor across a change of tempo. */
export function stretchFrom(form: BandForm, settings: BandSettings, startBeat: number, bars: number) {
  const chorusEnd = (Math.floor(startBeat / chorusBeats(form) + 1e-9) + 1) * chorusBeats(form);
  const steadyUntil = nextTempoBeat(tempoOf(form, settings), startBeat);
  return { startBeat, endBeat: Math.min(chorusEnd, steadyUntil, startBeat + bars * form.beatsPerBar) };
}

/** A passage of the band, in beats from the first downbeat. */
export interface BandPassage {
  readonly fromBeat: number;
  readonly toBeat: number;
  /** 1 as the settings say, 0.5 half as fast. */
  readonly speed: number;
  /** Level of each part in dB; -60 is silent. */
  readonly levels: Readonly<Record<BandPart, number>>;
}

/** Left and right, exactly as long as the passage. */
export interface PassageSound {
  readonly channels: readonly [Float32Array<ArrayBuffer>, Float32Array<ArrayBuffer>];
  readonly sampleRate: number;
}

/** Bars that are rendered at a time, so that a loop of many does not keep the renderer from other work. */
const BARS = 4;
/** What begins before the passage is heard from the bar's beginning on; before the first downbeat nothing sounds. */
const barOf = (beat: number, { beatsPerBar }: BandForm) =>
  Math.max(0, Math.floor(beat / beatsPerBar + 1e-9) * beatsPerBar);

/** Renders a passage as one sound: what a loop goes round. What rings on behind its end is left out. */
export async function renderPassage(
  renderer: Pick<BandRenderer, 'band'>,
  form: BandForm,
  settings: BandSettings,
  sampleRate: number,
  { fromBeat, toBeat, speed, levels }: BandPassage,
): Promise<Outcome<PassageSound>> {
  const map = beatMapOf(form, settings);
  const frameOf = (beat: number) =>
    Math.round(((map.secondsAt(beat) - map.secondsAt(fromBeat)) / speed) * sampleRate);
  const length = Math.max(1, frameOf(toBeat));
  const channels = [new Float32Array(length), new Float32Array(length)] as const;
  let beat = barOf(fromBeat, form);
  while (beat < toBeat) {
    const stretch = stretchFrom(form, settings, beat, BARS);
    const sound = await renderer.band({ form, settings, speed, ...stretch });
    if (!sound.ok) return sound;
    for (const part of bandParts) {
      const stem = sound.value.stems[part];
      const gain = gainOf(levels[part]);
      if (stem) channels.forEach((side, c) => addTo(side, stem[c]!, frameOf(beat), gain));
    }
    beat = stretch.endBeat;
  }
  return good({ channels, sampleRate });
}

/** Adds what lies inside. */
function addTo(sum: Float32Array, sound: Float32Array, atFrame: number, gain: number): void {
  const from = Math.max(0, -atFrame);
  const to = Math.min(sound.length, sum.length - atFrame);
  for (let i = from; i < to; i++) sum[atFrame + i]! += gain * sound[i]!;
}
