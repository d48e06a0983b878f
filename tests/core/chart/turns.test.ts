import { describe, expect, it } from 'vitest';
import { bandTurns, endOfTurn, isPlayersTurn } from '../../../src/core/chart/turns.ts';

describe('trading four bars of four beats', () => {
  const trade = { turnBars: 4, beatsPerBar: 4 };

  it('gives the player the first turn, and each turn its sixteen beats', () => {
    const turns = [0, 15, 16, 31, 32, 48].map((beat) => isPlayersTurn(trade, beat));
    expect(turns).toEqual([true, true, false, false, true, false]);
  });

  it('counts what comes before the first downbeat as the player’s', () => {
    expect(isPlayersTurn(trade, -3)).toBe(true);
    expect(endOfTurn(trade, -3)).toBe(16);
  });

  it('takes a beat that rounding put just before a turn as in it', () => {
    expect(isPlayersTurn(trade, 16 - 1e-9)).toBe(false);
    expect(isPlayersTurn(trade, 16 - 1e-3)).toBe(true);
  });

  it('ends each turn where the next begins', () => {
    expect([0, 15.5, 16, 40].map((beat) => endOfTurn(trade, beat))).toEqual([16, 16, 32, 48]);
  });

  it('gives the band every second turn, cut to the bars that are asked for', () => {
    expect(bandTurns(4, 0, 16)).toEqual([
      { fromBar: 4, toBar: 8 },
      { fromBar: 12, toBar: 16 },
    ]);
    expect(bandTurns(4, 6, 13)).toEqual([
      { fromBar: 6, toBar: 8 },
      { fromBar: 12, toBar: 13 },
    ]);
    expect(bandTurns(4, 8, 12)).toEqual([]);
    expect(bandTurns(1, 0, 4)).toEqual([
      { fromBar: 1, toBar: 2 },
      { fromBar: 3, toBar: 4 },
    ]);
  });
});

describe('without trading', () => {
  it('every beat is the player’s, and no turn ends', () => {
    expect(isPlayersTurn({ beatsPerBar: 4 }, 100)).toBe(true);
    expect(endOfTurn({ beatsPerBar: 4 }, 100)).toBe(Infinity);
  });
});
