/**
 * From sound in to a reading, in samples fed: the part of the way to the picture that is ours. The display's next frame
 * adds at most 17 ms at 60 Hz; the whole has to stay under 60 ms on top of what the browser itself takes.
 */
import { describe, expect, it } from 'vitest';
import type { AnalysisMessage } from '../../src/analysis/messages.ts';
import { AnalysisSession } from '../../src/analysis/session.ts';
import { hopFrames } from '../../src/audio/microphone/hop.ts';
import { pluckLine } from './pluck.ts';

const RATE = 48_000;
/** Where the onset falls within a hop differs: eight places, a prime apart. */
const PLACES = 8;

/** Milliseconds from the onset of a note to the end of the hop that told its pitch, at each place. */
async function delays(midi: number): Promise<number[]> {
  const found: number[] = [];
  for (let place = 0; place < PLACES; place++) {
    const onset = 1 + (place * 257) / RATE;
    const line = pluckLine(
      [
        { atSeconds: 0.5, midi: midi + 5, seconds: onset - 0.53 },
        { atSeconds: onset, midi, seconds: 0.5 },
      ],
      RATE,
      1.6,
    );
    let reading: number | null = null;
    const session = new AnalysisSession((message: AnalysisMessage) => {
      if (message.kind === 'heard') reading = message.heard.reading.midi;
    });
    await session.handle({ kind: 'open', id: 1, sampleRate: RATE } as Parameters<
      AnalysisSession['handle']
    >[0]);
    for (let from = 0; from < line.length; from += hopFrames) {
      const samples = line.slice(from, from + hopFrames);
      await session.handle({ kind: 'hop', samples, band: null });
      const passed = (from + hopFrames) / RATE - onset;
      if (passed <= 0 || reading === null || Math.abs(reading - midi) > 0.5) continue;
      found.push(1000 * passed);
      break;
    }
  }
  return found.sort((a, b) => a - b);
}

describe('from sound in to a reading', () => {
  it.each([
    ['F1, on a bass', 29, 115],
    ['E2, the lowest string of a guitar', 40, 40],
    ['A2', 45, 34],
    ['D3', 50, 34],
    ['A3', 57, 30],
    ['E4', 64, 24],
    ['E5', 76, 19],
  ])('%s stands within its time, every time', async (_name, midi, mostMs) => {
    const found = await delays(midi);
    expect(found).toHaveLength(PLACES);
    expect(found.at(-1)!).toBeLessThan(mostMs);
  });
});
