/** What the decoder tells while the sound still comes in, and how notes end each other. A frame lasts 16 ms. */
import { describe, expect, it } from 'vitest';
import { LOW_MIDI, PITCHES } from '../../../../src/core/listen/network/settings.ts';
import { Answers } from './answers.ts';

describe('the pitch that sounds now', () => {
  it('is the surest of the newest frame, to a part of a semitone', () => {
    const answers = new Answers().sounds(0, 40, 30.25).sounds(0, 40, 50, 0.4);
    expect(answers.decoded(20).sounding).toBeCloseTo(LOW_MIDI + 30.25, 5);
  });

  it('is none where nothing sounds surely, nor before the first frame', () => {
    expect(new Answers().sounds(0, 40, 30, 0.45).decoded(20).sounding).toBeNull();
    expect(new Answers().decoded(20).sounding).toBeNull();
    expect(new Answers().decoded(0).sounding).toBeNull();
  });

  it('may be the lowest or the highest', () => {
    expect(new Answers().sounds(0, 40, 0).decoded(20).sounding).toBe(LOW_MIDI);
    expect(new Answers().sounds(0, 40, PITCHES - 1).decoded(20).sounding).toBe(LOW_MIDI + PITCHES - 1);
  });
});

/** The frames after which notes were fresh, and their semitones. */
function freshIn(answers: Answers): readonly (readonly [frame: number, semitone: number])[] {
  const told: (readonly [number, number])[] = [];
  answers.decoded(undefined, (decoder, frame) => {
    for (const { midi } of decoder.takeFresh()) told.push([frame, Math.round(midi - LOW_MIDI)]);
  });
  return told;
}

describe('fresh notes', () => {
  it('are told once, as soon as their pitch has stood still and the next stroke can no longer make them a scoop', () => {
    const told = freshIn(new Answers().note(20, 100, 30));
    expect(told).toHaveLength(1);
    // Six frames of rest, and fourteen that the decoder looks ahead.
    expect(told[0]![1]).toBe(30);
    expect(told[0]![0]).toBeGreaterThanOrEqual(20 + 6 + 14);
    expect(told[0]![0]).toBeLessThan(20 + 12 + 14);
  });

  it('whose pitch does not come to rest are told after twenty frames', () => {
    // A semitone in five frames, up and down again without end.
    const swaying = (frame: number) => 30.5 + 2 * Math.abs((((frame - 36) / 10) % 2) - 1);
    // A note that stands still goes before it, so that the swaying one is no syllable of talk.
    const [still, first] = freshIn(new Answers().note(20, 34, 40).note(36, 110, swaying));
    expect(still![1]).toBe(40);
    expect(first![0]).toBeGreaterThanOrEqual(36 + 20 + 14);
    expect(first![0]).toBeLessThan(36 + 28 + 14);
  });

  it('come in the order of their onsets', () => {
    const answers = new Answers().note(20, 35, 30).note(35, 50, 32).note(50, 70, 34);
    expect(freshIn(answers).map(([, semitone]) => semitone)).toEqual([30, 32, 34]);
    expect(answers.semitones()).toEqual([30, 32, 34]);
  });
});

describe('a note', () => {
  it('ends where the next begins, though it rings on', () => {
    const [low, high] = new Answers().note(20, 90, 30).note(50, 90, 40).notes();
    expect(low!.end).toBeCloseTo(50, 0);
    expect(high!.end).toBeCloseTo(89, 0);
  });

  it('goes on at its own semitone while that sounds a little, whatever rings louder beside it', () => {
    const told = (own: number) =>
      new Answers().note(20, 30, 30).sounds(30, 70, 30, own).sounds(30, 70, 31, 0.9).notes()[0]!.semitone;
    // Both semitones sound: the mean pitch lies between them, nearer to the surer one.
    expect(told(0.6)).toBeLessThan(31);
    expect(new Answers().note(20, 30, 30).sounds(30, 70, 32, 0.9).notes()[0]!.semitone).toBeCloseTo(32, 1);
    // Three semitones away it is another sound, and the note has ended.
    expect(new Answers().note(20, 30, 30).sounds(30, 70, 33, 0.9).notes()[0]!.end).toBeCloseTo(29, 0);
  });

  it('may lie at either end of the compass', () => {
    expect(new Answers().note(20, 60, 1).semitones()).toEqual([1]);
    expect(new Answers().note(20, 60, PITCHES - 2).semitones()).toEqual([PITCHES - 2]);
    expect(new Answers().note(20, 25, 1).sounds(25, 60, 0).semitones()).toEqual([0]);
    expect(
      new Answers()
        .note(20, 30, PITCHES - 2)
        .sounds(30, 60, PITCHES - 1)
        .semitones(),
    ).toEqual([PITCHES - 1]);
  });

  it('that still sounds at the end of the recording ends there', () => {
    expect(new Answers().note(80, 120, 30).notes()).toHaveLength(1);
    expect(new Answers().note(80, 120, 30).decoded().ended).toHaveLength(0);
  });
});

describe('a note that speaks an octave low for a moment', () => {
  it('rises only into a tone that sounds surely, an octave up', () => {
    const told = (above: number, probability = 1) =>
      new Answers()
        .note(20, 26, 20)
        .sounds(26, 60, 20 + above, probability)
        .semitones();
    expect(told(12, 0.55)).toEqual([32]);
    expect(told(12, 0.45)).toEqual([20]);
    expect(told(11)).toEqual([31]);
    expect(told(13)).toEqual([33]);
    expect(told(7)).toEqual([20]);
    expect(new Answers().note(20, 26, 62).sounds(26, 60, 50).semitones()).toEqual([62]);
  });
});

describe('a tone that nothing told', () => {
  it('is none while another note sounds, nor beside an onset of its own pitch', () => {
    expect(new Answers(-20).note(20, 80, 40).sounds(50, 80, 30).semitones()).toEqual([40]);
    expect(new Answers(-20).note(20, 30, 40).sounds(50, 80, 30).semitones()).toEqual([40, 30]);
    // An onset too unsure to be a note begins as the tone does: the tone stays out.
    expect(new Answers(-20).note(30, 60, 30, 0.6).notes()).toHaveLength(1);
  });

  it('begins out of silence: not where it has been growing already', () => {
    const grown = (before: number) =>
      new Answers(-20).sounds(20, 30, 30, before).sounds(30, 60, 30).notes().length;
    expect([grown(0.15), grown(0.3)]).toEqual([1, 0]);
  });

  it('is dated half a frame before it sounds, and told in its place', () => {
    const notes = new Answers(-20).sounds(30, 50, 30).note(60, 90, 35).notes();
    expect(notes.map(({ semitone }) => Math.round(semitone))).toEqual([30, 35]);
    expect(notes[0]!.frame).toBeCloseTo(29.5, 6);
  });
});

describe('a tone that nothing told, as it begins', () => {
  it('begins in the first frame that sounds surely', () => {
    const [note] = new Answers(-20).sounds(30, 31, 30, 0.45).sounds(31, 60, 30).notes();
    expect(note!.frame).toBeCloseTo(30.5, 6);
  });

  it('is none where it swells slowly', () => {
    const swell = [0.5, 0.6, 0.7, 0.8];
    const answers = new Answers(-20);
    for (let f = 30; f < 60; f++) answers.sounds(f, f + 1, 30, swell[Math.min(f - 30, 3)]!);
    expect(answers.notes()).toHaveLength(0);
  });

  it('may slide to the semitones beside it', () => {
    // A note that stands still goes before it, so that the slide is no syllable of talk.
    const slide = (from: number, aFrame: number) =>
      new Answers(-20)
        .note(14, 26, 45)
        .sounds(40, 70, (frame) => from + aFrame * Math.min(frame - 40, 7))
        .notes().length;
    expect([slide(30.25, 0.3), slide(30.75, -0.4)]).toEqual([2, 2]);
  });

  it('is none within eight frames of an onset of its own pitch that a surer one has beaten', () => {
    // The onset at 50 wins its stroke but hardly sounds; the tone sounds, is silent, and sounds again from a frame on.
    const told = (pitch: number, from: number) =>
      new Answers(-20)
        .onset(40, 50, 0.9)
        .sounds(40, 48, 50, 0.2)
        .onset(40, 30, 0.6)
        .sounds(41, 44, 30)
        .sounds(from, 80, pitch)
        .semitones();
    expect(told(30, 48)).toEqual([50]);
    expect(told(30, 50)).toEqual([50, 30]);
    expect(told(33, 48)).toEqual([50, 33]);
  });

  it('is as loud as the loudest of the last second, but for 12 dB', () => {
    const after = (levelDb: number) =>
      new Answers((frame) => (frame < 20 ? -10 : levelDb)).sounds(40, 70, 30).notes().length;
    expect([after(-21), after(-23)]).toEqual([1, 0]);
  });
});

describe('a recording that begins within a note', () => {
  it('has that note from its first moment on, unless another begins at once', () => {
    const [first] = new Answers(-20).sounds(0, 40, 30).notes();
    expect(first!.frame).toBe(3);
    expect(new Answers(-20).sounds(0, 12, 30).note(9, 40, 35).semitones()).toEqual([35]);
    expect(new Answers(-20).sounds(0, 16, 30).note(16, 40, 35).semitones()).toEqual([30, 35]);
  });

  it('counts what sounds surely over frames 4 to 11, and loudly', () => {
    expect(new Answers(-20).sounds(0, 40, 30, 0.62).semitones()).toEqual([30]);
    // Five of those eight frames are enough, four are not.
    expect(new Answers(-20).sounds(0, 9, 30).notes()).toHaveLength(1);
    expect(new Answers(-20).sounds(0, 8, 30).notes()).toHaveLength(0);
    expect(new Answers(-41).sounds(0, 40, 30).semitones()).toEqual([30]);
    expect(new Answers(-20).sounds(0, 40, 0).semitones()).toEqual([0]);
  });
});
