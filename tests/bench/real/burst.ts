/** Tells a burst of noise (a click, a fret, a finger) from a change of the note itself. */

/** Where the burst is looked for. Partials that matter lie mostly below; a click reaches far above. */
const HIGH_HZ = 4000;
const SMOOTH_SECONDS = 0.004;
/** The burst is up to this far from the onset that was heard. */
const NEAR_SECONDS = 0.03;
/** It stands out from the sound this far before and after it, leaving out its own flanks. */
const AROUND_SECONDS = 0.06;
const FLANK_BEFORE_SECONDS = 0.015;
const FLANK_AFTER_SECONDS = 0.02;
const STANDS_OUT_DB = 8;

/** A second-order high-pass in place (Bristow-Johnson, Cookbook formulae for audio EQ, quality 0.707). */
function highPass(samples: Float64Array, sampleRate: number): void {
  const angle = (2 * Math.PI * HIGH_HZ) / sampleRate;
  const alpha = Math.sin(angle) * Math.SQRT1_2;
  const cosine = Math.cos(angle);
  const a0 = 1 + alpha;
  const b0 = (1 + cosine) / 2 / a0;
  const b1 = -(1 + cosine) / a0;
  const a1 = (-2 * cosine) / a0;
  const a2 = (1 - alpha) / a0;
  let [x1, x2, y1, y2] = [0, 0, 0, 0];
  for (let i = 0; i < samples.length; i++) {
    const x = samples[i] ?? 0;
    const y = b0 * (x + x2) + b1 * x1 - a1 * y1 - a2 * y2;
    [x1, x2, y1, y2] = [x, x1, y, y1];
    samples[i] = y;
  }
}

const median = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[values.length >> 1] ?? -Infinity;

/** True where the sound over 4 kHz has a peak within 30 ms that is 8 dB over the 60 ms before and after it. */
export function hasBurst(samples: Float32Array, sampleRate: number, atSeconds: number): boolean {
  const hop = Math.round(SMOOTH_SECONDS * sampleRate);
  const reach = NEAR_SECONDS + AROUND_SECONDS + SMOOTH_SECONDS;
  const from = Math.round((atSeconds - reach) * sampleRate);
  const to = Math.round((atSeconds + reach) * sampleRate);
  if (from < 0 || to > samples.length) return false;
  const part = Float64Array.from(samples.subarray(from, to));
  highPass(part, sampleRate);
  highPass(part, sampleRate);
  const levels: { readonly seconds: number; readonly db: number }[] = [];
  for (let start = 0; start + hop <= part.length; start += hop >> 1) {
    let power = 1e-12;
    for (let i = start; i < start + hop; i++) power += (part[i] ?? 0) ** 2 / hop;
    levels.push({ seconds: (start + hop / 2) / sampleRate - reach, db: 10 * Math.log10(power) });
  }
  const near = levels.filter(({ seconds }) => Math.abs(seconds) <= NEAR_SECONDS);
  const peak = near.reduce((a, b) => (b.db > a.db ? b : a), { seconds: 0, db: -Infinity });
  const between = (low: number, high: number) =>
    median(
      levels
        .filter(({ seconds }) => seconds >= peak.seconds + low && seconds <= peak.seconds + high)
        .map(({ db }) => db),
    );
  return (
    peak.db > between(-AROUND_SECONDS, -FLANK_BEFORE_SECONDS) + STANDS_OUT_DB &&
    peak.db > between(FLANK_AFTER_SECONDS, AROUND_SECONDS) + STANDS_OUT_DB
  );
}
