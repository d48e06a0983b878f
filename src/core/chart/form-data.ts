/** The built-in forms, each written in C in our own chart text. Harmony of *common practice*, no one's tune. */

import type { FeelName } from './feel-names.ts';

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
  readonly mode: 'major' | 'minor';
  /** How it is usually played, and at what tempo one learns it, in beats a minute. *Common practice.* */
  readonly feel: FeelName;
  readonly bpm: number;
  readonly text: string;
}

export const FORMS: readonly Form[] = [
  {
    name: 'one-chord vamp',
    feel: 'funk',
    bpm: 96,
    group: 'one or two chords',
    aliases: ['vamp', '1-chord vamp'],
    mode: 'major',
    text: '| C7 | C7 | C7 | C7 |',
  },
  {
    name: 'minor one-chord vamp',
    feel: 'funk',
    bpm: 96,
    group: 'one or two chords',
    aliases: ['minor vamp', 'minor 1-chord vamp'],
    mode: 'minor',
    text: '| Cm7 | Cm7 | Cm7 | Cm7 |',
  },
  {
    name: 'two-chord vamp',
    feel: 'shuffle',
    bpm: 92,
    group: 'one or two chords',
    aliases: ['2-chord vamp'],
    mode: 'major',
    text: '| C7 | C7 | F7 | F7 |',
  },
  {
    name: 'minor two-chord vamp',
    feel: 'bossa',
    bpm: 112,
    group: 'one or two chords',
    aliases: ['minor 2-chord vamp'],
    mode: 'minor',
    text: '| Cm7 | F7 | Cm7 | F7 |',
  },
  {
    name: '12-bar blues',
    feel: 'shuffle',
    bpm: 96,
    group: 'blues',
    aliases: ['blues', 'basic blues', '12-bar', '12-bar basic blues'],
    mode: 'major',
    text: `| C7 | C7 | C7 | C7 |
           | F7 | F7 | C7 | C7 |
           | G7 | F7 | C7 | G7 |`,
  },
  {
    name: 'quick-change blues',
    feel: 'shuffle',
    bpm: 104,
    group: 'blues',
    aliases: ['quick change', '12-bar quick-change blues'],
    mode: 'major',
    text: `| C7 | F7 | C7 | C7 |
           | F7 | F7 | C7 | C7 |
           | G7 | F7 | C7 | G7 |`,
  },
  {
    name: 'jazz blues',
    feel: 'swing',
    bpm: 132,
    group: 'blues',
    aliases: ['12-bar jazz blues'],
    mode: 'major',
    text: `| C7 | F7 | C7 | Gm7 C7 |
           | F7 | F#dim7 | C7 | A7b9 |
           | Dm7 | G7 | C7 A7 | Dm7 G7 |`,
  },
  {
    name: 'minor blues',
    feel: 'swing',
    bpm: 108,
    group: 'blues',
    aliases: ['12-bar minor blues'],
    mode: 'minor',
    text: `| Cm7 | Cm7 | Cm7 | Cm7 |
           | Fm7 | Fm7 | Cm7 | Cm7 |
           | Ab7 | G7 | Cm7 | G7 |`,
  },
  {
    name: '8-bar blues',
    feel: 'shuffle',
    bpm: 84,
    group: 'blues',
    aliases: ['8-bar'],
    mode: 'major',
    text: `| C7 | G7 | F7 | F7 |
           | C7 | G7 | C7 | G7 |`,
  },
  {
    name: '16-bar blues',
    feel: 'shuffle',
    bpm: 112,
    group: 'blues',
    aliases: ['16-bar'],
    mode: 'major',
    text: `| C7 | C7 | C7 | C7 |
           | C7 | C7 | C7 | C7 |
           | F7 | F7 | C7 | C7 |
           | G7 | F7 | C7 | G7 |`,
  },
  {
    name: 'major ii-V-I',
    feel: 'swing',
    bpm: 112,
    group: 'cadences',
    aliases: ['ii-V-I', '2-5-1', 'major 2-5-1'],
    mode: 'major',
    text: '| Dm7 | G7 | Cmaj7 | Cmaj7 |',
  },
  {
    name: 'minor ii-V-I',
    feel: 'swing',
    bpm: 104,
    group: 'cadences',
    aliases: ['minor 2-5-1'],
    mode: 'minor',
    text: '| Dm7b5 | G7b9 | Cm6 | Cm6 |',
  },
  {
    name: 'turnaround',
    feel: 'swing',
    bpm: 100,
    group: 'cadences',
    aliases: ['I-vi-ii-V', '1-6-2-5'],
    mode: 'major',
    text: `| C6 Am7 | Dm7 G7 | Em7 A7b9 | Dm7 G7 |`,
  },
  {
    name: 'minor line',
    feel: 'ballad',
    bpm: 72,
    group: 'cadences',
    aliases: ['minor cliche', 'minor line down'],
    mode: 'minor',
    text: '| Cm | Cm(maj7) | Cm7 | Cm6 |',
  },
  {
    name: 'plagal cadence',
    feel: 'ballad',
    bpm: 76,
    group: 'cadences',
    aliases: ['backdoor', 'IV to iv'],
    mode: 'major',
    text: '| Cmaj7 | Fmaj7 | Fm6 Bb7 | C6 |',
  },
  {
    name: 'chain of dominants',
    feel: 'swing',
    bpm: 96,
    group: 'chains',
    aliases: ['dominant cycle', 'circle of fifths'],
    mode: 'major',
    text: '| E7 A7 | D7 G7 | C6 | C6 |',
  },
  {
    name: 'descending ii-Vs',
    feel: 'swing',
    bpm: 88,
    group: 'chains',
    aliases: ['chain of ii-Vs', 'ii-V chain'],
    mode: 'major',
    text: '| Em7 A7 | Dm7 G7 | Cm7 F7 | Bm7b5 E7b9 | Am7 D7 | Dm7 G7 | C6 | C6 |',
  },
  {
    name: 'diatonic circle',
    feel: 'bossa',
    bpm: 104,
    group: 'chains',
    aliases: ['minor circle', 'circle in minor'],
    mode: 'minor',
    text: `| Fm7 | Bb7 | Ebmaj7 | Abmaj7 |
           | Dm7b5 | G7b9 | Cm6 | Cm6 |`,
  },
  {
    name: 'side step',
    feel: 'straight',
    bpm: 100,
    group: 'chains',
    aliases: ['half step up', 'modal side step'],
    mode: 'minor',
    text: '| Cm7 | Cm7 | C#m7 | Cm7 |',
  },
  {
    name: '3/4 blues',
    feel: 'swing',
    bpm: 120,
    group: 'other meters',
    aliases: ['blues in three', 'jazz waltz blues'],
    mode: 'major',
    text: `meter: 3/4
           | C7 | F7 | C7 | C7 |
           | F7 | F7 | C7 | A7 |
           | Dm7 | G7 | C7 | G7 |`,
  },
  {
    name: '12/8 blues',
    feel: 'slow-blues',
    bpm: 60,
    group: 'other meters',
    aliases: ['slow blues', 'blues in 12/8'],
    mode: 'major',
    text: `meter: 12/8
           | C9 | F9 | C9 | C9 |
           | F9 | F9 | C9 | A7 |
           | D9 | G9 | C9 F9 | C9 G9 |`,
  },
  {
    name: '5/4 vamp',
    feel: 'swing',
    bpm: 112,
    group: 'other meters',
    aliases: ['vamp in five'],
    mode: 'minor',
    text: `meter: 5/4
           | Cm7 / / G7 / | Cm7 / / G7 / | Cm7 / / G7 / | Cm7 |`,
  },
  {
    name: '6/8 ballad',
    feel: 'ballad',
    bpm: 52,
    group: 'other meters',
    aliases: ['ballad in 6/8'],
    mode: 'major',
    text: `meter: 6/8
           | C | C/E | F | F | Dm7 | G | C | G/B |`,
  },
  {
    name: '32-bar AABA',
    feel: 'swing',
    bpm: 144,
    group: 'tunes',
    aliases: ['AABA', '32-bar'],
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
    feel: 'swing',
    bpm: 120,
    group: 'tunes',
    aliases: ['16-bar minor', 'minor tune'],
    mode: 'minor',
    text: `[A]
           | Cm7 | Fm7 | Dm7b5 | G7b9 |
           | Cm7 | Cm7 | Fm7 | Bb7 |
           [B]
           | Ebmaj7 | Abmaj7 | Dm7b5 | G7b9 |
           | Cm7 | Abmaj7 | Dm7b5 G7b9 | Cm6 |`,
  },
];
