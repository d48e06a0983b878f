/** Reports when a microphone sends nothing but silence, and when sound comes back. */

/**
 * Some muted inputs send the last bit of 16, to and fro, in place of zeros. The noise of a real microphone in a quiet room
 * reaches further within that time: −80 dBFS of noise has peaks of eight times that bit.
 */
const SILENT_PEAK = 1.5 / 32_768;
/** Silence for this long means a switch on the cable or a muted input: a real microphone always has noise. */
const SILENT_SECONDS = 2.5;

export interface SilenceEvents {
  /** Nothing above the last bit for two and a half seconds; again after each time that sound came back. */
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
