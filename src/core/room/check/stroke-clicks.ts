/** The clicks that the player strikes with: four to count in, then eight. */
import { CLICK_GAP_SECONDS, STROKES_ASKED } from './stroke-delay.ts';

/** Clicks that count in; nobody strikes with them. */
const CLICKS_COUNTED_IN = 4;
/** The count-in sounds lower, so that it is heard where the strokes begin. */
const COUNT_IN_HZ = 1000;
const CLICK_HZ = 1600;
const CLICK_SECONDS = 0.03;
/** Time in which it falls to 1/e. */
const DECAY_SECONDS = 0.006;
/** Full scale ±1: as loud as the band's own click. */
const PEAK = 0.3;

/** Sounds to be played one after the other, with silence between them. */
export interface StrokeClicks {
  readonly sounds: readonly Float32Array<ArrayBuffer>[];
  /** Silence from the end of one to the beginning of the next. */
  readonly silenceSeconds: number;
  /** How many of the first only count in. */
  readonly countedIn: number;
}

export function strokeClicks(sampleRate: number): StrokeClicks {
  const countIn = click(COUNT_IN_HZ, sampleRate);
  const asked = click(CLICK_HZ, sampleRate);
  return {
    sounds: [
      ...Array.from({ length: CLICKS_COUNTED_IN }, () => countIn),
      ...Array.from({ length: STROKES_ASKED }, () => asked),
    ],
    silenceSeconds: CLICK_GAP_SECONDS - CLICK_SECONDS,
    countedIn: CLICKS_COUNTED_IN,
  };
}

function click(hz: number, sampleRate: number): Float32Array<ArrayBuffer> {
  return Float32Array.from({ length: Math.round(CLICK_SECONDS * sampleRate) }, (_, i) => {
    const seconds = i / sampleRate;
    return PEAK * Math.exp(-seconds / DECAY_SECONDS) * Math.sin(2 * Math.PI * hz * seconds);
  });
}
