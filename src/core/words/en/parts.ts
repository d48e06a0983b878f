/** What several screens have in common. */

export const parts = {
  title: 'Landfall',
  putAway: ({ sentence }: { sentence: string }) => `Close this message: ${sentence}`,
  newer: {
    waits: 'A newer Landfall is on this machine. Your takes and settings stay as they are.',
    use: 'Use it now',
  },
  /** Read out before the chords of a bar. */
  bar: ({ bar }: { bar: number }) => `Bar ${bar}:`,
  // A kept take can have a name, and a star that marks it.
  tap: 'Tap',
  tapWhy: 'Tap the beat four times or more',
  // A kept take is named, and marked as one to hold on to.
  name: 'Name it',
  nameTake: ({ title }: { title: string }) => `Name ${title}`,
  takeName: 'Name of the take',
  keepName: 'Keep the name',
  hold: 'Star it',
  holdTake: ({ title }: { title: string }) => `Star ${title}`,
  bandBar: ({ bar }: { bar: number }) => `Bar ${bar}, the band’s turn:`,
  /** Ends work that takes its time. */
  cancel: 'Cancel',
  barsNotDrawn: ({ from, to }: { from: number; to: number }) => `Bars ${from} to ${to}`,
  goesOn: 'continues',
  /** The title of the demo. */
  demo: 'Demo take',
  earlierLanding: ({ chorus, landing }: { chorus: number; landing: string }) =>
    `Chorus ${chorus}. ${landing}`,
  /** "A 7: third, 3, 20 ms late.", read out. */
  landing: ({
    chord,
    role,
    degree,
    timing,
  }: {
    chord: string;
    role: string;
    degree: string;
    timing: string;
  }) => `${chord}: ${[role, degree, timing].filter((part) => part !== '').join(', ')}.`,
  onTheBeat: 'on the beat',
  early: ({ ms }: { ms: number }) => `${ms} ms early`,
  late: ({ ms }: { ms: number }) => `${ms} ms late`,
  inTune: 'in tune',
  /** With its sign, which is a true minus. */
  cents: ({ cents }: { cents: number }) => `${cents < 0 ? '−' : '+'}${Math.abs(cents)} cents`,
  ofAll: ({ count, all }: { count: number; all: number }) => `${count} of ${all}`,
  /** A key in a title, a list or the head of the page. */
  key: ({ tonic, mode }: { tonic: string; mode: 'major' | 'minor' }) =>
    mode === 'minor' ? `${tonic} minor` : tonic,
  titleInKey: ({ title, key }: { title: string; key: string }) => `${title} in ${key}`,

  // The marks of the roles.
  marks: 'Key to the marks',
  open: 'rest',
  meanings: {
    root: 'the tone the chord is named after',
    third: 'tells major from minor',
    fifth: 'a chord tone that says little about the chord',
    seventh: 'moves on to the third of the next chord; the sixth of a 6 chord counts as a seventh',
    extension: 'a 9, 11 or 13 that the symbol names',
    colour: 'not in the chord, but in the scales you play from',
    blue: 'between the two thirds, or the flat five',
    outside: 'neither in the chord nor in the scales',
    open: 'nothing played at the change: counted apart, never as a miss',
  },

  // What a screen reader says for the signs of a chord symbol or a degree.
  signs: {
    flat: 'flat',
    sharp: 'sharp',
    doubleSharp: 'double sharp',
    majorSeventh: 'major seventh',
    halfDiminished: 'half-diminished',
    diminished: 'diminished',
    minor: 'minor',
    over: 'over',
  },
};
