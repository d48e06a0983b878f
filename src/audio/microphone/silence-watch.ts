/** Reports when a microphone sends only digital silence, and when sound comes back. */

/** Only zeros for this long mean a switch on the cable or a muted input: a real microphone always has noise. */
const SILENT_SECONDS = 3;

export interface SilenceEvents {
  /** Nothing but zeros for three seconds; again after each time that sound came back. */
  silent(): void;
  /** Sound is back after a silence that was reported. */
  soundBack(): void;
}

/** @example const watch = silenceWatch(48000, events); watch(hop.samples) */
export function silenceWatch(sampleRate: number, events: SilenceEvents): (samples: Float32Array) => void {
  const limit = SILENT_SECONDS * sampleRate;
  let zeroFrames = 0;
  return (samples) => {
    const before = zeroFrames;
    zeroFrames = samples.every((sample) => sample === 0) ? zeroFrames + samples.length : 0;
    if (before < limit && zeroFrames >= limit) events.silent();
    else if (before >= limit && zeroFrames === 0) events.soundBack();
  };
}
