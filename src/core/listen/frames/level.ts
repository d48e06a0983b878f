/** Level (RMS) of `length` samples from `start` on in dBFS, never under −120. `length` is a multiple of 4. */
export function levelDb(samples: Float32Array, start: number, length: number): number {
  // Four sums side by side, so that no addition waits for the one before.
  let a = 0;
  let b = 0;
  let c = 0;
  let d = 0;
  for (let i = start; i < start + length; i += 4) {
    const w = samples[i]!;
    const x = samples[i + 1]!;
    const y = samples[i + 2]!;
    const z = samples[i + 3]!;
    a += w * w;
    b += x * x;
    c += y * y;
    d += z * z;
  }
  return Math.max(-120, 10 * Math.log10((a + b + (c + d)) / length + 1e-12));
}
