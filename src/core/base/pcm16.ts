/**
 * Floating-point samples against 16-bit ones. Full scale is 32768 both ways, so that 16-bit → float → 16-bit
 * gives back every sample exactly; +1.0 and beyond are held at 32767.
 */
export function toPcm16(samples: Float32Array): Int16Array<ArrayBuffer> {
  const out = new Int16Array(samples.length);
  for (let i = 0; i < samples.length; i++) {
    const scaled = Math.round(samples[i]! * 32768);
    // A NaN sample becomes 0 in an Int16Array.
    out[i] = scaled > 32767 ? 32767 : scaled < -32768 ? -32768 : scaled;
  }
  return out;
}

/** 16-bit samples as floating point, -1 to just under 1. */
export function fromPcm16(samples: Int16Array): Float32Array<ArrayBuffer> {
  const out = new Float32Array(samples.length);
  for (let i = 0; i < samples.length; i++) out[i] = samples[i]! / 32768;
  return out;
}

/** Samples of one channel: 16-bit of our own takes, floating point at full scale ±1 of files. */
export type MonoSamples = Int16Array | Float32Array;

/** As floating point; what is so already is not copied. */
export const floats = (samples: MonoSamples): Float32Array =>
  samples instanceof Int16Array ? fromPcm16(samples) : samples;
