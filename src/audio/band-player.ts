import type { BandForm } from '../core/band/form.ts';
import type { BandPart } from '../core/band/events.ts';
import type { BandSettings } from '../core/band/settings.ts';
import type { Outcome } from '../core/outcome.ts';
import type { BandClock } from './clock.ts';

export interface BandStart {
  /** Context time of the first sound (the count-in); default: as soon as it can sound. */
  readonly atContextSeconds?: number;
  /** Beat to begin at; default: the count-in. Used to play along with a take. */
  readonly fromBeat?: number;
}

/** Plays a band by the audio clock. One player plays one arrangement at a time. */
export interface BandPlayer {
  /** The band's sum, behind all levels: connect it to a capture worklet to take it out of the microphone. */
  readonly bus: AudioNode;
  readonly clock: BandClock | null;
  /** Renders the count-in and the first bars; the rest follows while it plays. */
  prepare(form: BandForm, settings: BandSettings): Promise<Outcome<void>>;
  /** Needs `prepare`. Returns the clock of this run. */
  start(options?: BandStart): BandClock;
  /** Fades and stops. Safe to call at any time. */
  stop(fadeSeconds?: number): void;
  /** 0 dB is the part's own balance; clamped to -60 (silent) .. +6. Takes effect while playing, with a soft ramp. */
  setPartLevelDb(part: BandPart, levelDb: number): void;
  setPartMuted(part: BandPart, muted: boolean): void;
  /** -60 (silent) to 0. Starts at `quietStartDb`. */
  setMasterLevelDb(levelDb: number): void;
  dispose(): void;
}
