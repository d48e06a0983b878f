/** Made sounds for the listener's tests: exact pitch, exact onset, seeded noise. */

export function hzOf(midi: number): number {
  return 440 * 2 ** ((midi - 69) / 12);
}

export function silence(seconds: number, sampleRate: number): Float32Array {
  return new Float32Array(Math.round(seconds * sampleRate));
}

/** Uniform noise of the given peak from a linear congruential generator (Park & Miller 1988). */
export function seededNoise(seconds: number, sampleRate: number, peak: number): Float32Array {
  let state = 1234567;
  return silence(seconds, sampleRate).map(() => {
    state = (state * 16807) % 2147483647;
    return peak * ((2 * state) / 2147483647 - 1);
  });
}

/** A steady tone; `partials` are the amplitudes of harmonics 1, 2, 3 …, kept below half the rate. */
export function tone(
  hz: number,
  seconds: number,
  sampleRate: number,
  partials: readonly number[],
): Float32Array {
  const samples = silence(seconds, sampleRate);
  partials.forEach((amplitude, k) => {
    const partial = hz * (k + 1);
    if (partial > 0.45 * sampleRate) return;
    for (let i = 0; i < samples.length; i++)
      samples[i]! += 0.25 * amplitude * Math.sin((2 * Math.PI * partial * i) / sampleRate + 0.7 * k);
  });
  return samples;
}

/** A plucked string's spectrum and decay; the pitch is fixed or a function of the time since the attack. */
export function plucked(
  hz: number | ((seconds: number) => number),
  seconds: number,
  sampleRate: number,
): Float32Array {
  const samples = silence(seconds, sampleRate);
  const pitch = typeof hz === 'number' ? () => hz : hz;
  let phase = 0;
  for (let i = 0; i < samples.length; i++) {
    const t = i / sampleRate;
    const now = pitch(t);
    phase += (2 * Math.PI * now) / sampleRate;
    const release = Math.min(1, (seconds - t) / 0.01);
    for (let k = 1; k <= 8 && now * k < 0.45 * sampleRate; k++)
      samples[i]! +=
        ((0.25 * release) / k) *
        Math.min(1, t / 0.002) *
        Math.exp(-t * (1 + 0.6 * k)) *
        Math.sin(phase * k + k);
  }
  return samples;
}

/** Parts laid at their times over a ground. */
export function sum(
  seconds: number,
  sampleRate: number,
  parts: readonly { readonly at: number; readonly sound: Float32Array }[],
  ground: Float32Array,
): Float32Array {
  const samples = silence(seconds, sampleRate);
  samples.set(ground.subarray(0, samples.length));
  for (const { at, sound } of parts) {
    const start = Math.round(at * sampleRate);
    for (let i = 0; i < sound.length && start + i < samples.length; i++) samples[start + i]! += sound[i]!;
  }
  return samples;
}
