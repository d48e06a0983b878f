/** What the line needs of the playback: where it is, and where it is sent. */
import type { Stretch } from '../../state/playback.svelte.ts';

export interface LineTransport {
  /** Where the playback is, in seconds, or null. */
  seconds(): number | null;
  /** What is gone round, in seconds, or null. */
  readonly loop: Stretch | null;
  seek(seconds: number): void;
  /** Bars were marked: from and to in beats. */
  mark(fromBeat: number, toBeat: number): void;
}
