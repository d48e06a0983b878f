/** Equal temperament: Hz against MIDI numbers. MIDI key 69 is A4; A4 is 440 Hz by ISO 16:1975. */

/** The standard pitch (ISO 16:1975). Every `midi` in the core is counted against it. */
export const STANDARD_A4_HZ = 440;

/** A4 as a MIDI key number. */
const A4_MIDI = 69;

/**
 * Fractional MIDI number of a frequency. Throws on what is no frequency.
 *
 * @example hzToMidi(440) // 69
 */
export function hzToMidi(hz: number, referenceHz: number = STANDARD_A4_HZ): number {
  return A4_MIDI + 12 * Math.log2(frequency(hz) / frequency(referenceHz));
}

/** Frequency of a fractional MIDI number, at a reference for A4. */
export function midiToHz(midi: number, referenceHz: number = STANDARD_A4_HZ): number {
  return frequency(referenceHz) * 2 ** ((midi - A4_MIDI) / 12);
}

/** Cents by which a reference for A4 stands above the standard: 442 Hz is +7.85. */
export const centsAboveStandard = (referenceHz: number): number =>
  1200 * Math.log2(frequency(referenceHz) / STANDARD_A4_HZ);

/** The reference for A4 that stands so many cents above the standard. */
export const referenceAtCents = (cents: number): number => STANDARD_A4_HZ * 2 ** (cents / 1200);

function frequency(hz: number): number {
  if (!(hz > 0) || !Number.isFinite(hz))
    throw new RangeError(`a frequency is above 0 Hz and finite, not ${hz}`);
  return hz;
}
