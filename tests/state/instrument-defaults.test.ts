/** Clefs that players read: *common practice*. */
import { describe, expect, it } from 'vitest';
import { INSTRUMENTS } from '../../src/core/music/instruments.ts';
import { instrumentDefaults } from '../../src/state/instrument-defaults.ts';

describe('an instrument that is chosen', () => {
  it('brings the view that shows it best and the clef its players read', () => {
    expect(instrumentDefaults('guitar')).toMatchObject({ view: 'neck', clef: 'treble' });
    expect(instrumentDefaults('bass')).toMatchObject({ view: 'neck', clef: 'bass' });
    expect(instrumentDefaults('piano')).toMatchObject({ view: 'keyboard', clef: 'treble' });
    expect(instrumentDefaults('trombone')).toMatchObject({ view: 'staff', clef: 'bass' });
    for (const id of ['tenor-sax', 'baritone-sax', 'alto-sax', 'trumpet', 'flute', 'violin'])
      expect(instrumentDefaults(id)).toMatchObject({ view: 'staff', clef: 'treble' });
  });

  it('every instrument can be chosen, and nothing else', () => {
    for (const { id } of INSTRUMENTS) expect(instrumentDefaults(id).instrument).toBe(id);
    expect(() => instrumentDefaults('kazoo')).toThrow(RangeError);
  });
});
