/** The example of a lesson sheet, heard with the band as the sheet has it played. */
import { beatsBefore, notesOfExample } from '../core/lesson/example.ts';
import { timelineOfSheet, type LessonSheet } from '../core/lesson/sheet.ts';
import type { Problem } from '../core/words/problem.ts';
import type { AudioPort, BandLevels, OpenPlayer } from './ports.ts';

/** The last note rings out. */
const AFTER_SECONDS = 1;

export class ExampleSound {
  readonly #audio: Pick<AudioPort, 'wake' | 'openPlayer'>;
  #sounds = $state.raw(false);
  #problem = $state.raw<Problem | null>(null);
  #player: OpenPlayer | null = null;
  /** Number of the latest play or stop: one that opens after another does not sound any more. */
  #turn = 0;

  constructor(audio: Pick<AudioPort, 'wake' | 'openPlayer'>) {
    this.#audio = audio;
  }

  /** Whether it sounds, or is about to. */
  get sounds(): boolean {
    return this.#sounds;
  }

  /** Why it did not sound, or null. */
  get problem(): Problem | null {
    return this.#problem;
  }

  /** From its beginning on; nothing for a sheet without an example. Needs a user's gesture the first time. */
  async play(sheet: LessonSheet, levels: BandLevels): Promise<void> {
    this.stop();
    const { example, feel, tempo, instrument } = sheet.file;
    if (example === undefined) return;
    const turn = this.#turn;
    this.#problem = null;
    this.#sounds = true;
    const woken = await this.#audio.wake();
    if (turn !== this.#turn) return;
    if (!woken.ok) return this.#fail(woken.problem);
    const before = beatsBefore(example, sheet.chart.meter.beatsPerBar);
    const firstBeatSeconds = (before * 60) / tempo;
    const timeline = timelineOfSheet(sheet, firstBeatSeconds);
    const notes = notesOfExample(example, timeline);
    const line = {
      notes,
      durationSeconds: Math.max(...notes.map(({ offsetSeconds }) => offsetSeconds)) + AFTER_SECONDS,
      instrument: example.instrument ?? instrument,
    };
    const settings = { feel, bpm: tempo, swing: timeline.swing, seed: 0, countInBars: 0 };
    const player = this.#audio.openPlayer(line, { timeline, settings, levels, firstBeatSeconds });
    this.#player = player;
    player.setBandLevels(levels);
    player.onEnded(() => this.stop());
    const playing = await player.play({ fromSeconds: 0, speed: 1, passage: null });
    if (turn === this.#turn && !playing.ok) this.#fail(playing.problem);
  }

  stop(): void {
    this.#turn++;
    this.#player?.dispose();
    this.#player = null;
    this.#sounds = false;
  }

  #fail(problem: Problem): void {
    this.stop();
    this.#problem = problem;
  }
}
