/** The built-in forms, each written in C in our own chart text. Harmony of *common practice*, no one's tune. */

/** What a form trains first, from the narrowest to the widest; a list shows the forms under these. */
export const FORM_GROUPS = [
  'one or two chords',
  'blues',
  'cadences',
  'chains',
  'other meters',
  'tunes',
] as const;
export type FormGroup = (typeof FORM_GROUPS)[number];

export interface Form {
  /** As the player asks for it. */
  readonly name: string;
  /** Other names for it. */
  readonly aliases: readonly string[];
  readonly group: FormGroup;
  /** What it trains, in a line. */
  readonly trains: string;
  readonly mode: 'major' | 'minor';
  readonly text: string;
}

export const FORMS: readonly Form[] = [
  {
    name: 'one-chord vamp',
    group: 'one or two chords',
    aliases: ['vamp', '1-chord vamp'],
    trains: 'One dominant chord and no hurry: find its third and its flat seventh.',
    mode: 'major',
    text: '| C7 | C7 | C7 | C7 |',
  },
  {
    name: 'minor one-chord vamp',
    group: 'one or two chords',
    aliases: ['minor vamp', 'minor 1-chord vamp'],
    trains: 'One minor chord and no hurry.',
    mode: 'minor',
    text: '| Cm7 | Cm7 | Cm7 | Cm7 |',
  },
  {
    name: 'two-chord vamp',
    group: 'one or two chords',
    aliases: ['2-chord vamp'],
    trains: 'I and IV, two bars each: the one half step that matters, over and over.',
    mode: 'major',
    text: '| C7 | C7 | F7 | F7 |',
  },
  {
    name: 'minor two-chord vamp',
    group: 'one or two chords',
    aliases: ['minor 2-chord vamp'],
    trains: 'Minor I and the dominant a fourth above it, a bar each.',
    mode: 'minor',
    text: '| Cm7 | F7 | Cm7 | F7 |',
  },
  {
    name: '12-bar blues',
    group: 'blues',
    aliases: ['blues', 'basic blues', '12-bar', '12-bar basic blues'],
    trains: 'Three dominant chords with time on each: hear the third change from I to IV.',
    mode: 'major',
    text: `| C7 | C7 | C7 | C7 |
           | F7 | F7 | C7 | C7 |
           | G7 | F7 | C7 | G7 |`,
  },
  {
    name: 'quick-change blues',
    group: 'blues',
    aliases: ['quick change', '12-bar quick-change blues'],
    trains: 'The IV arrives in bar 2: be ready for it at once.',
    mode: 'major',
    text: `| C7 | F7 | C7 | C7 |
           | F7 | F7 | C7 | C7 |
           | G7 | F7 | C7 | G7 |`,
  },
  {
    name: 'jazz blues',
    group: 'blues',
    aliases: ['12-bar jazz blues'],
    trains:
      'The blues with a ii–V to the IV, a diminished passing chord and a turnaround of two chords a bar.',
    mode: 'major',
    text: `| C7 | F7 | C7 | Gm7 C7 |
           | F7 | F#dim7 | C7 | A7b9 |
           | Dm7 | G7 | C7 A7 | Dm7 G7 |`,
  },
  {
    name: 'minor blues',
    group: 'blues',
    aliases: ['12-bar minor blues'],
    trains: 'Minor tonic and minor IV, then the flat sixth falling to the dominant.',
    mode: 'minor',
    text: `| Cm7 | Cm7 | Cm7 | Cm7 |
           | Fm7 | Fm7 | Cm7 | Cm7 |
           | Ab7 | G7 | Cm7 | G7 |`,
  },
  {
    name: '8-bar blues',
    group: 'blues',
    aliases: ['8-bar'],
    trains: 'The short form: the V comes in bar 2 and a chorus is over soon.',
    mode: 'major',
    text: `| C7 | G7 | F7 | F7 |
           | C7 | G7 | C7 | G7 |`,
  },
  {
    name: '16-bar blues',
    group: 'blues',
    aliases: ['16-bar'],
    trains: 'The long form: eight bars on the I before anything moves.',
    mode: 'major',
    text: `| C7 | C7 | C7 | C7 |
           | C7 | C7 | C7 | C7 |
           | F7 | F7 | C7 | C7 |
           | G7 | F7 | C7 | G7 |`,
  },
  {
    name: 'major ii-V-I',
    group: 'cadences',
    aliases: ['ii-V-I', '2-5-1', 'major 2-5-1'],
    trains: 'The cadence of the standards: the seventh of each chord falls to the third of the next.',
    mode: 'major',
    text: '| Dm7 | G7 | Cmaj7 | Cmaj7 |',
  },
  {
    name: 'minor ii-V-I',
    group: 'cadences',
    aliases: ['minor 2-5-1'],
    trains: 'The cadence in minor: half-diminished, a dominant with its flat ninth, minor sixth.',
    mode: 'minor',
    text: '| Dm7b5 | G7b9 | Cm6 | Cm6 |',
  },
  {
    name: 'turnaround',
    group: 'cadences',
    aliases: ['I-vi-ii-V', '1-6-2-5'],
    trains: 'Two chords a bar: four thirds to find before the bar lines come round.',
    mode: 'major',
    text: `| C6 Am7 | Dm7 G7 | Em7 A7b9 | Dm7 G7 |`,
  },
  {
    name: 'minor line',
    group: 'cadences',
    aliases: ['minor cliche', 'minor line down'],
    trains:
      'One minor chord whose inner voice falls by half steps: root, major seventh, flat seventh, sixth.',
    mode: 'minor',
    text: '| Cm | Cm(maj7) | Cm7 | Cm6 |',
  },
  {
    name: 'plagal cadence',
    group: 'cadences',
    aliases: ['backdoor', 'IV to iv'],
    trains: 'Major IV turns minor: its third falls a half step, and the flat seventh leads home.',
    mode: 'major',
    text: '| Cmaj7 | Fmaj7 | Fm6 Bb7 | C6 |',
  },
  {
    name: 'chain of dominants',
    group: 'chains',
    aliases: ['dominant cycle', 'circle of fifths'],
    trains: 'Each seventh falls a half step to the next third, each third to the next seventh.',
    mode: 'major',
    text: '| E7 A7 | D7 G7 | C6 | C6 |',
  },
  {
    name: 'descending ii-Vs',
    group: 'chains',
    aliases: ['chain of ii-Vs', 'ii-V chain'],
    trains: 'A ii–V a bar, each a whole step lower: a guide-tone line that only ever falls by half steps.',
    mode: 'major',
    text: '| Em7 A7 | Dm7 G7 | Cm7 F7 | Bm7b5 E7b9 | Am7 D7 | Dm7 G7 | C6 | C6 |',
  },
  {
    name: 'diatonic circle',
    group: 'chains',
    aliases: ['minor circle', 'circle in minor'],
    trains: 'The seven chords of a minor key by falling fifths, the leading tone only at the end.',
    mode: 'minor',
    text: `| Fm7 | Bb7 | Ebmaj7 | Abmaj7 |
           | Dm7b5 | G7b9 | Cm6 | Cm6 |`,
  },
  {
    name: 'side step',
    group: 'chains',
    aliases: ['half step up', 'modal side step'],
    trains: 'One minor mode, then the same a half step higher: every finger moves, and moves back.',
    mode: 'minor',
    text: '| Cm7 | Cm7 | C#m7 | Cm7 |',
  },
  {
    name: '3/4 blues',
    group: 'other meters',
    aliases: ['blues in three', 'jazz waltz blues'],
    trains: 'The blues in three: the strong beat comes round sooner than the hand expects.',
    mode: 'major',
    text: `meter: 3/4
           | C7 | F7 | C7 | C7 |
           | F7 | F7 | C7 | A7 |
           | Dm7 | G7 | C7 | G7 |`,
  },
  {
    name: '12/8 blues',
    group: 'other meters',
    aliases: ['slow blues', 'blues in 12/8'],
    trains: 'Slow, three eighths a beat, a ninth on every chord: time to lean on the third.',
    mode: 'major',
    text: `meter: 12/8
           | C9 | F9 | C9 | C9 |
           | F9 | F9 | C9 | A7 |
           | D9 | G9 | C9 F9 | C9 G9 |`,
  },
  {
    name: '5/4 vamp',
    group: 'other meters',
    aliases: ['vamp in five'],
    trains: 'Minor I and its dominant, three beats and two: hear where the two begins.',
    mode: 'minor',
    text: `meter: 5/4
           | Cm7 / / G7 / | Cm7 / / G7 / | Cm7 / / G7 / | Cm7 |`,
  },
  {
    name: '6/8 ballad',
    group: 'other meters',
    aliases: ['ballad in 6/8'],
    trains: 'Two slow beats a bar, triads with their bass moving: the third is all that tells them apart.',
    mode: 'major',
    text: `meter: 6/8
           | C | C/E | F | F | Dm7 | G | C | G/B |`,
  },
  {
    name: '32-bar AABA',
    group: 'tunes',
    aliases: ['AABA', '32-bar'],
    trains: 'Two chords a bar round the tonic, then a bridge of dominants that stand for two bars each.',
    mode: 'major',
    text: `[A1]
           | C6 Am7 | Dm7 G7 | Em7 A7 | Dm7 G7 |
           | Gm7 C7 | F6 Fm6 | Em7 A7 | Dm7 G7 |
           [A2]
           | C6 Am7 | Dm7 G7 | Em7 A7 | Dm7 G7 |
           | Gm7 C7 | F6 Fm6 | Dm7 G7 | C6 |
           [B]
           | E7 | E7 | A7 | A7 |
           | D7 | D7 | G7 | G7 |
           [A3]
           | C6 Am7 | Dm7 G7 | Em7 A7 | Dm7 G7 |
           | Gm7 C7 | F6 Fm6 | Dm7 G7 | C6 |`,
  },
  {
    name: '16-bar minor tune',
    group: 'tunes',
    aliases: ['16-bar minor', 'minor tune'],
    trains: 'Minor home, a ii–V–I to the relative major in the middle, and back: two homes to hear.',
    mode: 'minor',
    text: `[A]
           | Cm7 | Fm7 | Dm7b5 | G7b9 |
           | Cm7 | Cm7 | Fm7 | Bb7 |
           [B]
           | Ebmaj7 | Abmaj7 | Dm7b5 | G7b9 |
           | Cm7 | Abmaj7 | Dm7b5 G7b9 | Cm6 |`,
  },
];
