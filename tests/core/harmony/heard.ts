/** What the network might give for chords that are known: the chord is likely, one other almost as much, the rest hardly. */
import { random } from '../../../fixtures/lines/random.ts';
import { numberOfSymbol } from '../../../src/core/harmony/chord-names.ts';
import { NO_CHORD } from '../../../src/core/harmony/chord-types.ts';
import { STATES } from '../../../src/core/harmony/decode.ts';

/** Each bar's chords, one symbol or two that share it. */
export const beatsOf = (bars: string, beatsPerBar = 4): readonly string[] =>
  bars
    .split('|')
    .map((bar) => bar.trim())
    .filter((bar) => bar !== '')
    .flatMap((bar) => {
      const chords = bar.split(' ');
      return Array.from(
        { length: beatsPerBar },
        (_, b) => chords[Math.floor((b * chords.length) / beatsPerBar)]!,
      );
    });

/** @param wrong share of beats at which another chord looks likelier */
export function heardAs(symbols: readonly string[], wrong: number, seed: number): Float32Array {
  const dice = random(seed);
  const logs = new Float32Array(symbols.length * STATES).fill(Math.log(0.1 / STATES));
  symbols.forEach((symbol, b) => {
    const right = symbol === 'N.C.' ? NO_CHORD : numberOfSymbol(symbol)!;
    const other = dice.whole(0, STATES - 2);
    const slips = dice.chance(wrong);
    logs[b * STATES + other] = Math.log(slips ? 0.6 : 0.2);
    logs[b * STATES + right] = Math.log(slips ? 0.3 : 0.7);
  });
  return logs;
}
