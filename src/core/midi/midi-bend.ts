/** Pitch bend of one MIDI channel over time, in semitones. */

/** Bend range before a file sets one (General MIDI): two semitones in both directions. */
const DEFAULT_RANGE_SEMITONES = 2;
const FULL_BEND = 8192;

/** Controllers that set the bend range: registered parameter 0 (MIDI 1.0). */
const PARAMETER_MSB = 101;
const PARAMETER_LSB = 100;
const OTHER_PARAMETER_MSB = 99;
const OTHER_PARAMETER_LSB = 98;
const DATA_MSB = 6;
const DATA_LSB = 38;

export interface BendTrack {
  bend(seconds: number, value: number): void;
  control(controller: number, value: number): void;
  /** Bend in force at a time. */
  at(seconds: number): number;
  /**
   * The bend that a note of this stretch is heard at: the median by time. It is the held pitch where a string
   * is bent and held, and the centre where the bend is a vibrato.
   */
  heard(fromSeconds: number, toSeconds: number): number;
  /** How many bends `heard` goes through for a note that began at this time and ends with the last bend so far. */
  bendsSince(seconds: number): number;
}

export function bendTrack(): BendTrack {
  const times: number[] = [-Infinity];
  const semitones: number[] = [0];
  let range = DEFAULT_RANGE_SEMITONES;
  let parameterMsb = 127;
  let parameterLsb = 127;

  const indexAt = (seconds: number) => {
    let low = 0;
    let high = times.length;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (times[middle]! <= seconds) low = middle;
      else high = middle;
    }
    return low;
  };

  return {
    bend(seconds, value) {
      times.push(seconds);
      semitones.push((value / FULL_BEND) * range);
    },
    control(controller, value) {
      if (controller === PARAMETER_MSB) parameterMsb = value;
      else if (controller === PARAMETER_LSB) parameterLsb = value;
      else if (controller === OTHER_PARAMETER_MSB || controller === OTHER_PARAMETER_LSB) parameterMsb = 127;
      else if (parameterMsb === 0 && parameterLsb === 0) {
        if (controller === DATA_MSB) range = value;
        if (controller === DATA_LSB) range = Math.floor(range) + value / 100;
      }
    },
    at: (seconds) => semitones[indexAt(seconds)]!,
    heard(fromSeconds, toSeconds) {
      const first = indexAt(fromSeconds);
      /** How long each bend stands. */
      const lasting = new Map<number, number>();
      for (let k = first; k < times.length && (times[k]! < toSeconds || k === 0); k++) {
        const start = Math.max(times[k]!, fromSeconds);
        const seconds = Math.min(times[k + 1] ?? Infinity, toSeconds) - start;
        lasting.set(semitones[k]!, (lasting.get(semitones[k]!) ?? 0) + seconds);
      }
      let left = (toSeconds - fromSeconds) / 2;
      for (const [bend, seconds] of [...lasting].sort(([a], [b]) => a - b)) {
        left -= seconds;
        if (left <= 0) return bend;
      }
      return semitones[first]!;
    },
    bendsSince: (seconds) => times.length - indexAt(seconds),
  };
}
