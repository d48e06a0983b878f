/** The file is written a few events at a time, because the library's time grows with the square of what it writes at once. */
import { parseMidi, writeMidi } from 'midi-file';
import { describe, expect, it } from 'vitest';
import { arrange } from '../../../src/core/band/arrange.ts';
import { writeBandMidi } from '../../../src/core/band/write-midi.ts';
import { processorTime } from '../../processor-time.ts';
import { formOf, settingsOf } from './forms.ts';

const form = formOf('| C7 | F7 | C7 | C7 | F7 | F7 | C7 | C7 | G7 | F7 | C7 | G7 |');
const settings = settingsOf({});

describe('the band as a MIDI file', () => {
  it('is byte for byte what midi-file writes of the same events at once', () => {
    const bytes = writeBandMidi(arrange(form, settings, 8), form, settings);
    const read = parseMidi(bytes);
    expect(Math.max(...read.tracks.map(({ length }) => length))).toBeGreaterThan(1000);
    expect(Buffer.from(writeMidi(read))).toEqual(Buffer.from(bytes));
  });

  it('of a thousand bars is written in seconds, not in minutes', async () => {
    const arrangement = arrange(form, settings, 84);
    const { result, milliseconds } = await processorTime(() => writeBandMidi(arrangement, form, settings));
    expect(result.length).toBeGreaterThan(100_000);
    // Half a second here; written at once it took 8.
    expect(milliseconds).toBeLessThan(3000);
  });
});
