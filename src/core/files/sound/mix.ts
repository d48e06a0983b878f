/**
 * Channels to mono, and invalid samples to 0.
 *
 * The mono samples are the mean of the channels. Where the channels cancel each other (a guitar whose two pickups or
 * two microphones are wired out of phase, a "wide" stereo effect) the mean would take the instrument away:
 * then the loudest channel alone is taken for the whole file, and a notice says so. The choice is made once,
 * from the first seconds in which something sounds, so that it can't flip in mid-phrase.
 */
import { notice } from '../../words/problem.ts';
import type { ChannelBlock, PcmStream, Warn } from './pcm.ts';

/** How the channels of one file are mixed to mono. */
export type Mixdown = { readonly take: 'mean' } | { readonly take: 'channel'; readonly channel: number };

/** A block counts as evidence from −60 dBFS up: below lies the noise of a plugged-in cable. */
const SOUNDING_POWER = 1e-6;
/** Seconds with sound that are enough to decide: a few phrases. */
const EVIDENCE_SECONDS = 10;
/** The search ends here: a file that is silent for so long is mixed as the mean. */
const SEARCH_SECONDS = 120;
/**
 * The mean loses 3 dB against the louder of two unrelated channels of one level, and 6 dB where one of two is
 * silent. At −12 dB they cancel, or five of six are silent.
 */
const CANCELLED_SHARE = 10 ** (-12 / 10);

function powerOf(samples: Float32Array): number {
  let power = 0;
  for (const sample of samples) power += sample * sample;
  return power;
}

/**
 * Largest valid sample: the scale of 32-bit integers in a floating-point file. Larger values have a damaged exponent.
 */
const LARGEST_SAMPLE = 2 ** 31;

function meanOf(block: ChannelBlock): Float32Array {
  const mean = new Float32Array(block[0]!.length);
  const share = 1 / block.length;
  for (const channel of block) for (let k = 0; k < mean.length; k++) mean[k]! += channel[k]! * share;
  return mean;
}

/** Replaces samples that are not a number, infinite or too large by 0, and counts them. */
function clean(block: ChannelBlock): number {
  let replaced = 0;
  for (const channel of block)
    for (let k = 0; k < channel.length; k++)
      if (!(Math.abs(channel[k]!) <= LARGEST_SAMPLE)) {
        channel[k] = 0;
        replaced++;
      }
  return replaced;
}

/** Whether not one sample of a recording is a number: asked of its beginning, since nearly all have one at once. */
export async function hasNoNumber(stream: PcmStream): Promise<boolean> {
  let samples = 0;
  for await (const block of stream.blocks(() => undefined)) {
    if (block.some((channel) => channel.some((sample) => Math.abs(sample) <= LARGEST_SAMPLE))) return false;
    samples += block[0]!.length;
  }
  return samples > 0;
}

/** Decides from the beginning of the file how its channels are mixed to mono. */
export async function chooseMixdown(stream: PcmStream): Promise<Mixdown> {
  if (stream.channels === 1) return { take: 'mean' };
  const powers = new Float64Array(stream.channels);
  let meanPower = 0;
  let heard = 0;
  let searched = 0;
  for await (const block of stream.blocks(() => undefined)) {
    clean(block);
    const frames = block[0]!.length;
    const blockPowers = block.map(powerOf);
    if (Math.max(...blockPowers) > SOUNDING_POWER * frames) {
      blockPowers.forEach((power, channel) => (powers[channel]! += power));
      meanPower += powerOf(meanOf(block));
      heard += frames;
    }
    searched += frames;
    if (heard >= EVIDENCE_SECONDS * stream.sampleRate || searched >= SEARCH_SECONDS * stream.sampleRate)
      break;
  }
  const loudest = powers.indexOf(Math.max(...powers));
  return meanPower < CANCELLED_SHARE * powers[loudest]!
    ? { take: 'channel', channel: loudest }
    : { take: 'mean' };
}

/** Mono samples without invalid values, block by block. Reports at the end what had to be repaired. */
export async function* mixed(
  stream: PcmStream,
  mixdown: Mixdown,
  name: string,
  warn: Warn,
): AsyncGenerator<Float32Array> {
  let replaced = 0;
  if (mixdown.take === 'channel') warn(notice('sound.channelTaken', { name, channel: mixdown.channel + 1 }));
  for await (const block of stream.blocks(warn)) {
    replaced += clean(block);
    yield mixdown.take === 'channel'
      ? block[mixdown.channel]!
      : block.length === 1
        ? block[0]!
        : meanOf(block);
  }
  if (replaced > 0) warn(notice('sound.notNumbers', { name, samples: replaced }));
}
