/** Recordings that are played to: one is read at a time, and rendered again only when it has to sound differently. */
import { bad, good, type Outcome } from '../../core/base/outcome.ts';
import { BackingClient } from './backing-client.ts';
import type { BackingFacts, BakedRound, DetectedBeats, FoundChart, RoundOrder } from './backing-messages.ts';
import { createMarkedPlayer, type MarkedPlayer } from './marked-player.ts';
import { createRoundPlayer, type RoundPlayer } from './round-player.ts';

/** Where a recording comes from. */
export interface BackingSource {
  /** Identifies the recording. */
  readonly id: string;
  readonly name: string;
  file(): Promise<Outcome<Blob>>;
}

/** A part of a recording that is repeated, as it is to sound. */
export interface BackingRun {
  readonly source: BackingSource;
  readonly order: RoundOrder;
  /** Each beat in seconds from the round's first downbeat as it is played; the last is where it begins again. */
  readonly beatSeconds: readonly number[];
  readonly beatsPerBar: number;
}

/** Looks for chords in a recording, off the page's own thread. */
export interface ChordSearch {
  /**
   * Beats, form and chords.
   * @param beats seconds, rising; null: the ones that are found
   * @param progress called with the share that is done, 0 to 1
   */
  findChords(
    beats: readonly number[] | null,
    progress: (share: number) => void,
  ): Promise<Outcome<FoundChart>>;
  /** Ends a search at once; its answer is a problem. */
  stopFinding(): void;
}

/** A recording whose beats are set: what is known of it, its playback, and its beats. */
export interface OpenBacking extends MarkedPlayer, ChordSearch {
  readonly facts: BackingFacts;
  /** @param signal ends the search at once; its answer is a problem then */
  findBeats(signal?: AbortSignal): Promise<Outcome<DetectedBeats>>;
}

/** A round that is rendered or being rendered. */
interface Baking {
  readonly key: string;
  readonly round: Promise<Outcome<BakedRound>>;
  progress: (share: number) => void;
}

export class BackingSounds {
  readonly #context: () => AudioContext;
  readonly #newClient: () => BackingClient;
  #held: { readonly id: string; readonly client: BackingClient; readonly facts: BackingFacts } | null = null;
  #baked: Baking | null = null;

  constructor(context: () => AudioContext, newClient = () => new BackingClient()) {
    this.#context = context;
    this.#newClient = newClient;
  }

  /**
   * Reads a recording so that its beats can be set.
   * @param signal ends the reading at once; the answer is a problem then
   */
  async open(source: BackingSource, signal?: AbortSignal): Promise<Outcome<OpenBacking>> {
    const held = await this.#hold(source, signal);
    if (!held.ok) return held;
    const { client, facts } = held.value;
    const whole = await client.whole();
    if (!whole.ok) return whole;
    const player = createMarkedPlayer(this.#context(), whole.value);
    return good({
      ...player,
      ...this.search(source),
      facts,
      findBeats: (stopped) => {
        const end = () => this.#letGo(source.id);
        stopped?.addEventListener('abort', end);
        const found = this.#asking(source, (one) => one.beats(), stopped);
        return found.finally(() => stopped?.removeEventListener('abort', end));
      },
    });
  }

  /** A search in a recording that is only looked through: its sound stays in the worker. */
  search(source: BackingSource): ChordSearch {
    let latest = new AbortController();
    return {
      findChords: (beats, progress) => {
        latest = new AbortController();
        return this.#asking(source, (one) => one.chords(beats, progress), latest.signal);
      },
      stopFinding: () => {
        latest.abort();
        this.#letGo(source.id);
      },
    };
  }

  /**
   * Renders a round, or takes the one that is rendered already.
   * @param into where it is to sound
   * @param progress the share done
   */
  async round(
    run: BackingRun,
    into: AudioNode,
    progress: (share: number) => void,
  ): Promise<Outcome<RoundPlayer>> {
    const baked = await this.#bake(run, progress);
    if (!baked.ok) return baked;
    return good(createRoundPlayer(this.#context(), into, baked.value, run.beatSeconds, run.beatsPerBar));
  }

  /** Renders a round ahead, so that it can start at once; a rendering that is no longer needed is abandoned. */
  prepare(run: BackingRun): void {
    void this.#bake(run, () => undefined);
  }

  /** One rendering at a time; a second request for the same one waits for it. */
  #bake(run: BackingRun, progress: (share: number) => void): Promise<Outcome<BakedRound>> {
    const key = JSON.stringify([run.source.id, run.order]);
    if (this.#baked?.key === key) {
      this.#baked.progress = progress;
      return this.#baked.round;
    }
    const baked: Baking = { key, round: this.#render(run, (share) => baked.progress(share)), progress };
    this.#baked = baked;
    // After a failure the next request tries again.
    void baked.round.then(({ ok }) => {
      if (!ok && this.#baked === baked) this.#baked = null;
    });
    return baked.round;
  }

  async #render(
    { source, order }: BackingRun,
    progress: (share: number) => void,
  ): Promise<Outcome<BakedRound>> {
    const held = await this.#hold(source);
    return held.ok ? held.value.client.round(order, progress) : held;
  }

  /** Asks the worker, which reads the recording where it does not hold it. */
  async #asking<T>(
    source: BackingSource,
    ask: (client: BackingClient) => Promise<Outcome<T>>,
    signal?: AbortSignal,
  ): Promise<Outcome<T>> {
    const held = await this.#hold(source, signal);
    return held.ok ? ask(held.value.client) : held;
  }

  /** Ends the worker with all that it does; the recording is read again when something is asked of it. */
  #letGo(id: string): void {
    if (this.#held?.id !== id) return;
    this.#held.client.dispose();
    this.#held = null;
  }

  async #hold(
    source: BackingSource,
    signal?: AbortSignal,
  ): Promise<Outcome<{ client: BackingClient; facts: BackingFacts }>> {
    if (this.#held?.id === source.id) return good(this.#held);
    const file = await source.file();
    if (!file.ok) return file;
    if (signal?.aborted) return bad('backing.superseded');
    const client = this.#newClient();
    const facts = await client.open(file.value, source.name, signal);
    if (!facts.ok || signal?.aborted) {
      client.dispose();
      return facts.ok ? bad('backing.superseded') : facts;
    }
    this.#held?.client.dispose();
    this.#held = { id: source.id, client, facts: facts.value };
    return good(this.#held);
  }
}
