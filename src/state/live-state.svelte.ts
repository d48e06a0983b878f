/** What the playing screen sees while a take goes on: the moment, and the landings so far. */
import type { AimCount } from '../analysis/aim-so-far.ts';
import type { Heard } from '../analysis/messages.ts';
import { intervalAsRead, timelineAsRead } from '../core/chart/as-read.ts';
import { chordKeys } from '../core/chart/keys-through.ts';
import type { Timeline } from '../core/chart/timeline.ts';
import { aimChoiceOf, aimOf, choiceForAim } from '../core/grade/aims/aim-choices.ts';
import {
  aimIsForArrival,
  aimTonesReader,
  targetReader,
  type TargetTone,
} from '../core/grade/aims/targets.ts';
import type { Aim } from '../core/grade/aims/aim.ts';
import type { Chord } from '../core/music/chord.ts';
import { instrumentOf } from '../core/music/instruments.ts';
import { CONCERT, readingOf } from '../core/music/reading.ts';
import type { LiveReading } from '../core/take/note.ts';
import { PlayedSignal } from '../core/take/played-signal.ts';
import { landingAsRead } from '../core/report/as-read.ts';
import type { Landing } from '../core/take/schema.ts';
import { STANDARD_A4_HZ } from '../core/music/temperament.ts';
import type { PlayingSettings } from './playing-settings.ts';
import { cachingNextChange, liveMomentAt, type AimTones, type LiveMoment } from './live-moment.ts';

/** The aim in hand while a take goes on. */
export interface LiveAim extends AimCount {
  /** Id of an aim of the house, or of a teacher's own. */
  readonly id: string;
  /** What the teacher calls it; null for an aim of the house. */
  readonly ownName: string | null;
}

export class LiveState {
  #now = $state.raw<LiveMoment | null>(null);
  #landings = $state.raw<readonly Landing[]>([]);
  #aim = $state.raw<LiveAim | null>(null);
  #reading: LiveReading | null = null;
  #referenceHz = STANDARD_A4_HZ;
  #signal: PlayedSignal | null = null;
  /** At what pitch the player reads; the chords of the take, read so. */
  #pitch = CONCERT;
  #read: Timeline | null = null;
  #interval = CONCERT.interval;
  #targetsOver: (chord: Chord) => readonly TargetTone[] = () => [];
  #aimTones: AimTones | undefined;

  /** As the player reads it. */
  get now(): LiveMoment | null {
    return this.#now;
  }

  get landings(): readonly Landing[] {
    return this.#landings;
  }

  /** What the take tries for, and how often that was met so far; null for an id that is no aim's. */
  get aim(): LiveAim | null {
    return this.#aim;
  }

  /** Takes in what was heard; true where the player, in the take, gave the signal agreed on. */
  heard({ reading, notes, landings, aim, referenceHz }: Heard): boolean {
    this.#reading = reading;
    if (landings !== null)
      this.#landings = [
        ...this.#landings.slice(0, landings.from),
        ...landings.landings.map((landing) => landingAsRead(landing, this.#interval)),
      ];
    if (aim !== null && this.#aim !== null && (aim.hits !== this.#aim.hits || aim.of !== this.#aim.of))
      this.#aim = { ...this.#aim, ...aim };
    if (referenceHz !== null) this.#referenceHz = referenceHz;
    const given = this.#signal?.hears(notes) ?? false;
    return given && this.#now !== null && this.#now.beat >= 0;
  }

  /**
   * Before the first frame: what the player aims for, and whether a signal may be played.
   * @param asked the leading aim of a lesson sheet, in place of the player's own choice
   */
  open(
    { aim, playedSignal, instrument, pitch }: PlayingSettings,
    timeline: Timeline,
    asked: Aim | null = null,
  ): void {
    const tried = asked ?? aimOf(aim);
    this.#aim = tried === null ? null : { id: tried.id, ownName: tried.own?.name ?? null, hits: 0, of: 0 };
    const played = instrumentOf(instrument);
    this.#pitch = readingOf(played, pitch);
    this.#read = cachingNextChange(timelineAsRead(timeline, this.#pitch));
    this.#interval = intervalAsRead(timeline, this.#read);
    this.#targetsOver = targetReader(
      asked?.own ? choiceForAim(asked) : aimChoiceOf(aim),
      chordKeys(this.#read),
    );
    this.#aimTones = {
      onArrival: tried === null || aimIsForArrival(tried),
      over: aimTonesReader(tried, chordKeys(this.#read)),
    };
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
      this.#aimTones,
    );
  }

  /** Nothing moves any more; the landings stay. */
  halt(): void {
    this.#now = null;
  }

  clear(): void {
    this.#now = null;
    this.#landings = [];
    this.#aim = null;
    this.#reading = null;
    this.#read = null;
    this.#pitch = CONCERT;
    this.#interval = CONCERT.interval;
    this.#referenceHz = STANDARD_A4_HZ;
  }
}
