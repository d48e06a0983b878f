import { INNER_RATE, LONG_LAGS } from './settings.ts';
import { hzToMidi, midiToHz } from '../../music/temperament.ts';

/** How far a peak of the autocorrelation may lie from where it is sought, as a share of one period. */
const REACH = 0.045;
/** A lower peak says nothing about the pitch. */
const LEAST_PEAK = 0.2;
/** A later peak must reach this share of the first one. */
const LATER_SHARE = 0.6;

/**
 * Refines a pitch by the peaks of an autocorrelation at one, two, four … of its periods, each read by a parabola: the later the
 * peak, the finer the period. A fractional MIDI number, or null where no peak tells.
 */
export function finePitch(correlation: Float32Array, midi: number): number | null {
  let period = INNER_RATE / midiToHz(midi);
  let first = 0;
  for (let periods = 1; ; periods *= 2) {
    const centre = periods * period;
    const low = Math.max(2, Math.floor(centre * (1 - REACH / periods)));
    const high = Math.ceil(centre * (1 + REACH / periods));
    if (high >= LONG_LAGS - 2) break;
    let peak = low;
    for (let lag = low + 1; lag <= high; lag++) if (correlation[lag]! > correlation[peak]!) peak = lag;
    const left = correlation[peak - 1]!;
    const top = correlation[peak]!;
    const right = correlation[peak + 1]!;
    const curve = left - 2 * top + right;
    const shift = (0.5 * (left - right)) / curve;
    if (curve >= 0 || Math.abs(shift) > 1) break;
    if (periods === 1) first = top;
    else if (top < LATER_SHARE * first) break;
    period = (peak + shift) / periods;
  }
  return first < LEAST_PEAK ? null : hzToMidi(INNER_RATE / period);
}
