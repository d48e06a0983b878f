/** What the backing worker does, without the worker: keeps one recording and answers requests about it. */
import { detectBeats } from '../../core/beats/detect-beats.ts';
import { LEAST_SECONDS, SILENT_PEAK } from '../../core/beats/settings.ts';
import type { ByteSource } from '../../core/files/bytes/bytes.ts';
import { readChannels, type Channels } from '../../core/files/read-channels.ts';
import { bad, good, type Outcome } from '../../core/base/outcome.ts';
import { chartOfRecording, chartOverBeats, type FoundChart } from '../../core/harmony/chart-of-recording.ts';
import { bakeRound } from './bake-round.ts';
import type { BackingAnswer, BackingFacts, BackingRequest, BakedRound } from './backing-messages.ts';
import { CalledOff, stretch } from './stretch.ts';

const PEAKS_PER_SECOND = 200;

export class BackingJob {
  readonly #post: (message: BackingAnswer, transfer?: Transferable[]) => void;
  #sound: Channels | null = null;
  /** Number of the latest request for a round. */
  #newest = 0;

  constructor(post: (message: BackingAnswer, transfer?: Transferable[]) => void) {
    this.#post = post;
  }

  /** Never rejects: an error is sent as the answer. */
  async handle(request: BackingRequest): Promise<void> {
    let outcome: Outcome<unknown>;
    try {
      outcome = await this.#answer(request);
    } catch (error) {
      if (error instanceof CalledOff)
        return this.#post({ kind: 'answer', id: request.id, outcome: bad('backing.superseded') });
      const why = error instanceof Error ? error.message : String(error);
      outcome = bad('backing.failed', { reason: why });
    }
    this.#post({ kind: 'answer', id: request.id, outcome }, outcome.ok ? buffersOf(outcome.value) : []);
  }

  #answer(request: BackingRequest): Outcome<unknown> | Promise<Outcome<unknown>> {
    if (request.kind === 'open') return this.#open(request.file, request.name);
    const sound = this.#sound;
    if (sound === null) return bad('backing.notOpen');
    switch (request.kind) {
      case 'beats':
        return detectBeats(monoOf(sound), sound.sampleRate);
      case 'chords':
        return this.#chords(sound, request.beats);
      case 'whole':
        return good<BakedRound>({
          channels: sound.channels.map((channel) => channel.slice()),
          sampleRate: sound.sampleRate,
          leadSeconds: 0,
        });
      case 'round':
        return this.#bake(sound, request);
    }
  }

  /** Cancelled by ending the worker: nothing comes in while it searches. */
  #chords(sound: Channels, beats: readonly number[] | null): Outcome<FoundChart> {
    const mono = monoOf(sound);
    const progress = (share: number) => {
      this.#post({ kind: 'progress', share });
      return true;
    };
    const found =
      beats === null
        ? chartOfRecording(mono, sound.sampleRate, progress)
        : chartOverBeats(mono, sound.sampleRate, beats, progress);
    if (found === null) throw new Error('The search for chords stopped and nobody asked it to');
    return found;
  }

  /** The latest request counts: an earlier one that is still being rendered is cancelled. */
  #bake({ channels, sampleRate }: Channels, { id, order }: Extract<BackingRequest, { kind: 'round' }>) {
    this.#newest = id;
    const stretched = (pieces: readonly Float32Array<ArrayBuffer>[]) =>
      stretch(pieces, sampleRate, order, (share) => {
        if (id !== this.#newest) return false;
        this.#post({ kind: 'progress', share });
        return true;
      });
    return bakeRound(channels, sampleRate, order, stretched).then(good);
  }

  async #open(file: Blob, name: string): Promise<Outcome<BackingFacts>> {
    this.#sound = null;
    const read = await readChannels(bytesOf(file, name));
    if (!read.ok) return read;
    const { channels, sampleRate, warnings } = read.value;
    const durationSeconds = channels[0]!.length / sampleRate;
    if (durationSeconds < LEAST_SECONDS) return bad('backing.tooShort', { name, seconds: LEAST_SECONDS });
    const peaks = peaksOf(channels, sampleRate);
    if (!peaks.some((peak) => peak > SILENT_PEAK)) return bad('backing.silent', { name });
    this.#sound = read.value;
    return good({ durationSeconds, sampleRate, peaks, peaksPerSecond: PEAKS_PER_SECOND, warnings });
  }
}

function bytesOf(blob: Blob, name: string): ByteSource {
  return {
    name,
    size: blob.size,
    read: async (offset, length) => new Uint8Array(await blob.slice(offset, offset + length).arrayBuffer()),
  };
}

function monoOf({ channels }: Channels): Float32Array {
  const [first, second] = channels;
  return second ? first!.map((sample, i) => (sample + second[i]!) / 2) : first!;
}

function peaksOf(channels: readonly Float32Array[], sampleRate: number): Float32Array<ArrayBuffer> {
  const frames = channels[0]!.length;
  const peaks = new Float32Array(Math.ceil((frames / sampleRate) * PEAKS_PER_SECOND));
  for (const channel of channels) {
    for (let i = 0; i < frames; i++) {
      const at = Math.floor((i / sampleRate) * PEAKS_PER_SECOND);
      const loud = Math.abs(channel[i]!);
      if (loud > peaks[at]!) peaks[at] = loud;
    }
  }
  return peaks;
}

/** The buffers of an answer, to be transferred instead of copied. */
function buffersOf(value: unknown): Transferable[] {
  if (typeof value !== 'object' || value === null) return [];
  if ('channels' in value) return (value as BakedRound).channels.map(({ buffer }) => buffer);
  return 'peaks' in value ? [(value as BackingFacts).peaks.buffer] : [];
}
