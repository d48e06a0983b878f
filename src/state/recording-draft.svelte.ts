/** What a recording is graded by, while the player says it: chart, key, tempo, feel, and where the first bar begins. */
import { Setup } from './setup.svelte.ts';
import { usualPractice } from './practice-settings.ts';
import type { Settings } from './settings.ts';
import { setupOfTake } from './take-setup.ts';
import type { TakeDetails } from './take.ts';
import type { TakePlan } from './take-plan.ts';

const nearestMs = (seconds: number): number => Math.round(Math.max(0, seconds) * 1000) / 1000;

export class RecordingDraft {
  /** A set-up of its own: nothing of it is remembered. */
  readonly setup: Setup;
  #firstBeatSeconds = $state.raw(0);

  private constructor(setup: Setup, firstBeatSeconds: number) {
    this.setup = setup;
    this.firstBeatSeconds = firstBeatSeconds;
  }

  /** From what is set up now. A recording goes through the whole form, whatever part of it is practised. */
  static of(settings: Settings, firstBeatSeconds: number): RecordingDraft {
    const value = { ...settings, ...usualPractice };
    const setup = new Setup({
      settings: { load: () => Promise.resolve({ value, messages: [] }), save: () => undefined },
    });
    setup.takeOver(value);
    return new RecordingDraft(setup, firstBeatSeconds);
  }

  /** From what a take was graded by. */
  static ofTake(details: TakeDetails, settings: Settings): RecordingDraft {
    return RecordingDraft.of({ ...settings, ...setupOfTake(details) }, details.firstBeatSeconds ?? 0);
  }

  get firstBeatSeconds(): number {
    return this.#firstBeatSeconds;
  }

  /** To the millisecond, from the first sample on. */
  set firstBeatSeconds(seconds: number) {
    this.#firstBeatSeconds = nearestMs(seconds);
  }

  /** Moves the first bar by so many beats of the tempo. */
  moveByBeats(beats: number): void {
    this.firstBeatSeconds += (beats * 60) / this.setup.settings.bpm;
  }

  /** Of a take that is graded by this; null where the chart can't be read. */
  plan(today: Date): TakePlan['details'] | null {
    const { timeline } = this.setup;
    return timeline.ok ? this.setup.planTake(timeline.value, today).details : null;
  }

  /** What changes where a take is graded by this; null where the chart can't be read. */
  change(today: Date): Partial<TakeDetails> | null {
    const plan = this.plan(today);
    if (plan === null) return null;
    const { chartText, key, bpm, feel, swing, setup } = plan;
    return {
      chartText,
      key,
      bpm,
      feel,
      swing,
      ...(setup && { setup }),
      firstBeatSeconds: this.firstBeatSeconds,
    };
  }
}
