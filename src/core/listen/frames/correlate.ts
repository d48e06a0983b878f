/** r(τ) → 2 r(τ) / m(τ), m by its recurrence (McLeod & Wyvill, end of section 6). */
export function normalise(
  samples: Float32Array,
  start: number,
  length: number,
  correlation: Float64Array | readonly number[],
  scale: number,
  out: Float32Array,
): void {
  const twice = 2 / scale;
  let energy = twice * correlation[0]!;
  const floor = energy * 1e-6 + 1e-12;
  for (let lag = 0; lag < out.length; lag++) {
    out[lag] = energy > floor ? (twice * correlation[lag]!) / energy : 0;
    const head = samples[start + lag]!;
    const tail = samples[start + length - 1 - lag]!;
    energy -= head * head + tail * tail;
  }
}
