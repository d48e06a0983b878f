/** As much of an AudioContext as the players use, on a clock that the test moves. It writes down what is scheduled. */
export interface Scheduled {
  readonly when: number;
  readonly offset: number;
  readonly loop: boolean;
  readonly seconds: number;
  stoppedAt: number | null;
}

export interface FakeContext {
  readonly context: AudioContext;
  readonly scheduled: Scheduled[];
  /** Everything that was started, so that a test may let it end. */
  readonly sources: { onended: (() => void) | null }[];
  readonly gains: { readonly gain: { readonly value: number } }[];
  moveTo(seconds: number): void;
}

class Param {
  value = 1;
  cancelScheduledValues = () => undefined;
  setValueAtTime(value: number) {
    this.value = value;
  }
  linearRampToValueAtTime(value: number) {
    this.value = value;
  }
}

export function fakeContext(sampleRate = 48_000): FakeContext {
  const scheduled: Scheduled[] = [];
  const sources: { onended: (() => void) | null }[] = [];
  const gains: { gain: Param }[] = [];
  let now = 0;
  const node = { connect: (to: unknown) => to, disconnect: () => undefined };
  const context = {
    sampleRate,
    outputLatency: 0,
    destination: node,
    get currentTime() {
      return now;
    },
    createGain: () => {
      const gain = { ...node, gain: new Param() };
      gains.push(gain);
      return gain;
    },
    createBuffer: (_: number, length: number, rate: number) => ({
      duration: length / rate,
      sampleRate: rate,
      copyToChannel: () => undefined,
      getChannelData: () => new Float32Array(length),
    }),
  };
  class Source {
    onended: (() => void) | null = null;
    #own: Scheduled | null = null;
    readonly #options: { readonly loop?: boolean; readonly buffer: { readonly duration: number } };
    constructor(
      _: unknown,
      options: { readonly loop?: boolean; readonly buffer: { readonly duration: number } },
    ) {
      this.#options = options;
      sources.push(this);
    }
    connect = node.connect;
    disconnect = node.disconnect;
    start(when: number, offset = 0) {
      if (when < now) throw new Error(`scheduled ${now - when} s late`);
      this.#own = {
        when,
        offset,
        stoppedAt: null,
        loop: this.#options.loop ?? false,
        seconds: this.#options.buffer.duration,
      };
      scheduled.push(this.#own);
    }
    stop(at: number) {
      if (this.#own) this.#own.stoppedAt = at;
    }
  }
  Object.assign(globalThis, { AudioBufferSourceNode: Source });
  return {
    context: context as unknown as AudioContext,
    scheduled,
    sources,
    gains,
    moveTo: (seconds) => {
      now = seconds;
    },
  };
}
