/**
 * Latency in one place: every delay between the audio clock, the player and the recording, and where it is added.
 *
 * The band's first downbeat is scheduled on the audio clock. It reaches the ear later, by the output delay; the player
 * plays with what is heard; and the sound reaches the recording later again, by the input delay. Both delays together
 * are the **round trip**. So:
 *
 * | what is wanted | what is added | function |
 * | --- | --- | --- |
 * | the beat that the screen shows | the output delay is taken from the clock | `heardClockSeconds` |
 * | the first downbeat in a take from the microphone | the round trip | `firstBeatInRecording` |
 * | the first downbeat in a take by MIDI | nothing: its take begins, and its notes arrive, in heard time | `firstBeatInHeardTime` |
 * | the round trip, measured by a sound check or set by hand | nothing | `chooseRoundTrip` |
 * | the round trip that nobody has measured | twice the output delay | `assumedRoundTripSeconds` |
 * | the first downbeat, when the round trip turns out to be another | the difference of the two | `firstBeatAfterChange` |
 *
 * All times are in seconds.
 */

/** What a browser tells about its output. A browser that does not tell a delay gives undefined or NaN; both count as 0. */
export interface OutputDelays {
  readonly baseLatency?: number;
  readonly outputLatency?: number;
}

const known = (seconds: number | undefined): number =>
  seconds !== undefined && Number.isFinite(seconds) ? seconds : 0;

/** The moment of the audio clock that reaches the ear now. What the screen shows is read at this time. */
export const heardClockSeconds = ({
  currentTime,
  outputLatency,
}: { readonly currentTime: number } & OutputDelays): number => currentTime - known(outputLatency);

/**
 * No browser tells how long the sound takes from the string to the clock. The input and output buffers of one machine
 * are commonly alike, so the output delay counts twice. Chromium on Linux tells 10 + 30 ms, which gives 80 ms; a loop
 * through a real sound card took about 90. A sound check measures the true value.
 */
const OUTPUT_AND_INPUT = 2;

/** The round trip where nobody has measured it. */
export const assumedRoundTripSeconds = ({ baseLatency, outputLatency }: OutputDelays): number =>
  OUTPUT_AND_INPUT * (known(baseLatency) + known(outputLatency));

/** What a sound check has measured of the round trip. */
export interface MeasuredDelay {
  /** null where nothing came back to measure it by. */
  readonly delaySeconds: number | null;
  /** Set by the player in place of what was measured; null where nothing was. */
  readonly setSeconds: number | null;
}

/** The round trips that can be set by hand; the longest of wireless headphones is about half a second. */
export const SET_DELAY_LIMITS_SECONDS = { least: 0, most: 0.6 } as const;

export interface RoundTrip {
  readonly seconds: number;
  /** An assumed round trip is replaced as soon as a measured one is known. */
  readonly basis: 'set' | 'measured' | 'assumed';
}

/**
 * The round trip that a take counts with.
 * @param measured null where no sound check was made with these devices
 * @param assumedSeconds asked only where nothing is measured
 */
export function chooseRoundTrip(measured: MeasuredDelay | null, assumedSeconds: () => number): RoundTrip {
  if (measured === null) return { seconds: assumedSeconds(), basis: 'assumed' };
  const { setSeconds, delaySeconds } = measured;
  if (setSeconds !== null) return { seconds: setSeconds, basis: 'set' };
  if (delaySeconds === null) return { seconds: assumedSeconds(), basis: 'assumed' };
  return { seconds: Math.max(0, delaySeconds), basis: 'measured' };
}

/**
 * Where the first downbeat lies in a recording, from its first sample.
 * @param firstBeatClockSeconds when the downbeat is scheduled, on the audio clock
 * @param startClockSeconds when the first sample was recorded, on the audio clock
 */
export const firstBeatInRecording = (
  firstBeatClockSeconds: number,
  startClockSeconds: number,
  roundTripSeconds: number,
): number => firstBeatClockSeconds - startClockSeconds + roundTripSeconds;

/**
 * Where the first downbeat lies in a take that is timed by what the player hears: MIDI messages arrive at once.
 * @param startHeardSeconds `heardClockSeconds` at the take's beginning
 */
export const firstBeatInHeardTime = (firstBeatClockSeconds: number, startHeardSeconds: number): number =>
  firstBeatClockSeconds - startHeardSeconds;

/** The same downbeat when the round trip is another than the one it was placed by. */
export const firstBeatAfterChange = (
  firstBeatSeconds: number,
  before: { readonly roundTripSeconds: number },
  after: { readonly roundTripSeconds: number },
): number => firstBeatSeconds + (after.roundTripSeconds - before.roundTripSeconds);

/** The longest round trip that a wireless speaker makes. */
const LONGEST_ROUND_TRIP_SECONDS = 1;

/** Whether a delay that was found in a take can be a round trip; anything else is an accident of the search. */
export const canBeRoundTrip = (seconds: number): boolean =>
  seconds > 0 && seconds < LONGEST_ROUND_TRIP_SECONDS;
