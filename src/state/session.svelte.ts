/** One take from the first click to its review: what is going on now, as one tagged union. */
import type { Chord, ChordTone } from '../core/music/chord.ts';
import type { ChordSpan, Timeline } from '../core/chart/timeline.ts';
import type { Report } from '../core/report/schema.ts';
import type { Library } from './library.svelte.ts';
import type { AnalysisPort, AudioPort, FramesPort, TakeAudio, TakesPort } from './ports.ts';
import type { Setup } from './setup.svelte.ts';
import type { TakeDetails, TakeId } from './take.ts';
import type { Playback } from './playback.svelte.ts';

/** A take that can be looked at. `id` is null when it could not be kept (and `notices` says so). */
export interface Review {
  readonly id: TakeId | null;
  readonly details: TakeDetails;
  readonly report: Report;
  readonly audio: TakeAudio;
  readonly timeline: Timeline;
}

export type Phase =
  | { readonly kind: 'ready' }
  /** What is being opened, to be read in a sentence: "the microphone", "the band". */
  | { readonly kind: 'opening'; readonly what: string }
  | { readonly kind: 'counting-in' }
  | { readonly kind: 'playing' }
  /** progress from 0 to 1. */
  | { readonly kind: 'grading'; readonly progress: number }
  | { readonly kind: 'review'; readonly review: Review }
  /** Something of the outside world is in the way; `wayOn` is what the one button offers. */
  | { readonly kind: 'trouble'; readonly sentence: string; readonly wayOn: 'try again' | 'back' };

export interface LiveNote {
  /** "F#4". */
  readonly name: string;
  readonly cents: number;
  readonly midi: number;
  /** From the chord of the moment; null where no chord sounds. */
  readonly degree: string | null;
  readonly role: Report['notes'][number]['role'];
}

/** The moment, once per animation frame while counting in or playing. Bars and choruses count from 0. */
export interface Live {
  /** From the first downbeat; negative during the count-in. */
  readonly beat: number;
  readonly beatInBar: number;
  readonly bar: number;
  readonly chorus: number;
  readonly chordNow: Chord | null;
  /** The next change, the chord's tones with it, and how far off it is. */
  readonly next: ChordSpan | null;
  readonly beatsToNext: number | null;
  /** Third and seventh of the next chord: where to land. */
  readonly targets: readonly ChordTone[];
  readonly note: LiveNote | null;
  readonly levelDb: number;
}

export declare class Session {
  constructor(ports: {
    readonly setup: Setup;
    readonly library: Library;
    readonly audio: AudioPort;
    readonly analysis: AnalysisPort;
    readonly takes: TakesPort;
    readonly frames: FramesPort;
    readonly today: () => Date;
  });
  get phase(): Phase;
  /** Everything worth telling that does not stop the take. Newest last. */
  get notices(): readonly string[];
  /** null unless counting in or playing. */
  get live(): Live | null;
  /** The timeline of the take in hand, null when ready. */
  get timeline(): Timeline | null;
  /** Landings as they happen; the same shape as the report's. */
  get landingsSoFar(): Report['landings'];
  /** null outside the review. */
  get playback(): Playback | null;

  /** Microphone, band, count-in, take. Needs a user's gesture the first time. */
  start(): Promise<void>;
  /** Ends the take and grades it; while counting in it just goes back. */
  stop(): Promise<void>;
  /** From review or trouble: starts with the same setup. */
  again(): Promise<void>;
  /** Back to ready. */
  close(): void;
  /** Grades a file against the setup's chart. */
  openRecording(file: File, firstBeatSeconds?: number): Promise<void>;
  /** Renders the demo line and grades it like a recording. */
  playDemo(): Promise<void>;
  /** Reviews a stored take, or grades one that was cut off. */
  openTake(id: TakeId): Promise<void>;
  dismissNotice(sentence: string): void;
  dispose(): void;
}
