/** A take is heard from its beginning, with the playing screen as the player saw it: note by note, landing by landing. */
import { AimSoFar } from '../analysis/aim-so-far.ts';
import { aimOf } from '../core/grade/aims/aim-choices.ts';
import type { LiveState } from './live-state.svelte.ts';
import type { Review } from './phase.ts';
import type { Playback } from './playback.svelte.ts';
import type { PlayingSettings } from './playing-settings.ts';
import type { FramesPort } from './ports.ts';

export interface Performance {
  readonly review: Pick<Review, 'timeline' | 'report' | 'heard'>;
  readonly playback: Pick<Playback, 'play' | 'playing' | 'seconds'>;
  readonly live: Pick<LiveState, 'open' | 'heard' | 'draw'>;
  readonly settings: PlayingSettings;
  readonly frames: FramesPort;
  /** Called when the take is over, or can't be heard. */
  readonly onEnd: () => void;
}

/** The level that the screen is given while a note sounds, in dBFS: a kept take has no live level. */
const LEVEL_DB = -20;

/** Begins; returns a function that stops the screen. The sound comes from the playback. */
export function performTake({ review, playback, live, settings, frames, onEnd }: Performance): () => void {
  const { timeline, report, heard } = review;
  const notes = heard ?? [];
  const { referenceHz } = report.tuning;
  const aim = aimOf(settings.aim);
  const soFar = aim && new AimSoFar(aim, timeline);
  /** When each landing can be told: with its note, or a beat after a change that nothing met. */
  const told = report.landings.map(({ note, beat }) =>
    note === null ? timeline.beatMap.secondsAt(beat + 1) : report.notes[note]!.onsetSeconds,
  );
  let begun = -1;
  let landed = -1;
  live.open(settings, timeline);
  void playback.play(0);
  return frames.each(() => {
    const { seconds } = playback;
    const started = notes.filter(({ onsetSeconds }) => onsetSeconds <= seconds);
    const last = started.at(-1);
    const landings = report.landings.filter((_, i) => told[i]! <= seconds);
    const fresh = started.length !== begun || landings.length !== landed;
    if (fresh) soFar?.update(started.slice(0, -1), last ?? null, referenceHz);
    begun = started.length;
    landed = landings.length;
    live.heard({
      reading: {
        timeSeconds: seconds,
        midi: last !== undefined && last.offsetSeconds > seconds ? last.midi : null,
        levelDb: LEVEL_DB,
      },
      notes: [],
      landings: fresh ? { from: 0, landings } : null,
      aim: fresh ? (soFar?.count ?? null) : null,
      referenceHz,
      delayChangeSeconds: null,
    });
    live.draw(timeline, timeline.beatMap.beatAt(seconds));
    if (!playback.playing) onEnd();
  });
}
