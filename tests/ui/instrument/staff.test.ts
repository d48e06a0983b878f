/**
 * Notes on staves: *common practice*. In the treble clef the middle line is B4, the bottom line E4, middle C one
 * ledger line below; in the bass clef the middle line is D3, the top line A3, middle C one ledger line above.
 */
import { describe, expect, it } from 'vitest';
import { instrumentOf } from '../../../src/core/music/instruments.ts';
import {
  ledgerSteps,
  octavesNear,
  stepsFor,
  writeNote,
  writtenName,
} from '../../../src/ui/instrument/staff.ts';

const of = (id: string) => instrumentOf(id)!;

describe('a note on the staff', () => {
  it('stands where the clef says', () => {
    const piano = of('piano');
    expect(writeNote(71, 'B', piano, 'treble').step).toBe(0);
    expect(writeNote(64, 'E', piano, 'treble').step).toBe(-4);
    expect(writeNote(60, 'C', piano, 'treble').step).toBe(-6);
    expect(writeNote(50, 'D', piano, 'bass').step).toBe(0);
    expect(writeNote(57, 'A', piano, 'bass').step).toBe(4);
    expect(writeNote(60, 'C', piano, 'bass').step).toBe(6);
  });

  it('goes by its spelling: Cb4 is on the line of C4, B#3 on the one of B3', () => {
    const piano = of('piano');
    expect(writeNote(59, 'Cb', piano, 'treble').step).toBe(-6);
    expect(writeNote(60, 'B#', piano, 'treble').step).toBe(-7);
  });

  it('is written for the player: an octave up for a guitar, in B flat and in E flat', () => {
    // The open top string sounds E4 and is written in the top space.
    expect(writeNote(64, 'E', of('guitar'), 'treble').step).toBe(3);
    // Concert Bb3 is a tenor's C5 and a baritone's G5, an alto's G4, a trumpet's C4.
    expect(writeNote(58, 'Bb', of('tenor-sax'), 'treble')).toMatchObject({ name: 'C', step: 1 });
    expect(writeNote(58, 'Bb', of('alto-sax'), 'treble')).toMatchObject({ name: 'G', step: -2 });
    expect(writeNote(58, 'Bb', of('baritone-sax'), 'treble')).toMatchObject({ name: 'G', step: 5 });
    expect(writeNote(58, 'Bb', of('trumpet'), 'treble')).toMatchObject({ name: 'C', step: -6 });
    expect(writtenName('Eb', of('tenor-sax'))).toBe('F');
    expect(writtenName('F#', of('alto-sax'))).toBe('D#');
    expect(writtenName('F#', of('guitar'))).toBe('F#');
  });

  it('gets the ledger lines it needs', () => {
    expect(ledgerSteps(5)).toEqual([]);
    expect(ledgerSteps(6)).toEqual([6]);
    expect(ledgerSteps(9)).toEqual([6, 8]);
    expect(ledgerSteps(-6)).toEqual([-6]);
    expect(ledgerSteps(-10)).toEqual([-6, -8, -10]);
  });

  it('finds every octave in reach', () => {
    expect(octavesNear(0, 60, 12)).toEqual([48, 60, 72]);
    expect(octavesNear(11, 60, 8)).toEqual([59]);
  });

  it('keeps the staff on the page and makes room where the line climbs', () => {
    const calm = stepsFor(0, 8);
    expect(calm.lowest).toBeLessThan(-4);
    expect(calm.highest).toBeGreaterThan(4);
    const high = stepsFor(13, 8);
    expect(high.highest).toBeGreaterThan(13 + (8 * 7) / 12);
    expect(high.lowest).toBeLessThan(-4);
    expect(stepsFor(-13, 8).lowest).toBe(-high.highest);
  });
});
