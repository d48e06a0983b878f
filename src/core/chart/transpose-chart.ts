/** A chart in another key. */
import type { Chord, Key } from '../music/chord.ts';
import { keyOn, parseKey } from '../music/keys.ts';
import { parseChord, splitSymbol } from '../music/parse-chord.ts';
import { intervalBetween, moveByInterval, wrapPitchClass } from '../music/spelling.ts';
import type { Chart, ChartBar } from './chart.ts';

/**
 * The chart moved to the tonic of `toKey`; major stays major and minor minor. Every root and bass moves by the same
 * spelled interval, so that the IV of Gb is Cb; only where that gives a double accidental, the plain name stands.
 * Nothing else changes. The key counts as written from then on.
 */
export function transposeChart(chart: Chart, toKey: Key): Chart {
  const key = keyOn(toKey.tonicPitchClass, chart.key.mode, toKey.tonic);
  const interval = intervalBetween(chart.key.tonic, key.tonic);
  const moved = (bar: ChartBar): ChartBar => ({
    ...bar,
    chords: bar.chords.map(({ chord, beats }) => ({
      chord: chord && transposeChord(chord, interval),
      beats,
    })),
  });
  return {
    ...chart,
    key,
    keyWritten: true,
    pickup: chart.pickup && moved(chart.pickup),
    sections: chart.sections.map((section) => ({
      ...section,
      ...(section.key && { key: movedKey(section.key, interval) }),
      bars: section.bars.map(moved),
    })),
  };
}

/**
 * The chart so many half steps up, down with a minus, its key in the name that has the fewest signs.
 * @example movedChart(bluesInC, 2).key.tonic // 'D'
 */
export const movedChart = (chart: Chart, semitones: number): Chart =>
  transposeChart(chart, keyOn(wrapPitchClass(chart.key.tonicPitchClass + semitones), chart.key.mode));

function movedKey({ tonic, mode }: Key, interval: string): Key {
  const moved = parseKey(`${moveByInterval(tonic, interval)}${mode === 'minor' ? ' minor' : ''}`);
  if (!moved) throw new RangeError(`the key of ${tonic} can't be moved by ${interval}`);
  // One name a key: a tonic that needs seven signs and more is written as its plain neighbour.
  return keyOn(moved.tonicPitchClass, mode);
}

/** A chord moved by a spelled interval ("4P"). Its symbol comes out with # and b for the musical signs. */
export function transposeChord(chord: Chord, interval: string): Chord {
  const parts = splitSymbol(chord.symbol);
  const bass = chord.bass === null ? '' : `/${moveByInterval(chord.bass, interval)}`;
  const symbol = moveByInterval(chord.root, interval) + (parts?.quality ?? '') + bass;
  const moved = parseChord(symbol);
  if (!moved) throw new RangeError(`${chord.symbol} can't be moved by ${interval}`);
  return moved;
}

/**
 * A chord symbol moved by a spelled interval; what is no chord symbol comes back as it is.
 * @example moveChord('A7/C#', '2M') // 'B7/D#'
 */
export function moveChord(symbol: string, interval: string): string {
  const chord = parseChord(symbol);
  return chord === null ? symbol : transposeChord(chord, interval).symbol;
}
