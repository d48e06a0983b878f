/** What the playing screen sees while a take goes on: the moment, and the landings so far. */
import type { Heard } from '../analysis/messages.ts';
import { intervalAsRead, timelineAsRead } from '../core/chart/as-read.ts';
import { chordKeys } from '../core/chart/keys-through.ts';
import type { Timeline } from '../core/chart/timeline.ts';
import { aimChoiceOf, targetReader, type TargetTone } from '../core/grade/aims/targets.ts';
import type { Chord } from '../core/music/chord.ts';
import { instrumentOf } from '../core/music/instruments.ts';
import { CONCERT, readingOf } from '../core/music/reading.ts';
import type { LiveReading } from '../core/take/note.ts';
import { PlayedSignal } from '../core/take/played-signal.ts';
import { landingAsRead } from '../core/report/as-read.ts';
import type { Landing } from '../core/take/schema.ts';
import { STANDARD_A4_HZ } from '../core/music/temperament.ts';
import type { PlayingSettings } from './playing-settings.ts';
import { cachingNextChange, liveMomentAt, type LiveMoment } from './live-moment.ts';

export class LiveState {
  #now = $state.raw<LiveMoment | null>(null);
  #landings = $state.raw<readonly Landing[]>([]);
  #reading: LiveReading | null = null;
  #referenceHz = STANDARD_A4_HZ;
  #signal: PlayedSignal | null = null;
  /** At what pitch the player reads; the chords of the take, read so. */
  #pitch = CONCERT;
  #read: Timeline | null = null;
  #interval = CONCERT.interval;
  #targetsOver: (chord: Chord) => readonly TargetTone[] = () => [];

  /** As the player reads it. */
  get now(): LiveMoment | null {
    return this.#now;
  }

  get landings(): readonly Landing[] {
    return this.#landings;
  }

  /** Takes in what was heard; true where the player, in the take, gave the signal agreed on. */
  heard({ reading, notes, landings, referenceHz }: Heard): boolean {
    this.#reading = reading;
    if (landings !== null) this.#landings = landings.map((landing) => landingAsRead(landing, this.#interval));
    if (referenceHz !== null) this.#referenceHz = referenceHz;
    const given = this.#signal?.hears(notes) ?? false;
    return given && this.#now !== null && this.#now.beat >= 0;
  }

  /** Before the first frame: what the player aims for, and whether a signal may be played. */
  open({ aim, playedSignal, instrument, pitch }: PlayingSettings, timeline: Timeline): void {
    const played = instrumentOf(instrument);
    this.#pitch = readingOf(played, pitch);
    this.#read = cachingNextChange(timelineAsRead(timeline, this.#pitch));
    this.#interval = intervalAsRead(timeline, this.#read);
    this.#targetsOver = targetReader(aimChoiceOf(aim), chordKeys(this.#read));
    this.#signal = playedSignal ? new PlayedSignal(played?.lowestMidi ?? 0) : null;
  }

  /** Once per frame of the display. */
  draw(timeline: Timeline, beat: number): void {
    const { semitones } = this.#pitch;
    this.#now = liveMomentAt(
      this.#read ?? timeline,
      beat,
      this.#reading,
      this.#referenceHz,
      this.#targetsOver,
      semitones,
    );
  }

  /** Nothing moves any more; the landings stay. */
  halt(): void {
    this.#now = null;
  }

  clear(): void {
    this.#now = null;
    this.#landings = [];
    this.#reading = null;
    this.#read = null;
    this.#pitch = CONCERT;
    this.#interval = CONCERT.interval;
    this.#referenceHz = STANDARD_A4_HZ;
  }
}
