/** The built-in forms, as a set list shows them. The command line has names of its own for them. */

export const forms = {
  // The built-in forms. Their names are those of the command line; here they are as a set list shows them.
  formGroups: {
    'one or two chords': 'One or two chords',
    blues: 'Blues',
    cadences: 'Cadences',
    chains: 'Chains',
    'other meters': 'Other meters',
    tunes: 'Tunes',
  },
  forms: {
    'one-chord vamp': {
      title: 'One-chord vamp',
      trains: 'One dominant chord for as long as you like: find its third and its flat seventh.',
    },
    'minor one-chord vamp': {
      title: 'Minor one-chord vamp',
      trains: 'One minor chord for as long as you like: find its third and its seventh.',
    },
    'two-chord vamp': {
      title: 'Two-chord vamp',
      trains: 'I and IV, two bars each: the third of the I falls a half step to the seventh of the IV.',
    },
    'minor two-chord vamp': {
      title: 'Minor two-chord vamp',
      trains: 'Minor I and the dominant a fourth above it, a bar each.',
    },
    '12-bar blues': {
      title: '12-bar blues',
      trains: 'Three dominant chords with time on each: hear the third change from I to IV.',
    },
    'quick-change blues': {
      title: 'Quick-change blues',
      trains: 'The IV arrives in bar 2: be ready for it at once.',
    },
    'jazz blues': {
      title: 'Jazz blues',
      trains:
        'The blues with a ii–V to the IV, a diminished passing chord and a turnaround of two chords a bar.',
    },
    'minor blues': {
      title: 'Minor blues',
      trains: 'Minor tonic and minor IV, then the chord on the flat sixth, which falls to the dominant.',
    },
    '8-bar blues': {
      title: '8-bar blues',
      trains: 'The short form: the V comes already in bar 2.',
    },
    '16-bar blues': {
      title: '16-bar blues',
      trains: 'The long form: eight bars on the I before the first change.',
    },
    'major ii-V-I': {
      title: 'Major ii–V–I',
      trains: 'The most common cadence of jazz: the seventh of each chord falls to the third of the next.',
    },
    'minor ii-V-I': {
      title: 'Minor ii–V–I',
      trains: 'The cadence in minor: half-diminished, a dominant with its flat ninth, minor sixth.',
    },
    turnaround: {
      title: 'Turnaround',
      trains: 'Two chords a bar: another third every two beats.',
    },
    'minor line': {
      title: 'Minor line',
      trains:
        'One minor chord whose inner voice falls by half steps: root, major seventh, flat seventh, sixth.',
    },
    'plagal cadence': {
      title: 'Plagal cadence',
      trains:
        'The IV changes from major to minor: its third falls a half step. The dominant on the flat seventh leads back to the I.',
    },
    'chain of dominants': {
      title: 'Chain of dominants',
      trains: 'Each seventh falls a half step to the next third, each third to the next seventh.',
    },
    'descending ii-Vs': {
      title: 'Descending ii–Vs',
      trains: 'A ii–V in each bar, each a step lower than the last: the guide tones fall by step.',
    },
    'diatonic circle': {
      title: 'Diatonic circle',
      trains: 'The seven chords of a minor key by falling fifths, the leading tone only at the end.',
    },
    'side step': {
      title: 'Side step',
      trains: 'One minor chord, then the same a half step higher: all tones move up, and back again.',
    },
    '3/4 blues': {
      title: '3/4 blues',
      trains: 'The blues in three: the strong beat comes every three beats.',
    },
    '12/8 blues': {
      title: '12/8 blues',
      trains: 'Slow, three eighths to a beat, a ninth in every chord: time to hear each third.',
    },
    '5/4 vamp': {
      title: '5/4 vamp',
      trains: 'Minor I for three beats, its dominant for two: hear where the dominant begins.',
    },
    '6/8 ballad': {
      title: '6/8 ballad',
      trains: 'Two slow beats a bar, triads over a moving bass: only the third tells major from minor.',
    },
    '32-bar AABA': {
      title: '32-bar AABA',
      trains: 'Two chords a bar around the tonic, then a bridge of dominants that last two bars each.',
    },
    '16-bar minor tune': {
      title: '16-bar minor tune',
      trains: 'A minor key, a ii–V–I to its relative major in the middle, and back: two tonics to hear.',
    },
  },
};
