/** Reports when a microphone sends nothing but silence, and when sound comes back. */

/**
 * Some muted inputs alternate by one step of 16 bits in place of zeros. The noise of a real microphone in a quiet room has
 * higher peaks within that time: noise of −80 dBFS has peaks of eight such steps.
 */
const SILENT_PEAK = 1.5 / 32_768;
/** Silence for this long means a switch on the cable or a muted input: a real microphone always has noise. */
const SILENT_SECONDS = 2.5;

export interface SilenceEvents {
  /** No sample above `SILENT_PEAK` for two and a half seconds; called again each time that this happens after sound was back. */
  silent(): void;
  /** Sound is back after a silence that was reported. */
  soundBack(): void;
}

/** @example const watch = silenceWatch(48000, events); watch(hop.samples) */
export function silenceWatch(sampleRate: number, events: SilenceEvents): (samples: Float32Array) => void {
  const limit = SILENT_SECONDS * sampleRate;
  let silentFrames = 0;
  return (samples) => {
    const before = silentFrames;
    silentFrames = samples.every((sample) => Math.abs(sample) <= SILENT_PEAK)
      ? silentFrames + samples.length
      : 0;
    if (before < limit && silentFrames >= limit) events.silent();
    else if (before >= limit && silentFrames === 0) events.soundBack();
  };
}
