/** The built-in forms, each written in C in our own chart text. Harmony of *common practice*, no one's tune. */

export interface Form {
  /** As the player asks for it. */
  readonly name: string;
  /** Other names for it. */
  readonly aliases: readonly string[];
  /** What it trains, in a line. */
  readonly trains: string;
  readonly mode: 'major' | 'minor';
  readonly text: string;
}

export const FORMS: readonly Form[] = [
  {
    name: '12-bar blues',
    aliases: ['blues', 'basic blues', '12-bar', '12-bar basic blues'],
    trains: 'Three dominant chords with time on each: hear the third change from I to IV.',
    mode: 'major',
    text: `| C7 | C7 | C7 | C7 |
           | F7 | F7 | C7 | C7 |
           | G7 | F7 | C7 | G7 |`,
  },
  {
    name: 'quick-change blues',
    aliases: ['quick change', '12-bar quick-change blues'],
    trains: 'The IV arrives in bar 2: be ready for it at once.',
    mode: 'major',
    text: `| C7 | F7 | C7 | C7 |
           | F7 | F7 | C7 | C7 |
           | G7 | F7 | C7 | G7 |`,
  },
  {
    name: 'jazz blues',
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
    aliases: ['12-bar minor blues'],
    trains: 'Minor tonic and minor IV, then the flat sixth falling to the dominant.',
    mode: 'minor',
    text: `| Cm7 | Cm7 | Cm7 | Cm7 |
           | Fm7 | Fm7 | Cm7 | Cm7 |
           | Ab7 | G7 | Cm7 | G7 |`,
  },
  {
    name: '8-bar blues',
    aliases: ['8-bar'],
    trains: 'The short form: the V comes in bar 2 and a chorus is over soon.',
    mode: 'major',
    text: `| C7 | G7 | F7 | F7 |
           | C7 | G7 | C7 | G7 |`,
  },
  {
    name: '16-bar blues',
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
    aliases: ['ii-V-I', '2-5-1', 'major 2-5-1'],
    trains: 'The cadence of the standards: the seventh of each chord falls to the third of the next.',
    mode: 'major',
    text: '| Dm7 | G7 | Cmaj7 | Cmaj7 |',
  },
  {
    name: 'minor ii-V-I',
    aliases: ['minor 2-5-1'],
    trains: 'The cadence in minor: half-diminished, a dominant with its flat ninth, minor sixth.',
    mode: 'minor',
    text: '| Dm7b5 | G7b9 | Cm6 | Cm6 |',
  },
  {
    name: '32-bar AABA',
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
    name: 'one-chord vamp',
    aliases: ['vamp', '1-chord vamp'],
    trains: 'One dominant chord and no hurry: find its third and its flat seventh.',
    mode: 'major',
    text: '| C7 | C7 | C7 | C7 |',
  },
  {
    name: 'minor one-chord vamp',
    aliases: ['minor vamp', 'minor 1-chord vamp'],
    trains: 'One minor chord and no hurry.',
    mode: 'minor',
    text: '| Cm7 | Cm7 | Cm7 | Cm7 |',
  },
  {
    name: 'two-chord vamp',
    aliases: ['2-chord vamp'],
    trains: 'I and IV, two bars each: the one half step that matters, over and over.',
    mode: 'major',
    text: '| C7 | C7 | F7 | F7 |',
  },
  {
    name: 'minor two-chord vamp',
    aliases: ['minor 2-chord vamp'],
    trains: 'Minor I and the dominant a fourth above it, a bar each.',
    mode: 'minor',
    text: '| Cm7 | F7 | Cm7 | F7 |',
  },
];
