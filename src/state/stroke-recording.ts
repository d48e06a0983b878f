/** The clicks of a sound check while they sound, and what the microphone records of the strokes with them. */
import type { Hop } from '../audio/microphone/hop.ts';
import type { PlayingSounds } from '../audio/playback/play-sounds.ts';
import { bad, type Outcome } from '../core/base/outcome.ts';
import { fromPcm16 } from '../core/files/sound/pcm16.ts';
import { strokeClicks } from '../core/room/check/stroke-clicks.ts';
import { CLICK_GAP_SECONDS, measureStrokes, type StrokeDelay } from '../core/room/check/stroke-delay.ts';
import type { AudioPort } from './ports.ts';
import { Recording } from './recording.ts';

/** Lost sound of this length moves no stroke by more than the strokes scatter. */
const MOST_LOST_SECONDS = 0.005;

export class StrokeRecording {
  readonly #playing: PlayingSounds;
  readonly #recording: Recording;
  /** How many of the first clicks only count in. */
  readonly #countedIn: number;
  readonly #lastFrame: number;
  readonly #ended: Promise<void>;
  #end: () => void = () => undefined;

  /** Plays the clicks. */
  constructor(audio: Pick<AudioPort, 'playSounds'>, sampleRate: number) {
    const { sounds, silenceSeconds, countedIn } = strokeClicks(sampleRate);
    this.#countedIn = countedIn;
    this.#playing = audio.playSounds(sounds, silenceSeconds);
    this.#recording = new Recording(sampleRate);
    this.#lastFrame = this.#playing.startFrames.at(-1)! + Math.round(CLICK_GAP_SECONDS * sampleRate);
    this.#ended = new Promise((resolve) => (this.#end = resolve));
  }

  add(hop: Hop): void {
    this.#recording.add(hop);
    if (hop.startFrame + hop.samples.length >= this.#lastFrame) this.#end();
  }

  /** Silences the clicks and ends the recording before they are over. */
  stop(): void {
    this.#playing.stop();
    this.#end();
  }

  /** Resolves when the last stroke can have been recorded, or after `stop`. */
  get ended(): Promise<void> {
    return this.#ended;
  }

  measure(): Outcome<StrokeDelay> {
    const { sampleRate, lostFrames, startSeconds } = this.#recording;
    if (startSeconds === null || lostFrames > MOST_LOST_SECONDS * sampleRate)
      return bad('soundCheck.strokesLost');
    const seconds = this.#playing.startFrames.map((frame) => frame / sampleRate - startSeconds);
    const [countIn, clicks] = [seconds.slice(0, this.#countedIn), seconds.slice(this.#countedIn)];
    return measureStrokes(fromPcm16(this.#recording.whole()), sampleRate, countIn, clicks);
  }
}
