/** Reports when the audio clock falls behind the machine's: the browser had no time to compute its sound. */

/** Messages wait while the page is busy; of those that come in so long a time, one comes nearly at once. */
const WINDOW_SECONDS = 1;
/** Two clocks that are right differ by a few parts in 100,000; so much per second is allowed for. */
const ALLOWED_SKEW = 1e-3;
/**
 * An output that runs dry now and then costs a few hundredths of a second, which is heard as a crackle. So much together is
 * a band that stutters, and a microphone of which whole notes are missing.
 */
export const BEHIND_SECONDS = 0.25;

export interface ClockWatch {
  /**
   * To be called with each hop.
   * @param audioSeconds its place on the audio clock
   * @param machineSeconds when it came, on any clock that runs evenly
   */
  look(audioSeconds: number, machineSeconds: number): void;
  /** The audio clock stood still on purpose: what is known of it holds no longer. */
  restart(): void;
}

/**
 * What an output that ran dry leaves out of the microphone has no gap on the audio clock: that clock waits, and the browser
 * throws away what the microphone brings meanwhile (Chromium, measured with `tests/bench/long-browser.ts --pulse`).
 * @param behind called each time that the audio clock has fallen behind by `BEHIND_SECONDS` more
 * @example const watch = clockWatch(() => tell()); watch.look(hop.startFrame / 48000, performance.now() / 1000)
 */
export function clockWatch(behind: () => void): ClockWatch {
  let usual: number | null = null;
  let windowEnd: number | null = null;
  let least = Infinity;
  const restart = () => {
    usual = windowEnd = null;
    least = Infinity;
  };
  const endWindow = () => {
    usual = Math.min(usual === null ? least : usual + ALLOWED_SKEW * WINDOW_SECONDS, least);
    if (least - usual >= BEHIND_SECONDS) {
      usual = least;
      behind();
    }
    least = Infinity;
  };
  return {
    look: (audioSeconds, machineSeconds) => {
      windowEnd ??= machineSeconds + WINDOW_SECONDS;
      least = Math.min(least, machineSeconds - audioSeconds);
      if (machineSeconds < windowEnd) return;
      endWindow();
      windowEnd = machineSeconds + WINDOW_SECONDS;
    },
    restart,
  };
}
