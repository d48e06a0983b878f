/**
 * Where the buffers of the microphone lie in a recording: who moved the sound, the microphone, the browser between microphone
 * and recording, or the output. What the fake devices of a test leave out is no fault of the recording.
 */
import type { InputLog } from './input-log.ts';

/** A buffer is looked for so far around the place after the one before it, seconds. */
const REACH_SECONDS = 0.3;
/** First samples that lie closer together than this are nearly silence, which is the same everywhere. */
const LEAST_RANGE = 600;
/** A buffer this late after the one before it, ms: the microphone left some out. */
const LEFT_OUT_MS = 4;

export interface Step {
  /** In the recording. */
  readonly atSeconds: number;
  readonly ms: number;
}

export interface InputSteps {
  readonly found: number;
  readonly of: number;
  /** Between microphone and recording: later (silence was put in) or earlier (sound was left out) against the buffers. */
  readonly inBrowser: readonly Step[];
  /** Time that passed between two buffers without sound for it. */
  readonly atMicrophone: readonly Step[];
  /** How far the audio clock fell behind the machine's in all, ms. */
  readonly clockBehindMs: number;
  /**
   * What a player who follows the band would be graded late, ms, against the first of these looks: place in the recording
   * less time of capture, and what the audio clock, by which the band is played, fell behind meanwhile.
   */
  readonly againstBandMs: readonly number[];
}

export function inputSteps({ buffers, clock }: InputLog, recording: Int16Array, rate: number): InputSteps {
  const reach = Math.round(REACH_SECONDS * rate);
  const inBrowser: Step[] = [];
  const atMicrophone: Step[] = [];
  const places: { readonly capturedMs: number; readonly laterMs: number }[] = [];
  let offset: number | null = null;
  let delivered = 0;
  let before: number | null = null;
  for (const { capturedMs, frames, sign } of buffers) {
    const place: number = isTelling(sign)
      ? offset === null
        ? recording.findIndex((_, at) => isAt(recording, at, sign))
        : nearest(recording, offset + delivered, sign, reach)
      : -1;
    if (place >= 0) {
      const seconds = place / rate;
      if (offset !== null && place - delivered !== offset)
        inBrowser.push({ atSeconds: seconds, ms: (1000 * (place - delivered - offset)) / rate });
      offset = place - delivered;
      places.push({ capturedMs, laterMs: 1000 * seconds - capturedMs });
    }
    const due = before === null ? null : before + (1000 * frames) / rate;
    if (offset !== null && due !== null && capturedMs - due > LEFT_OUT_MS)
      atMicrophone.push({ atSeconds: (offset + delivered) / rate, ms: capturedMs - due });
    before = capturedMs;
    delivered += frames;
  }
  const behind = clock.map(({ machineMs, contextSeconds }) => machineMs - 1000 * contextSeconds);
  return {
    found: places.length,
    of: buffers.length,
    inBrowser,
    atMicrophone,
    clockBehindMs: least(behind.slice(-LOOKS)) - least(behind.slice(0, LOOKS)),
    againstBandMs: againstBand(places, clock),
  };
}

/** Looks at the clock in five seconds. */
const LOOKS = 20;
/** The least of several: a look at the clock may be late, never early. */
const least = (looks: readonly number[]) => Math.min(...looks);

/** One number for every five seconds in which buffers were found, less the first. */
function againstBand(
  places: readonly { readonly capturedMs: number; readonly laterMs: number }[],
  clock: InputLog['clock'],
): readonly number[] {
  const looks: number[] = [];
  for (let from = 0; from + LOOKS <= clock.length; from += LOOKS) {
    const part = clock.slice(from, from + LOOKS);
    const [begin, end] = [part[0]!.machineMs, part.at(-1)!.machineMs];
    const later = places.filter(({ capturedMs }) => capturedMs >= begin && capturedMs < end);
    if (later.length === 0) continue;
    const behind = least(part.map(({ machineMs, contextSeconds }) => machineMs - 1000 * contextSeconds));
    const middle = later.map(({ laterMs }) => laterMs).sort((x, y) => x - y)[later.length >> 1]!;
    looks.push(middle + behind);
  }
  return looks.map((ms) => ms - looks[0]!);
}

const isTelling = (sign: readonly number[]) => Math.max(...sign) - Math.min(...sign) >= LEAST_RANGE;

/** To the last bit of 16: a step of rounding lies between the two ways. */
const isAt = (recording: Int16Array, at: number, sign: readonly number[]) =>
  sign.every((x, i) => Math.abs(recording[at + i]! - x) <= 1);

function nearest(recording: Int16Array, around: number, sign: readonly number[], reach: number): number {
  for (let far = 0; far <= reach; far++) {
    if (isAt(recording, around + far, sign)) return around + far;
    if (isAt(recording, around - far, sign)) return around - far;
  }
  return -1;
}

const sumMs = (steps: readonly Step[]) => steps.reduce((sum, { ms }) => sum + ms, 0);
const listed = (steps: readonly Step[]) =>
  steps.map(({ atSeconds, ms }) => `${ms.toFixed(1)} ms at ${atSeconds.toFixed(1)} s`).join(', ') || 'none';

export const stepLines = (steps: InputSteps): readonly string[] => [
  `buffers of the microphone found in the recording: ${steps.found} of ${steps.of}`,
  `moved between microphone and recording: ${sumMs(steps.inBrowser).toFixed(1)} ms: ${listed(steps.inBrowser)}`,
  `left out by the microphone itself: ${sumMs(steps.atMicrophone).toFixed(1)} ms: ${listed(steps.atMicrophone)}`,
  `audio clock behind the machine's: ${steps.clockBehindMs.toFixed(1)} ms`,
  `place of the sound against the band as it was played, every five seconds: ${least(steps.againstBandMs).toFixed(1)} to ` +
    `${Math.max(...steps.againstBandMs).toFixed(1)} ms, ${(steps.againstBandMs.at(-1) ?? 0).toFixed(1)} at the end`,
];
