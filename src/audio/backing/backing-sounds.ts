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
  findBeats(): Promise<Outcome<DetectedBeats>>;
}

/** A round that is rendered or being rendered. */
interface Baking {
  readonly key: string;
  readonly round: Promise<Outcome<BakedRound>>;
  progress: (share: number) => void;
}

export class BackingSounds {
  readonly #context: () => AudioContext;
  #held: { readonly id: string; readonly client: BackingClient; readonly facts: BackingFacts } | null = null;
  #baked: Baking | null = null;

  constructor(context: () => AudioContext) {
    this.#context = context;
  }

  /** Reads a recording so that its beats can be set. */
  async open(source: BackingSource): Promise<Outcome<OpenBacking>> {
    const held = await this.#hold(source);
    if (!held.ok) return held;
    const { client, facts } = held.value;
    const whole = await client.whole();
    if (!whole.ok) return whole;
    const player = createMarkedPlayer(this.#context(), whole.value);
    return good({
      ...player,
      ...this.search(source),
      facts,
      findBeats: () => this.#asking(source, (one) => one.beats()),
    });
  }

  /** A search in a recording that is only looked through: its sound stays in the worker. */
  search(source: BackingSource): ChordSearch {
    let turn = 0;
    return {
      findChords: (beats, progress) => {
        const mine = ++turn;
        return this.#asking(source, (one) => {
          if (mine === turn) return one.chords(beats, progress);
          // Stopped while the file was being read.
          this.#letGo(source.id);
          return Promise.resolve(bad('backing.superseded'));
        });
      },
      stopFinding: () => {
        turn++;
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
  ): Promise<Outcome<T>> {
    const held = await this.#hold(source);
    return held.ok ? ask(held.value.client) : held;
  }

  /** Ends the worker with all that it does; the recording is read again when something is asked of it. */
  #letGo(id: string): void {
    if (this.#held?.id !== id) return;
    this.#held.client.dispose();
    this.#held = null;
  }

  async #hold(source: BackingSource): Promise<Outcome<{ client: BackingClient; facts: BackingFacts }>> {
    if (this.#held?.id === source.id) return good(this.#held);
    const file = await source.file();
    if (!file.ok) return file;
    const client = new BackingClient();
    const facts = await client.open(file.value, source.name);
    if (!facts.ok) {
      client.dispose();
      return facts;
    }
    this.#held?.client.dispose();
    this.#held = { id: source.id, client, facts: facts.value };
    return good(this.#held);
  }
}
