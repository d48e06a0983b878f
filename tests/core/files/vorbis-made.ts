/** Ogg Vorbis files made with sox, and what sox decodes of them. */
import { spawnSync } from 'node:child_process';
import type { Chance } from '../../../src/core/base/random.ts';
import type { Outcome } from '../../../src/core/base/outcome.ts';
import type { PcmStream } from '../../../src/core/files/sound/pcm.ts';

interface Kind {
  readonly sampleRate: number;
  readonly channels: number;
}

/** Strings that are struck with a click, at odd times: an encoder changes between short and long blocks all the time. */
export function struckStrings({
  sampleRate,
  channels,
  seconds,
  chance: { next },
}: Kind & { readonly seconds: number; readonly chance: Chance }): Float32Array {
  const samples = new Float32Array(Math.round(seconds * sampleRate) * channels);
  for (let at = 0; at < seconds - 0.1; at += 0.05 + 0.45 * next()) {
    const hz = 220 * 2 ** (Math.floor(next() * 24) / 12);
    const start = Math.round(at * sampleRate);
    const level = 0.1 + 0.15 * next();
    for (let k = 0; k < 0.5 * sampleRate && (start + k) * channels < samples.length; k++) {
      const time = k / sampleRate;
      const string = Math.exp(-8 * time) * Math.sin(2 * Math.PI * hz * time);
      const click = Math.exp(-200 * time) * (next() - 0.5);
      for (let channel = 0; channel < channels; channel++)
        samples[(start + k) * channels + channel]! += level * (string + click) * (1 - 0.3 * channel);
    }
  }
  return samples;
}

const MOST_BYTES = 1 << 28;
const raw = ({ sampleRate, channels }: Kind) => [
  ...['-t', 'raw', '-e', 'floating-point', '-b', '32', '-r', String(sampleRate), '-c', String(channels)],
];

/** @param quality as oggenc counts, -1 to 10 */
export function soxEncodes(samples: Float32Array, kind: Kind, quality: number): Uint8Array {
  return soxRun([...raw(kind), '-', '-t', 'ogg', '-C', String(quality), '-'], Buffer.from(samples.buffer));
}

/** Interleaved samples. */
export function soxDecodes(path: string): Float32Array {
  const bytes = soxRun([path, '-t', 'raw', '-e', 'floating-point', '-b', '32', '-']);
  return new Float32Array(bytes.slice().buffer);
}

function soxRun(words: readonly string[], input?: Buffer): Uint8Array {
  const { status, stdout, stderr } = spawnSync('sox', words, { input, maxBuffer: MOST_BYTES });
  if (status !== 0) throw new Error(`sox ended with ${status}: ${stderr.toString()}`);
  return stdout;
}

/** How far a stream is from interleaved samples, at most; Infinity where it has more or fewer. */
export async function largestDifference(
  opening: Promise<Outcome<PcmStream>>,
  expected: Float32Array,
): Promise<number> {
  const opened = await opening;
  if (!opened.ok) throw new Error(opened.problem.code);
  const { channels, blocks } = opened.value;
  let frame = 0;
  let difference = 0;
  for await (const block of blocks(({ code }) => {
    throw new Error(code);
  })) {
    block.forEach((line, channel) => {
      line.forEach((sample, k) => {
        const other = expected[(frame + k) * channels + channel] ?? Infinity;
        difference = Math.max(difference, Math.abs(sample - other));
      });
    });
    frame += block[0]!.length;
  }
  return frame * channels === expected.length ? difference : Infinity;
}
