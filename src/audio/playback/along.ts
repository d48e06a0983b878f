/** What plays along with a take that is heard again: the band as it played, or the player's own recording. */
import type { BandForm } from '../../core/band/form.ts';
import type { BandSettings } from '../../core/band/settings.ts';
import { beatMapOf } from '../../core/band/tempo.ts';
import { roundBeatMap } from '../../core/chart/beat-maps.ts';
import { bad, good, type Outcome } from '../../core/base/outcome.ts';
import type { BandPlayer } from '../band/band-player.ts';
import type { RoundPlayer } from '../backing/round-player.ts';

/** Places are seconds of the take. */
export interface Along {
  /** Gets ready to sound from a place on; answers when it is. */
  prepare(fromSeconds: number): Promise<Outcome<void>>;
  /** Needs `prepare`. */
  start(atContextSeconds: number, fromSeconds: number): void;
  stop(fadeSeconds?: number): void;
}

/** @param firstBeatSeconds where the first downbeat lies in the take */
export function bandAlong(
  player: BandPlayer,
  form: BandForm,
  settings: BandSettings,
  firstBeatSeconds: number,
): Along {
  const map = beatMapOf(form, settings);
  const beatIn = (takeSeconds: number) => map.beatAt(takeSeconds - firstBeatSeconds);
  return {
    prepare: (fromSeconds) => player.prepare(form, settings, beatIn(fromSeconds)),
    start: (atContextSeconds, fromSeconds) =>
      void player.start({ atContextSeconds, fromBeat: beatIn(fromSeconds) }),
    stop: (fadeSeconds) => player.stop(fadeSeconds),
  };
}

/**
 * A round of a recording, rendered when it is first needed.
 * @param open renders it; a failure is reported once, and the take is played without it from then on
 */
export function roundAlong(
  open: () => Promise<Outcome<RoundPlayer>>,
  beatSeconds: readonly number[],
  firstBeatSeconds: number,
): Along {
  const map = roundBeatMap(beatSeconds, firstBeatSeconds);
  let player: RoundPlayer | null = null;
  let refused = false;
  return {
    prepare: async () => {
      if (player !== null || refused) return good(undefined);
      const opened = await open();
      if (!opened.ok) {
        // The take can be played without the recording.
        refused = true;
        return bad('backing.takeAlone', { cause: opened.problem });
      }
      player = opened.value;
      return good(undefined);
    },
    // There is no count-in here: before the first downbeat only the take is heard.
    start: (atContextSeconds, fromSeconds) => {
      const fromBeat = map.beatAt(fromSeconds);
      const wait = fromBeat < 0 ? firstBeatSeconds - fromSeconds : 0;
      player?.start({ atContextSeconds: atContextSeconds + wait, fromBeat: Math.max(0, fromBeat) });
    },
    stop: (fadeSeconds) => player?.stop(fadeSeconds),
  };
}
