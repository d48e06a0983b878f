import { describe, expect, it } from 'vitest';
import { Footwork, HOLD_MS, pressOf, type Command, type Screen } from '../../../src/ui/hands/footwork.ts';

/** A foot on a switch, with a clock in the test's hands. */
function foot(first: Screen) {
  const done: Command[] = [];
  let screen = first;
  let waiting: { act: () => void; ms: number } | null = null;
  const footwork = new Footwork({
    screen: () => screen,
    act: (command) => done.push(command),
    later: (act, ms) => {
      waiting = { act, ms };
      return () => (waiting = null);
    },
  });
  const hold = (ms: number) => {
    if (waiting !== null && ms >= waiting.ms) {
      const { act } = waiting;
      waiting = null;
      act();
    }
  };
  return { done, footwork, hold, goTo: (next: Screen) => (screen = next) };
}

describe('a foot on the switch', () => {
  it('stops at once, and starts at once', () => {
    for (const screen of ['playing', 'ready', 'trouble'] as const) {
      const { done, footwork } = foot(screen);
      footwork.press('first');
      expect(done).toEqual(['go']);
      footwork.release();
      expect(done).toEqual(['go']);
    }
  });

  it('in the review a short press plays again, a held one takes the next aim', () => {
    const short = foot('review');
    short.footwork.press('first');
    short.hold(HOLD_MS - 1);
    expect(short.done).toEqual([]);
    short.footwork.release();
    expect(short.done).toEqual(['go']);
    const held = foot('review');
    held.footwork.press('first');
    held.hold(HOLD_MS);
    held.footwork.release();
    expect(held.done).toEqual(['next aim']);
  });

  it('a second switch takes the next aim', () => {
    const { done, footwork } = foot('review');
    footwork.press('second');
    expect(done).toEqual(['next aim']);
  });

  it('a press that outlives its screen does nothing more', () => {
    const { done, footwork, goTo } = foot('review');
    footwork.press('first');
    goTo('playing');
    footwork.release();
    expect(done).toEqual([]);
  });
});

describe('keys', () => {
  it('of every pedal stop while playing, whatever is focused', () => {
    for (const key of [
      ' ',
      'Enter',
      'PageUp',
      'PageDown',
      'ArrowLeft',
      'ArrowRight',
      'ArrowUp',
      'ArrowDown',
      'Escape',
    ])
      expect(pressOf(key, 'playing', 'space', 'button')).toBe('first');
    expect(pressOf('a', 'playing', 'space', null)).toBeNull();
  });

  it('keep their work elsewhere, but for those of the chosen pedal', () => {
    expect(pressOf('PageDown', 'review', 'space', null)).toBeNull();
    expect(pressOf('PageDown', 'review', 'pages', null)).toBe('first');
    expect(pressOf('PageUp', 'review', 'pages', null)).toBe('second');
    expect(pressOf('ArrowRight', 'review', 'arrows', null)).toBe('first');
    expect(pressOf('Enter', 'ready', 'enter', null)).toBe('first');
    expect(pressOf(' ', 'review', 'space', null)).toBeNull();
    expect(pressOf(' ', 'ready', 'pages', null)).toBe('first');
  });

  it('never take from a field what is typed there, nor a press from a button', () => {
    for (const key of [' ', 'Enter', 'ArrowDown', 'PageDown'])
      for (const pedal of ['space', 'pages', 'arrows', 'enter'] as const)
        expect(pressOf(key, 'ready', pedal, 'field')).toBeNull();
    expect(pressOf(' ', 'review', 'pages', 'button')).toBeNull();
    expect(pressOf('Enter', 'review', 'enter', 'button')).toBeNull();
    expect(pressOf('PageDown', 'review', 'pages', 'button')).toBe('first');
  });

  it('Escape goes back from review and trouble', () => {
    expect(pressOf('Escape', 'review', 'space', 'field')).toBe('back');
    expect(pressOf('Escape', 'ready', 'space', null)).toBeNull();
  });
});
