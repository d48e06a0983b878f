/** Clefs that players read: *common practice*. */
import { describe, expect, it } from 'vitest';
import { INSTRUMENTS } from '../../../src/core/music/instruments.ts';
import { chosenInstrument } from '../../../src/ui/ready/player-choice.ts';

describe('an instrument that is chosen', () => {
  it('brings the view that shows it best and the clef its players read', () => {
    expect(chosenInstrument('guitar')).toMatchObject({ view: 'neck', clef: 'treble' });
    expect(chosenInstrument('bass')).toMatchObject({ view: 'neck', clef: 'bass' });
    expect(chosenInstrument('piano')).toMatchObject({ view: 'keyboard', clef: 'treble' });
    expect(chosenInstrument('trombone')).toMatchObject({ view: 'staff', clef: 'bass' });
    for (const id of ['tenor-sax', 'baritone-sax', 'alto-sax', 'trumpet', 'flute', 'violin'])
      expect(chosenInstrument(id)).toMatchObject({ view: 'staff', clef: 'treble' });
  });

  it('every instrument can be chosen, and nothing else', () => {
    for (const { id } of INSTRUMENTS) expect(chosenInstrument(id).instrument).toBe(id);
    expect(() => chosenInstrument('kazoo')).toThrow(RangeError);
  });
});
