/** A player of notes that have to be rendered before they can be played. */
import { good, type Outcome } from '../core/base/outcome.ts';
import type { BandLevels, OpenPlayer, PlayOrder } from './ports.ts';

/** Renders at the first `play`, so that a player who only reads the review waits for nothing. */
export class RenderedPlayer implements OpenPlayer {
  readonly durationSeconds: number;
  readonly #open: () => Promise<Outcome<OpenPlayer>>;
  #opening: Promise<Outcome<OpenPlayer>> | null = null;
  #player: OpenPlayer | null = null;
  #fromSeconds = 0;
  #bandLevels: BandLevels | null = null;
  #takeLevelDb: number | null = null;
  #ended: () => void = () => undefined;
  /** Counts the calls of play, pause and dispose: an earlier play that is still rendering does not sound any more. */
  #turn = 0;
  #disposed = false;

  constructor(durationSeconds: number, open: () => Promise<Outcome<OpenPlayer>>) {
    this.durationSeconds = durationSeconds;
    this.#open = open;
  }

  async play(order: PlayOrder): Promise<Outcome<void>> {
    const turn = ++this.#turn;
    this.#fromSeconds = order.fromSeconds;
    const opened = await (this.#opening ??= this.#open());
    if (!opened.ok) {
      this.#opening = null;
      return opened;
    }
    this.#setPlayer(opened.value);
    return turn === this.#turn && !this.#disposed ? opened.value.play(order) : good(undefined);
  }

  pause(): void {
    this.#turn++;
    this.#player?.pause();
  }

  positionSeconds(): number {
    return this.#player?.positionSeconds() ?? this.#fromSeconds;
  }

  setTakeLevelDb(levelDb: number): void {
    this.#takeLevelDb = levelDb;
    this.#player?.setTakeLevelDb(levelDb);
  }

  setBandLevels(levels: BandLevels): void {
    this.#bandLevels = levels;
    this.#player?.setBandLevels(levels);
  }

  onEnded(listener: () => void): void {
    this.#ended = listener;
  }

  dispose(): void {
    this.#disposed = true;
    this.#turn++;
    this.#player?.dispose();
  }

  /** Passes on what was asked for while there was no player yet. */
  #setPlayer(player: OpenPlayer): void {
    if (this.#player !== null) return;
    if (this.#disposed) return player.dispose();
    this.#player = player;
    player.onEnded(() => this.#ended());
    if (this.#bandLevels !== null) player.setBandLevels(this.#bandLevels);
    if (this.#takeLevelDb !== null) player.setTakeLevelDb(this.#takeLevelDb);
  }
}
