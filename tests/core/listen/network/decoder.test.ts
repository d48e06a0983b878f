/** Each decision of the decoder by itself, on answers that no other decision depends on: network/decoding.ts names them. */
import { describe, expect, it } from 'vitest';
import { Answers } from './answers.ts';

describe('where a note begins', () => {
  it('its onset must be likely', () => {
    expect(new Answers().note(20, 40, 30, 0.36).semitones()).toEqual([30]);
    expect(new Answers().note(20, 40, 30, 0.3).semitones()).toEqual([]);
  });

  it('onset and sounding make up for each other', () => {
    const told = (onset: number, sounding: number) =>
      new Answers().onset(20, 30, onset).sounds(20, 40, 30, sounding).semitones();
    expect(told(0.9, 0.16)).toEqual([30]);
    expect(told(0.9, 0.1)).toEqual([]);
    expect(told(0.4, 0.8)).toEqual([30]);
    expect(told(0.4, 0.7)).toEqual([]);
  });

  it('onsets of different pitches within three frames are one stroke, and the surest counts', () => {
    const told = (apart: number) =>
      new Answers()
        .note(20, 20 + apart, 30, 0.8)
        .note(20 + apart, 50, 35, 0.9)
        .semitones();
    expect(told(3)).toEqual([35]);
    expect(told(4)).toEqual([30, 35]);
  });

  it('the same pitch again within four frames is one note, the first unless it is much weaker', () => {
    const told = (apart: number, first: number, second: number) =>
      new Answers()
        .note(20, 50, 30, first)
        .onset(20 + apart, 30, second)
        .notes()
        .map(({ frame }) => Math.round(frame));
    expect(told(4, 0.9, 1)).toEqual([20]);
    expect(told(4, 0.5, 1)).toEqual([24]);
    expect(told(5, 0.9, 1)).toEqual([20, 25]);
  });

  it('a tone that nothing told begins where it sounds, if it is loud and goes on', () => {
    const soft = (levelDb: number, until: number, probability = 1) =>
      new Answers(levelDb).sounds(30, until, 30, probability).notes();
    expect(soft(-20, 50)).toHaveLength(1);
    expect(Math.abs(soft(-20, 50)[0]!.frame - 30)).toBeLessThan(1);
    expect(soft(-20, 50)[0]!.confidence).toBeLessThan(0.5);
    expect(soft(-40, 50)).toHaveLength(1);
    expect(soft(-44, 50)).toHaveLength(0);
    expect(soft(-20, 50, 0.8)).toHaveLength(1);
    expect(soft(-20, 50, 0.7)).toHaveLength(0);
    expect(soft(-20, 34)).toHaveLength(0);
  });

  it('a recording may begin within a note', () => {
    expect(new Answers(-20).sounds(0, 40, 30).semitones()).toEqual([30]);
    expect(new Answers(-20).sounds(0, 40, 30, 0.55).semitones()).toEqual([]);
    expect(new Answers(-44).sounds(0, 40, 30).semitones()).toEqual([]);
  });
});

describe('where a note goes', () => {
  it('it ends after more than two silent frames', () => {
    const told = (gap: number) =>
      new Answers()
        .note(20, 30, 30)
        .sounds(30 + gap, 50, 30)
        .notes()
        .map(({ end }) => Math.round(end));
    expect(told(2)).toEqual([49]);
    expect(told(3)).toEqual([29]);
  });

  it('a bend counts where it arrives and stays', () => {
    const bend = (frame: number) => 30 + 2 * Math.max(0, Math.min(1, (frame - 24) / 10));
    const [note] = new Answers().note(20, 46, bend).notes();
    expect(note!.semitone).toBeCloseTo(32, 1);
    // It does not stay: the middle counts.
    const brief = (frame: number) => 30 + 2 * Math.max(0, Math.min(1, (frame - 50) / 10));
    expect(new Answers().note(20, 62, brief).notes()[0]!.semitone).toBeCloseTo(30, 1);
  });

  it('a note that speaks an octave low for a moment goes on above', () => {
    const told = (low: number) =>
      new Answers()
        .note(20, 20 + low, 20)
        .sounds(20 + low, 60, 32)
        .semitones();
    expect(told(6)).toEqual([32]);
    expect(told(12)).toEqual([32]);
    expect(told(16)).toEqual([20]);
  });

  it('a short unsure note close by is the scoop of the next', () => {
    const told = (frames: number, away: number, onset: number) =>
      new Answers()
        .note(20, 20 + frames, 30 - away, onset)
        .note(20 + frames, 60, 30, 0.9)
        .semitones();
    expect(told(5, 2, 0.6)).toEqual([30]);
    expect(told(5, 2, 0.8)).toEqual([28, 30]);
    expect(told(7, 2, 0.6)).toEqual([28, 30]);
    expect(told(5, 3, 0.6)).toEqual([27, 30]);
  });
});

describe('what is talk', () => {
  it('syllables that glide, note after note, are left out; the first may slip through', () => {
    const answers = new Answers();
    for (let k = 0; k < 8; k++) {
      const from = 14 + 12 * k;
      answers.note(from, from + 8, (frame) => 30 + 0.3 * (frame - from), 0.7);
    }
    expect(answers.semitones().length).toBeLessThanOrEqual(1);
  });

  it('short notes that stand still, and notes that others cut off, are notes', () => {
    const short = new Answers();
    for (let k = 0; k < 8; k++) short.note(14 + 12 * k, 18 + 12 * k, 30, 0.8);
    expect(short.semitones()).toHaveLength(8);
    const fast = new Answers();
    for (let k = 0; k < 16; k++) fast.note(14 + 6 * k, 20 + 6 * k, 30 + 3 * (k % 3), 0.8);
    expect(fast.semitones()).toHaveLength(16);
  });

  it('a sure note that stands still counts among syllables, an unsure one does not', () => {
    const told = (onset: number) => {
      const answers = new Answers();
      for (let k = 0; k < 5; k++) {
        const from = 14 + 12 * k;
        answers.note(from, from + 8, (frame) => 30 + 0.3 * (frame - from), 0.7);
      }
      return answers.note(80, 110, 45, onset).semitones().includes(45);
    };
    expect(told(1)).toBe(true);
    expect(told(0.6)).toBe(false);
  });
});
