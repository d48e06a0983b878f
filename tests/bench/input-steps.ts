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
  /** Place in the recording less time of capture, last less first, ms: what is left of all that. */
  readonly againstCaptureMs: number;
}

export function inputSteps({ buffers, clock }: InputLog, recording: Int16Array, rate: number): InputSteps {
  const reach = Math.round(REACH_SECONDS * rate);
  const inBrowser: Step[] = [];
  const atMicrophone: Step[] = [];
  const against: number[] = [];
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
      against.push(1000 * seconds - capturedMs);
    }
    const due = before === null ? null : before + (1000 * frames) / rate;
    if (offset !== null && due !== null && capturedMs - due > LEFT_OUT_MS)
      atMicrophone.push({ atSeconds: (offset + delivered) / rate, ms: capturedMs - due });
    before = capturedMs;
    delivered += frames;
  }
  const behind = clock.map(({ machineMs, contextSeconds }) => machineMs - 1000 * contextSeconds);
  // The least of several looks: a look may be late, never early.
  const least = (looks: readonly number[]) => Math.min(...looks);
  return {
    found: against.length,
    of: buffers.length,
    inBrowser,
    atMicrophone,
    clockBehindMs: least(behind.slice(-20)) - least(behind.slice(0, 20)),
    againstCaptureMs: (against.at(-1) ?? 0) - (against[0] ?? 0),
  };
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
  `place in the recording against time of capture: ${steps.againstCaptureMs.toFixed(1)} ms`,
];
