import { describe, expect, it } from 'vitest';
import type { Heard } from '../../src/analysis/messages.ts';
import { timelineFromTempo } from '../../src/core/chart/build-timeline.ts';
import { parseChart } from '../../src/core/chart/parse-chart.ts';
import { grade } from '../../src/core/grade.ts';
import type { HeardNote } from '../../src/core/take/note.ts';
import { performTake } from '../../src/state/perform-take.ts';
import { usualPlaying } from '../../src/state/playing-settings.ts';

const chart = parseChart('| A7 | D7 |');
if (!chart.ok) throw new Error('the chart can not be read');
const timeline = timelineFromTempo(chart.value, { bpm: 120 });
// C# is the third of A7, A the fifth of D7.
const heard: readonly HeardNote[] = [61, 64, 67, 69, 69, 66, 62, 64].map((midi, beat) => ({
  onsetSeconds: beat / 2,
  offsetSeconds: beat / 2 + 0.4,
  midi,
  attack: 'struck',
  bendSemitones: 0,
  vibrato: null,
  confidence: 1,
  levelDb: null,
  second: null,
}));
const report = grade(heard, timeline, {
  source: { kind: 'notes', durationSeconds: 4, sampleRate: null },
  referenceHz: 440,
});

function perform() {
  const told: Heard[] = [];
  const drawn: number[] = [];
  const playback = { seconds: 0, playing: false, play: async () => void (playback.playing = true) };
  let ended = 0;
  let frame: () => void = () => undefined;
  performTake({
    review: { timeline, report, heard },
    playback,
    live: {
      open: () => undefined,
      heard: (one) => told.push(one) < 0,
      draw: (_timeline, beat) => void drawn.push(beat),
    },
    settings: usualPlaying,
    frames: { each: (draw) => ((frame = draw), () => undefined) },
    onEnd: () => ended++,
  });
  return {
    at: (seconds: number) => {
      playback.seconds = seconds;
      frame();
      return told.at(-1)!;
    },
    drawn,
    stop: () => {
      playback.playing = false;
      frame();
    },
    ended: () => ended,
  };
}

describe('a take that is heard with its stage', () => {
  it('shows each note while it sounds, and each landing from its note on', () => {
    const { at, drawn } = perform();
    expect(at(0.1)).toMatchObject({ reading: { midi: 61 }, aim: { hits: 1, of: 1 } });
    expect(at(0.45).reading.midi).toBeNull();
    expect(at(0.45).landings).toBeNull();
    expect(at(1.9).landings?.landings).toHaveLength(1);
    const landed = at(2.1);
    expect(landed.landings?.landings.map(({ degree }) => degree)).toEqual(['3', '5']);
    expect(landed.aim).toEqual({ hits: 1, of: 2 });
    expect(drawn.at(-1)).toBeCloseTo(4.2, 9);
  });

  it('ends with the sound', () => {
    const { at, stop, ended } = perform();
    at(1);
    expect(ended()).toBe(0);
    stop();
    expect(ended()).toBe(1);
  });
});
