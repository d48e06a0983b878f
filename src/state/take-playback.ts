/** Hearing a take again: its sound, or its notes on the kit's guitar, and the band as it played. */
import type { Outcome } from '../core/base/outcome.ts';
import { good } from '../core/base/outcome.ts';
import { accompaniment, type Review } from './phase.ts';
import { Playback } from './playback.svelte.ts';
import type { AudioPort, BackingsPort, BandLevels, FramesPort, OpenPlayer } from './ports.ts';
import { backingRun, backingSource } from './chosen-backing.ts';

/** @param usual the band's levels for takes of before they were kept */
export function openTakePlayback(
  review: Review,
  {
    audio,
    frames,
    backings,
  }: {
    readonly audio: AudioPort;
    readonly frames: FramesPort;
    readonly backings: Pick<BackingsPort, 'file'>;
  },
  usual: BandLevels,
): Playback {
  const { content, details } = review;
  const levels = details.levels ?? usual;
  const { backing } = details;
  const band = {
    ...accompaniment(review, levels),
    ...(backing && {
      backing: backingRun(backing, backingSource(backings, backing), review.timeline.beatsPerBar),
    }),
  };
  const player =
    content.kind === 'sound'
      ? audio.openPlayer(content.audio, band)
      : new RenderedPlayer(content.durationSeconds, async () => {
          const sound = await audio.renderNotes(content.notes, content.durationSeconds);
          return sound.ok ? good(audio.openPlayer(sound.value, band)) : sound;
        });
  // An opened recording may have a band of its own in it; ours would play against it.
  const withBand = !(details.source === 'recording' && content.kind === 'sound');
  return new Playback({ player, frames, levels, withBand });
}

/** Plays what has to be rendered first: at the first `play`, so that nobody waits who only reads. */
export class RenderedPlayer implements OpenPlayer {
  readonly durationSeconds: number;
  readonly #open: () => Promise<Outcome<OpenPlayer>>;
  #opening: Promise<Outcome<OpenPlayer>> | null = null;
  #player: OpenPlayer | null = null;
  #fromSeconds = 0;
  #bandLevels: BandLevels | null = null;
  #takeLevelDb: number | null = null;
  #ended: () => void = () => undefined;
  /** A pause, another play or the end makes an earlier play stale. */
  #turn = 0;
  #disposed = false;

  constructor(durationSeconds: number, open: () => Promise<Outcome<OpenPlayer>>) {
    this.durationSeconds = durationSeconds;
    this.#open = open;
  }

  async play(fromSeconds = this.#fromSeconds): Promise<Outcome<void>> {
    const turn = ++this.#turn;
    this.#fromSeconds = fromSeconds;
    const opened = await (this.#opening ??= this.#open());
    if (!opened.ok) {
      this.#opening = null;
      return opened;
    }
    this.#take(opened.value);
    return turn === this.#turn && !this.#disposed ? opened.value.play(fromSeconds) : good(undefined);
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

  /** What was asked for while there was no player yet. */
  #take(player: OpenPlayer): void {
    if (this.#player !== null) return;
    if (this.#disposed) return player.dispose();
    this.#player = player;
    player.onEnded(() => this.#ended());
    if (this.#bandLevels !== null) player.setBandLevels(this.#bandLevels);
    if (this.#takeLevelDb !== null) player.setTakeLevelDb(this.#takeLevelDb);
  }
}
