/** A take with a tempo that rises and turns that are traded: graded by what was asked, the same everywhere. */
import { describe, expect, it } from 'vitest';
import { risingBeatMap } from '../../src/core/chart/tempo-rise.ts';
import { usualPractice } from '../../src/state/practice-settings.ts';
import { pluckLine } from '../analysis/pluck.ts';
import { gradedByCommand, makeReview } from './by-command.ts';
import { RATE, world } from './world.ts';

const COUNT_IN = 2;
const LATE = 0.016;
/** Over | A7 | D7 | Bm7 | E7 |: chord tones, a third at each arrival; the second bar of each two is the band's. */
const melody = [73, 69, 64, 69, 66, 69, 74, 69, 62, 66, 71, 66, 68, 71, 74, 71];

describe('a practised take', () => {
  it('rises and trades: its notes lie on the beats that went by, and the band’s turns are not asked', async () => {
    const rise = { byBpm: 30, everyChoruses: 1 };
    const w = await world({
      settings: {
        ownChart: '| A7 | D7 | Bm7 | E7 |',
        reference: 440,
        practice: { ...usualPractice.practice, rise, tradeBars: 1 },
      },
    });
    const beats = risingBeatMap(
      { bpm: 120, rise: { byBpm: 30, everyBars: 4 }, beatsPerBar: 4 },
      COUNT_IN + LATE,
    );
    const plucks = [...melody, ...melody].map((midi, beat) => ({
      atSeconds: beats.secondsAt(beat),
      midi,
      seconds: 0.3,
    }));
    await w.session.start();
    await w.play(pluckLine(plucks, RATE, beats.secondsAt(32) + 0.5));
    await w.session.stop();
    const { report, details, id } = await makeReview(w);
    expect(details).toMatchObject({ rise: { byBpm: 30, everyBars: 4 }, trade: { bars: 1 } });
    expect(report.timeline).toMatchObject({ bpm: 120, rise: { byBpm: 30, everyBars: 4 }, turnBars: 1 });
    // Bars 1 and 3 of each chorus are the player's, the second chorus at 150.
    expect(report.landings.map(({ chord, chorus, role }) => [chord, chorus, role])).toEqual([
      ['A7', 0, 'third'],
      ['Bm7', 0, 'third'],
      ['A7', 1, 'third'],
      ['Bm7', 1, 'third'],
    ]);
    expect(report.notes.map((note) => Math.round(note.midi))).toEqual([
      ...melody.filter((_, beat) => beat % 8 < 4),
      ...melody.filter((_, beat) => beat % 8 < 4),
    ]);
    for (const { beat } of report.notes) expect(Math.abs(beat - Math.round(beat))).toBeLessThan(0.1);

    // From the disk, and at the command line: the same report.
    w.session.save('line');
    const source = { ...report.source, kind: 'audio' };
    expect(await gradedByCommand(w)).toEqual({ ...report, source });
    await w.settle();
    await w.session.openTake(id!);
    expect((await makeReview(w)).report).toEqual(report);
  });
});
