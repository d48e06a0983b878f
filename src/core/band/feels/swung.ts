/** Feels with long and short eighths. Common practice. */
import type { Feel } from './feel.ts';

export const shuffle: Feel = {
  instruments: { drumKit: 0, bass: 33, chords: 17 },
  drums: [
    {
      stepsPerBeat: 2,
      weight: 4,
      lines: { hat: 'XoxoXoxo', snare: '..X...X.', kick: 'X...x..g' },
    },
    {
      stepsPerBeat: 2,
      weight: 3,
      lines: { hat: 'XoxoXoxo', snare: '.gX..gXg', kick: 'X..ox...' },
    },
    {
      stepsPerBeat: 2,
      weight: 2,
      lines: { ride: 'XoxoXoxo', hatFoot: '..x...x.', snare: '..Xg..X.', kick: 'X...x...' },
    },
  ],
  fills: [
    { stepsPerBeat: 3, lines: { hat: 'X.ox.o......', snare: '...X..Xxxxxx', kick: 'X.....x.....' } },
    {
      stepsPerBeat: 3,
      lines: {
        hat: 'X.ox.oX.o...',
        snare: '...X...oxx..',
        lowTom: '..........x.',
        floorTom: '...........X',
        kick: 'X.....x.....',
      },
    },
    { stepsPerBeat: 2, lines: { hat: 'Xoxo....', snare: '..X.X.xX', kick: 'X...x...' } },
  ],
  bass: [
    { stepsPerBeat: 2, line: 'R-3-5-6-', weight: 3 },
    { stepsPerBeat: 2, line: 'R-3-5-6-8-6-5-a-', weight: 3 },
    { stepsPerBeat: 2, line: 'R-R3-.5-', weight: 1 },
  ],
  chords: [
    { stepsPerBeat: 2, line: '...x...x', weight: 3 },
    { stepsPerBeat: 2, line: '..x...x.', weight: 1 },
    { stepsPerBeat: 2, line: 'X--.....', weight: 2 },
    { stepsPerBeat: 2, line: '...x..ox', weight: 1 },
    { stepsPerBeat: 2, line: 'x-------', weight: 1 },
  ],
  addsNinths: false,
  bassGate: 0.92,
  chordGate: 0.55,
};

export const swing: Feel = {
  instruments: { drumKit: 32, bass: 32, chords: 4 },
  drums: [
    { stepsPerBeat: 2, weight: 5, lines: { ride: 'x.Xox.Xo', hatFoot: '..x...x.', kick: 'g...g...' } },
    {
      stepsPerBeat: 2,
      weight: 2,
      lines: { ride: 'x.Xox.Xo', hatFoot: '..x...x.', kick: 'g...g...', snare: '.......g' },
    },
    {
      stepsPerBeat: 2,
      weight: 2,
      lines: { ride: 'x.Xox.Xo', hatFoot: '..x...x.', kick: 'g...g..g', snare: '...g....' },
    },
    {
      stepsPerBeat: 2,
      weight: 1,
      lines: { ride: 'xoXox.X.', hatFoot: '..x...x.', kick: 'g...g...', snare: '.....g..' },
    },
    {
      stepsPerBeat: 2,
      weight: 1,
      lines: { ride: 'x.x.x.Xo', hatFoot: '..x...x.', kick: 'g..o....', snare: '......g.' },
    },
  ],
  fills: [
    {
      stepsPerBeat: 2,
      lines: { ride: 'x.Xo....', hatFoot: '..x...x.', snare: '...go.xx', kick: 'g...g...' },
    },
    {
      stepsPerBeat: 3,
      lines: {
        ride: 'x..x.o......',
        hatFoot: '...x.....x..',
        snare: '......oxo...',
        midTom: '.........o.x',
        kick: 'g.....g.....',
      },
    },
    {
      stepsPerBeat: 2,
      lines: { ride: 'x.Xox...', hatFoot: '..x...x.', snare: '......o.', kick: '.....o.x' },
    },
  ],
  bass: 'walk',
  chords: [
    { stepsPerBeat: 2, line: 'x--x....', weight: 3 },
    { stepsPerBeat: 2, line: '...x....', weight: 3 },
    { stepsPerBeat: 2, line: '..x....>', weight: 2 },
    { stepsPerBeat: 2, line: '...x--..', weight: 2 },
    { stepsPerBeat: 2, line: '.x...x..', weight: 1 },
    { stepsPerBeat: 2, line: 'x-------', weight: 1 },
  ],
  addsNinths: true,
  bassGate: 0.94,
  chordGate: 0.6,
};

export const slowBlues: Feel = {
  instruments: { drumKit: 0, bass: 33, chords: 17 },
  drums: [
    {
      stepsPerBeat: 3,
      weight: 4,
      lines: { hat: 'XooxooXooxoo', snare: '...X.....X..', kick: 'X....ox.....' },
    },
    {
      stepsPerBeat: 3,
      weight: 2,
      lines: { ride: 'XooxooXooxoo', hatFoot: '...x.....x..', snare: '...X.....X..', kick: 'X.....x....o' },
    },
    {
      stepsPerBeat: 3,
      weight: 2,
      lines: { hat: 'XooxooXooxoo', snare: '...X....gX..', kick: 'X.....o.x...' },
    },
  ],
  fills: [
    {
      stepsPerBeat: 3,
      lines: {
        hat: 'XooxooX.....',
        snare: '...X...xxX..',
        lowTom: '..........x.',
        floorTom: '...........X',
        kick: 'X.....x.....',
      },
    },
    { stepsPerBeat: 3, lines: { hat: 'Xooxoo......', snare: '...X..XooXxx', kick: 'X.....x.....' } },
  ],
  bass: [
    { stepsPerBeat: 3, line: 'R--R-53-----', weight: 2 },
    { stepsPerBeat: 3, line: 'R-----5--6-a', weight: 3 },
    { stepsPerBeat: 3, line: 'R--R-35--6-a', weight: 2 },
  ],
  chords: [
    { stepsPerBeat: 3, line: 'x-----------', weight: 3 },
    { stepsPerBeat: 3, line: '..xx....xx..', weight: 2 },
    { stepsPerBeat: 3, line: 'x-----..xx--', weight: 2 },
  ],
  addsNinths: true,
  bassGate: 0.95,
  chordGate: 0.8,
};

export const ballad: Feel = {
  instruments: { drumKit: 40, bass: 32, chords: 4 },
  drums: [
    {
      stepsPerBeat: 2,
      weight: 3,
      lines: { swirl: 'o...o...', snare: '..o...o.', hatFoot: '..o...o.', kick: 'g.......' },
    },
    {
      stepsPerBeat: 2,
      weight: 2,
      lines: { swirl: 'o...o...', snare: '..og..o.', hatFoot: '..o...o.', kick: 'g...g...' },
    },
    {
      stepsPerBeat: 2,
      weight: 1,
      lines: { ride: 'o.xoo.xo', swirl: 'g...g...', hatFoot: '..o...o.', kick: 'g.......' },
    },
  ],
  fills: [
    {
      stepsPerBeat: 3,
      lines: { swirl: 'o.....g.....', snare: '...o..o.oogo', hatFoot: '...o.....o..', kick: 'g...........' },
    },
    {
      stepsPerBeat: 2,
      lines: { swirl: 'o...o...', snare: '..o...oo', midTom: '.....o..', hatFoot: '..o...o.' },
    },
  ],
  bass: 'two',
  chords: [
    { stepsPerBeat: 2, line: 'o-------', weight: 3 },
    { stepsPerBeat: 2, line: 'o---..o-', weight: 2 },
    { stepsPerBeat: 2, line: 'o-----x-', weight: 2 },
    { stepsPerBeat: 2, line: '..o----.', weight: 1 },
  ],
  addsNinths: true,
  bassGate: 0.97,
  chordGate: 0.95,
};
