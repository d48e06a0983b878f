/** What plays along with a take that is heard again: the band as it played, or the player's own recording. */
import type { BandForm } from '../../core/band/form.ts';
import type { BandSettings } from '../../core/band/settings.ts';
import { beatMapOf } from '../../core/band/tempo.ts';
import { roundBeatMap, slowedBeatMap } from '../../core/chart/beat-maps.ts';
import { bad, good, type Outcome } from '../../core/base/outcome.ts';
import type { BandPlayer } from '../band/band-player.ts';
import { renderPassage, type BandPassage, type PassageSound } from '../band/band-stretches.ts';
import type { BandRenderer } from '../band/render-client.ts';
import type { RoundPlayer } from '../backing/round-player.ts';

/** A stretch of the take, in its seconds. */
export interface Stretch {
  readonly fromSeconds: number;
  readonly toSeconds: number;
}

/** Places are seconds of the take; speed is 1 as it was played, 0.5 half as fast. */
export interface Along {
  /** Gets ready to sound from a place on; answers when it is. */
  prepare(fromSeconds: number, speed: number): Promise<Outcome<void>>;
  /** Needs `prepare`. */
  start(atContextSeconds: number, fromSeconds: number): void;
  stop(fadeSeconds?: number): void;
  /** What sounds along with a stretch, as long as that at its speed; null where nothing does. */
  passage(stretch: Stretch, speed: number): Promise<Outcome<PassageSound | null>>;
  /** Where a passage is to sound: behind it are the levels. */
  readonly output: AudioNode | null;
}

export interface BandToFollow {
  readonly form: BandForm;
  readonly settings: BandSettings;
  /** Where the first downbeat lies in the take. */
  readonly firstBeatSeconds: number;
  readonly levels: () => BandPassage['levels'];
}

export function bandAlong(
  player: BandPlayer,
  renderer: Pick<BandRenderer, 'band'>,
  sampleRate: number,
  { form, settings, firstBeatSeconds, levels }: BandToFollow,
): Along {
  const map = beatMapOf(form, settings);
  const beatIn = (takeSeconds: number) => map.beatAt(takeSeconds - firstBeatSeconds);
  return {
    output: player.bus,
    prepare: (fromSeconds, speed) => player.prepare(form, settings, beatIn(fromSeconds), speed),
    start: (atContextSeconds, fromSeconds) =>
      void player.start({ atContextSeconds, fromBeat: beatIn(fromSeconds) }),
    stop: (fadeSeconds) => player.stop(fadeSeconds),
    passage: ({ fromSeconds, toSeconds }, speed) =>
      renderPassage(renderer, form, settings, sampleRate, {
        fromBeat: beatIn(fromSeconds),
        toBeat: beatIn(toSeconds),
        speed,
        levels: levels(),
      }),
  };
}

/**
 * A round of a recording, rendered when it is first needed, and again where the speed changes.
 * @param open renders it at a speed; a failure is reported once, and the take is played without it from then on
 * @param beatSeconds at speed 1
 */
export function roundAlong(
  open: (speed: number) => Promise<Outcome<RoundPlayer>>,
  beatSeconds: readonly number[],
  firstBeatSeconds: number,
): Along {
  const map = roundBeatMap(beatSeconds, firstBeatSeconds);
  let opened: { readonly player: RoundPlayer; readonly speed: number } | null = null;
  let refused = false;

  const ready = async (speed: number): Promise<Outcome<void>> => {
    if (opened?.speed === speed || refused) return good(undefined);
    const player = await open(speed);
    if (!player.ok) {
      // The take can be played without the recording.
      refused = true;
      return bad('backing.takeAlone', { cause: player.problem });
    }
    opened?.player.dispose();
    opened = { player: player.value, speed };
    return good(undefined);
  };
  return {
    get output() {
      return opened?.player.bus ?? null;
    },
    prepare: (_, speed) => ready(speed),
    // There is no count-in here: before the first downbeat only the take is heard.
    start: (atContextSeconds, fromSeconds) => {
      if (opened === null) return;
      const fromBeat = map.beatAt(fromSeconds);
      const wait = fromBeat < 0 ? (firstBeatSeconds - fromSeconds) / opened.speed : 0;
      opened.player.start({ atContextSeconds: atContextSeconds + wait, fromBeat: Math.max(0, fromBeat) });
    },
    stop: (fadeSeconds) => opened?.player.stop(fadeSeconds),
    passage: async ({ fromSeconds, toSeconds }, speed) => {
      const prepared = await ready(speed);
      if (!prepared.ok) return prepared;
      return good(opened?.player.passage(map.beatAt(fromSeconds), map.beatAt(toSeconds)) ?? null);
    },
  };
}

/** The beats of a round at another speed. */
export const slowedRound = (beatSeconds: readonly number[], speed: number): readonly number[] => {
  const map = slowedBeatMap(roundBeatMap(beatSeconds, 0), speed);
  return beatSeconds.map((_, beat) => map.secondsAt(beat));
};
