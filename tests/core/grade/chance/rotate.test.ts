/** A chart begun some bars later. */
import { describe, expect, it } from 'vitest';
import { english } from '../../../english.ts';
import { timelineFromBeats } from '../../../../src/core/chart/build-timeline.ts';
import { rotateTimeline } from './rotated-timeline.ts';
import { chart } from '../line.ts';

const chords = (text: string, bars: number, until: number) =>
  rotateTimeline(chart(text), bars)
    .spansBetween(0, until)
    .map(({ startBeat, endBeat, chord }) => `${startBeat}-${endBeat} ${chord?.symbol ?? 'none'}`);

describe('a rotated chart', () => {
  it('starts so many bars later and closes on itself, chorus after chorus', () => {
    expect(chords('| C7 | F7 | G7 |', 1, 16)).toEqual(['0-4 F7', '4-8 G7', '8-12 C7', '12-16 F7']);
    expect(chords('| C7 | F7 | G7 |', 2, 12)).toEqual(['0-4 G7', '4-8 C7', '8-12 F7']);
  });

  it('cuts a chord that stands across the new beginning', () => {
    expect(chords('| C7 | / | G7 |', 1, 12)).toEqual(['0-4 C7', '4-8 G7', '8-12 C7']);
  });

  it('has no chord before its first downbeat, and keeps its beats, key and swing', () => {
    const plain = chart('| C7 | F7 |', { swing: 0.6, key: 'F' });
    const rotated = rotateTimeline(plain, 1);
    expect(rotated.chordAt(-1)).toBeNull();
    expect(rotated).toMatchObject({
      bars: 2,
      roundBeats: 8,
      beatsPerBar: 4,
      divisions: 2,
      swing: 0.6,
      key: plain.key,
    });
    expect(rotated.beatMap).toBe(plain.beatMap);
    expect(rotated.barSwings).toBeUndefined();
  });

  it('keeps the feel of its bars', () => {
    const mixed = chart('feel: shuffle\n[A]\n| C7 |\n[B]\nfeel: straight\n| F7 |', { swing: 2 / 3 });
    expect(rotateTimeline(mixed, 1).barSwings).toEqual(mixed.barSwings);
  });

  it('is played once where the beats were listed; its last chord stands on', () => {
    const listed = timelineFromBeats(
      ['C7', '', '', '', 'F7', '', '', ''].map((chord, i) => ({ timeSeconds: 1 + i, chord })),
    );
    if (!listed.ok) throw new Error(english(listed.problem));
    const rotated = rotateTimeline(listed.value, 1);
    expect([0, 3, 4, 7, 50].map((beat) => rotated.chordAt(beat)!.symbol)).toEqual([
      'F7',
      'F7',
      'C7',
      'C7',
      'C7',
    ]);
  });
});
