/** Short clicks on the audio clock: a count-in, and beats to be judged by ear. */

/** Length of a click: audible over music, and too short to cover an attack. */
const CLICK_SECONDS = 0.03;
const DECAY_SECONDS = 0.006;
const PITCH_HZ = { accent: 2100, plain: 1500 } as const;
const PEAK = 0.5;

export type ClickKind = keyof typeof PITCH_HZ;

export class Clicks {
  readonly #context: AudioContext;
  readonly #into: AudioNode;
  readonly #buffers: Readonly<Record<ClickKind, AudioBuffer>>;
  readonly #sources = new Set<AudioBufferSourceNode>();

  constructor(context: AudioContext, into: AudioNode) {
    this.#context = context;
    this.#into = into;
    this.#buffers = { accent: clickOf(context, 'accent'), plain: clickOf(context, 'plain') };
  }

  /** One click, which begins at a moment of the context; one that is past is left out. */
  at(contextSeconds: number, kind: ClickKind): void {
    if (contextSeconds < this.#context.currentTime) return;
    const source = new AudioBufferSourceNode(this.#context, { buffer: this.#buffers[kind] });
    source.connect(this.#into);
    source.start(contextSeconds);
    this.#sources.add(source);
    source.onended = () => {
      source.disconnect();
      this.#sources.delete(source);
    };
  }

  /** Cancels the clicks that are scheduled. */
  stop(): void {
    for (const source of this.#sources) source.stop();
    this.#sources.clear();
  }
}

function clickOf(context: AudioContext, kind: ClickKind): AudioBuffer {
  const { sampleRate } = context;
  const samples = Float32Array.from({ length: Math.round(CLICK_SECONDS * sampleRate) }, (_, i) => {
    const seconds = i / sampleRate;
    return PEAK * Math.sin(2 * Math.PI * PITCH_HZ[kind] * seconds) * Math.exp(-seconds / DECAY_SECONDS);
  });
  const buffer = context.createBuffer(1, samples.length, sampleRate);
  buffer.copyToChannel(samples, 0);
  return buffer;
}
