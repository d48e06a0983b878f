/** Feels with even eighths or sixteenths. Common practice. */
import type { Feel } from './feel.ts';

export const straight: Feel = {
  instruments: { drumKit: 0, bass: 33, chords: 4 },
  drums: [
    { stepsPerBeat: 2, weight: 4, lines: { hat: 'XoxoXoxo', snare: '..X...X.', kick: 'X....x..' } },
    { stepsPerBeat: 2, weight: 2, lines: { hat: 'XoxoXoxo', snare: '..X...X.', kick: 'X..xx...' } },
    {
      stepsPerBeat: 2,
      weight: 2,
      lines: { ride: 'XoxoXoxo', hatFoot: '..x...x.', snare: '..X...Xg', kick: 'X....x..' },
    },
  ],
  fills: [
    {
      stepsPerBeat: 4,
      lines: { hat: 'X.o.x.o.........', snare: '....X...xoxoXoxx', kick: 'X.......x.......' },
    },
    {
      stepsPerBeat: 4,
      lines: {
        hat: 'X.o.x.o.X.o.....',
        snare: '....X.......xx..',
        floorTom: '..............xX',
        kick: 'X.......x.......',
      },
    },
  ],
  bass: [
    { stepsPerBeat: 2, line: 'R--R5--a', weight: 3 },
    { stepsPerBeat: 2, line: 'R-.R5-6-', weight: 2 },
    { stepsPerBeat: 2, line: 'R--R--5a', weight: 2 },
  ],
  chords: [
    { stepsPerBeat: 2, line: 'x--x----', weight: 3 },
    { stepsPerBeat: 2, line: 'x-----x-', weight: 2 },
    { stepsPerBeat: 2, line: '.x-x--..', weight: 1 },
    { stepsPerBeat: 2, line: 'x-------', weight: 2 },
  ],
  addsNinths: true,
  bassGate: 0.92,
  chordGate: 0.85,
};

export const rock: Feel = {
  instruments: { drumKit: 0, bass: 33, chords: 27 },
  drums: [
    { stepsPerBeat: 2, weight: 4, lines: { hat: 'XxXxXxXx', snare: '..X...X.', kick: 'X...XX..' } },
    { stepsPerBeat: 2, weight: 3, lines: { hat: 'XxXxXxXx', snare: '..X...X.', kick: 'X..XX...' } },
    {
      stepsPerBeat: 2,
      weight: 1,
      lines: { hat: 'XxXxXx..', hatOpen: '......x.', snare: '..X...X.', kick: 'X...XX.x' },
    },
  ],
  fills: [
    {
      stepsPerBeat: 4,
      lines: {
        hat: 'X.x.X.x.........',
        snare: '....X...XxXx....',
        lowTom: '............xx..',
        floorTom: '..............XX',
        kick: 'X.......X...X...',
      },
    },
    {
      stepsPerBeat: 4,
      lines: { hat: 'X.x.X.x.X.x.....', snare: '....X.......XxXX', kick: 'X.......XX......' },
    },
  ],
  bass: [
    { stepsPerBeat: 2, line: 'RRRRRRRR', weight: 3 },
    { stepsPerBeat: 2, line: 'RRRRRR5a', weight: 2 },
    { stepsPerBeat: 2, line: 'R-RR5-Ra', weight: 1 },
  ],
  chords: [
    { stepsPerBeat: 2, line: 'x---x---', weight: 3 },
    { stepsPerBeat: 2, line: 'x--x--x-', weight: 2 },
    { stepsPerBeat: 2, line: 'x-------', weight: 2 },
  ],
  addsNinths: false,
  bassGate: 0.88,
  chordGate: 0.9,
};

export const funk: Feel = {
  instruments: { drumKit: 0, bass: 33, chords: 27 },
  drums: [
    {
      stepsPerBeat: 4,
      weight: 3,
      lines: { hat: 'XoxoXoxoXoxoXoxo', snare: '....X..g.g..X..g', kick: 'X..x......x..x..' },
    },
    {
      stepsPerBeat: 4,
      weight: 3,
      lines: { hat: 'XoxoXoxoXoxoXoxo', snare: '....X..g....X...', kick: 'X.x...x...x.....' },
    },
    {
      stepsPerBeat: 4,
      weight: 2,
      lines: {
        hat: 'XoxoXoxoXoxoXo..',
        hatOpen: '..............x.',
        snare: '....X..g.g..X...',
        kick: 'X..x....x.x.....',
      },
    },
  ],
  fills: [
    {
      stepsPerBeat: 4,
      lines: { hat: 'XoxoXoxo........', snare: '....X..gXgxgXxXx', kick: 'X..x....x.......' },
    },
    {
      stepsPerBeat: 4,
      lines: {
        hat: 'XoxoXoxoXo......',
        snare: '....X..g..X.x...',
        midTom: '.............x..',
        floorTom: '..............xX',
        kick: 'X..x......x.....',
      },
    },
  ],
  bass: [
    { stepsPerBeat: 4, line: 'R..R..8.R..5..7a', weight: 2 },
    { stepsPerBeat: 4, line: 'R-..R.8...R.5.7.', weight: 2 },
    { stepsPerBeat: 4, line: 'R..RR..8..7.5..a', weight: 2 },
    { stepsPerBeat: 4, line: 'R-....7.8.....5a', weight: 1 },
  ],
  chords: [
    { stepsPerBeat: 4, line: '..X...xX..x..X..', weight: 3 },
    { stepsPerBeat: 4, line: '....X..x....X..x', weight: 2 },
    { stepsPerBeat: 4, line: 'X..x......X..x..', weight: 2 },
  ],
  addsNinths: true,
  bassGate: 0.75,
  chordGate: 0.5,
};

export const bossa: Feel = {
  instruments: { drumKit: 0, bass: 32, chords: 24 },
  drums: [
    {
      stepsPerBeat: 2,
      weight: 3,
      lines: { hat: 'xoooxooo', sidestick: 'x..x..x...x..x..', kick: 'x..ox..o', hatFoot: '..o...o.' },
    },
    {
      stepsPerBeat: 2,
      weight: 1,
      lines: { shaker: 'xoxoxoxo', sidestick: 'x..x..x...x..x..', kick: 'x..ox..o', hatFoot: '..o...o.' },
    },
  ],
  fills: [
    {
      stepsPerBeat: 2,
      lines: { hat: 'xoooxo..', sidestick: '..x.x...', snare: '......oo', kick: 'x..ox..o' },
    },
    {
      stepsPerBeat: 4,
      lines: {
        hat: 'x.o.o.o.x.o.....',
        sidestick: '....x.......x...',
        lowTom: '.............o..',
        floorTom: '..............oo',
        kick: 'x.....o.x.....o.',
      },
    },
  ],
  bass: [
    { stepsPerBeat: 2, line: 'R--55--R', weight: 3 },
    { stepsPerBeat: 2, line: 'R--55--a', weight: 2 },
  ],
  chords: [
    { stepsPerBeat: 2, line: 'x-.x-.x-..x-.x--', weight: 3 },
    { stepsPerBeat: 2, line: 'x-.x-.x..x-.x--.', weight: 2 },
    { stepsPerBeat: 2, line: '.x-.x-.>x-.x-.x-', weight: 1 },
  ],
  addsNinths: true,
  bassGate: 0.95,
  chordGate: 0.85,
};
