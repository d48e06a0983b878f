/** More takes worked by hand, of tones: chords, minor keys, thirds, functions, meters, pickups; see hand-cases.ts. */
import { G_TO_C, type HandCase } from './hand-cases.ts';

const chords: readonly HandCase[] = [
  {
    name: 'B flat over G7b9',
    chart: 'key: C\n| G7b9 |',
    line: '0 1 Bb4, 2 1 Ab4, 4 1 B4',
    says: { notes: 'G7b9 #9 | G7b9 b9 | G7b9 3', roles: 'colour extension third' },
    why: 'Beside a b9 the tone is the #9, never a b3.',
  },
  {
    name: 'the third and the raised ninth of C7#9',
    chart: 'key: C\n| C7#9 |',
    line: '0 1 Eb4, 1 1 E4',
    says: {
      notes: 'C7#9 #9 | C7#9 3',
      roles: 'extension third',
      thirds: 'flat 0, into 3 0, back 0, hanging 0, blue 0',
    },
    why: 'The chord names the #9: a chord tone, and no b3.',
  },
  {
    name: 'an altered dominant',
    chart: 'key: C\n| G7alt | Cmaj7 |',
    line: '0 1 Ab4, 1 1 B4, 2 1 Eb5, 4 1 E5',
    says: { roles: 'extension third extension third', landings: 'G7alt b9 | Cmaj7 3' },
    why: 'Alt names b9 and b13 beside third and seventh.',
  },
  {
    name: 'F sharp over C7#11 and over C7',
    chart: 'key: C\n| C7#11 | C7 |',
    line: '0 1 F#4, 5 1 F#4',
    says: { notes: 'C7#11 #11 | C7 b5', roles: 'extension blue' },
    why: 'The symbol decides between the #11 and the b5.',
  },
  {
    name: 'the sixth of a sixth chord',
    chart: 'key: C\n| C6 | Cmaj9 |',
    line: '0 1 A4, 4 1 D5, 5 1 B4',
    says: { notes: 'C6 6 | Cmaj9 9 | Cmaj9 7', roles: 'seventh extension seventh' },
    why: 'The sixth sits where the seventh does; the ninth is named by the symbol.',
  },
  {
    name: 'suspended chords',
    chart: 'key: C\n| D7sus4 | F7sus4 |',
    line: '0 1 G4, 4 1 Eb5',
    says: { landings: 'D7sus4 4 | F7sus4 b7', shares: '0/0 2/2 2/2' },
    why: 'No third to land on: the fourth and the seventh are the guide tones.',
  },
  {
    name: 'power chords',
    chart: 'key: C\n| C5 | F5 |',
    line: '0 1 G4, 4 1 E4',
    says: { shares: '0/0 0/0 1/2' },
    why: 'They have root and fifth alone: neither thirds nor guide tones are asked.',
  },
  {
    name: 'the seventh over E flat seven',
    chart: 'key: Bb\n| Bb7 | Eb7 |',
    line: '0 1 D5, 4 1 Db5',
    says: { notes: 'Bb7 3 | Eb7 b7', names: 'D5 Db5' },
    why: 'The b7 over Eb is called D flat.',
  },
  {
    name: 'a diminished seventh chord',
    chart: 'key: C\n| C#dim7 | Dm7 |',
    line: '0 1 Bb4, 4 1 A4',
    says: { roles: 'seventh fifth', landings: 'C#dim7 bb7 | Dm7 5' },
    why: 'The diminished seventh is a tone of the chord.',
  },
];

const minor: readonly HandCase[] = [
  {
    name: 'the major third and the minor sixth over the i of a minor key',
    chart: 'key: C minor\n| Cm7 | Fm7 |',
    line: '0 1 E4, 1 1 Ab4, 2 1 F4, 3 0.5 D4',
    says: { roles: 'outside colour colour colour' },
    why: 'The palette in minor is its pentatonic with 2, b6 and 6; the major third is not in it.',
  },
  {
    name: 'ii V i in minor',
    chart: 'key: C minor\n| Dm7b5 | G7b9 | Cm6 |',
    line: '0 1 Ab4, 4 1 B4, 8 1 A4, 9 1 B4',
    says: { roles: 'fifth third seventh outside', landings: 'Dm7b5 b5 | G7b9 3 | Cm6 6' },
    why: 'The leading tone is the third of the V; over the i it is outside.',
  },
  {
    name: 'the leading tone over a suspended V',
    chart: 'key: C minor\n| G7sus4 | Cm |',
    line: '0 1 B4, 4 1 C5',
    says: { roles: 'colour root' },
    why: 'Over the dominant the palette has the leading tone.',
  },
];

const thirds: readonly HandCase[] = [
  {
    name: 'a blue third',
    chart: 'key: C\n| C7 |',
    line: '0 1 Eb4+35, 2 1 G4',
    says: { roles: 'blue fifth', thirds: 'flat 1, into 3 0, back 0, hanging 0, blue 1' },
    why: '35 cents above the tempered b3 it is where the style wants it, and never left hanging.',
  },
  {
    name: 'a b3 left by leap',
    chart: 'key: C\n| C7 |',
    line: '0 1 Eb4, 1 1 Bb4',
    says: { thirds: 'flat 1, into 3 0, back 0, hanging 1, blue 0' },
    why: 'Nothing leads it on.',
  },
  {
    name: 'a b3 into the 3 within half a beat',
    chart: 'key: C\n| C7 |',
    line: '0 0.5 Eb4, 0.5 1 E4',
    says: { thirds: 'flat 1, into 3 1, back 0, hanging 0, blue 0' },
    why: 'The move of the style.',
  },
  {
    name: 'a b3 that goes up a beat later',
    chart: 'key: C\n| C7 |',
    line: '0 1 Eb4, 1 1 E4',
    says: { thirds: 'flat 1, into 3 0, back 0, hanging 0, blue 0' },
    why: 'Too slow for one gesture, but a step leads it on.',
  },
  {
    name: 'a 3 that falls to the b3 and on to the 9',
    chart: 'key: C\n| C7 |',
    line: '0 0.5 E4, 0.5 0.5 Eb4, 1 1 D4',
    says: { thirds: 'flat 1, into 3 0, back 1, hanging 0, blue 0' },
    why: '3 to b3 is told; a half step leads the b3 on.',
  },
];

const functions: readonly HandCase[] = [
  ['passing', '0 0.5 C4, 0.5 0.5 D4, 1 1 E4', '- passing -', 'From chord tone to chord tone by step.'],
  ['neighbour', '0 0.5 E4, 0.5 0.5 F4, 1 1 E4', '- neighbour -', 'A step away and back.'],
  [
    'enclosure',
    '0 1 G4, 1 0.5 F4, 1.5 0.5 D#4, 2 1 E4',
    '- enclosure enclosure -',
    'Two approaches, one from either side.',
  ],
  ['appoggiatura', '0 1 G3, 1 1 D4, 2 1 C4', '- appoggiatura -', 'A leap onto the beat, a step out.'],
  ['escape tone', '0 0.5 E4, 0.5 0.5 F4, 1 1 C4', '- escape -', 'A step in, a leap out the other way.'],
  ['approach', '0 0.5 C4, 0.5 0.5 F#4, 1 1 G4', '- approach -', 'A leap in off the beat, a half step out.'],
  ['free tone', '0 1 C4, 1 0.5 F#4, 1.5 1 C4', '- free -', 'Leaps on either side.'],
].map(([name, line, functions, why]) => ({
  name: `a tone over C7: ${name!}`,
  chart: 'key: C\n| C7 |',
  line: line!,
  says: { functions: functions! },
  why: why!,
}));

const acrossChords: readonly HandCase[] = [
  {
    name: 'a suspension',
    chart: 'key: C\n| C7 | G7 |',
    line: '2 2 C4, 4 1 C4, 5 1 B3',
    says: { functions: '- suspension -' },
    why: 'Kept from the chord where it was a tone, resolved down by step.',
  },
  {
    name: 'an anticipation a quarter early',
    chart: 'key: C\n| C7 | G7 |',
    line: '3 1 B3, 4 1 B3',
    says: { functions: 'anticipation -', notes: 'C7 7 | G7 3' },
    why: 'Earlier than the eighth it stays with the old chord, and is struck again where it belongs.',
  },
  {
    name: 'a step into a tone of the next chord',
    chart: 'key: C\n| C7 | A7 |',
    line: '2 1 G4, 3 1 D4, 4 1 E4',
    says: { functions: '- appoggiatura -' },
    why: 'The next note counts whatever chord it stands over: never free.',
  },
];

const time: readonly HandCase[] = [
  {
    name: 'three four',
    chart: 'key: G\nmeter: 3/4\n| G | D7 |',
    line: '0 1 B4, 1 1 A4, 2 1 G4, 3 1 F#4, 4 1 A4, 5 1 C5',
    says: { strong: 'x..x..', landings: 'G 3 | D7 3' },
    why: 'The one alone is strong in three.',
  },
  {
    name: 'five four',
    chart: 'key: C minor\nmeter: 5/4\n| Cm7 | Fm7 |',
    line: '0 1 Eb4, 1 1 F4, 2 1 G4, 3 1 Bb4, 4 1 C5, 5 1 Ab4',
    says: { strong: 'x..x.x', landings: 'Cm7 b3 | Fm7 b3' },
    why: 'Grouped 3+2: one and four are strong, and the next one.',
  },
  {
    name: 'twelve eight',
    chart: 'key: C\ntempo: 60\nmeter: 12/8\n| C7 | F7 |',
    line: '0 1 E4, 1 1 G4, 2 1 Bb4, 3 0.5 C5, 3.667 1.3 A4',
    says: { strong: 'x.x..', landings: 'C7 3 | F7 early 3' },
    why: 'One and the dotted halves are strong; an eighth is a third of the dotted beat.',
  },
  {
    name: 'twelve eight, half a dotted beat early',
    chart: 'key: C\ntempo: 60\nmeter: 12/8\n| C7 | F7 |',
    line: '0 1 E4, 3.5 1.3 A4',
    says: { landings: 'C7 3 | F7 held 3' },
    why: 'More than an eighth and 50 ms before the change.',
  },
  {
    name: 'an upbeat that the chart does not write',
    chart: 'key: C\n| C7 | F7 |',
    line: '-1.5 0.5 G4, -0.5 1 E4, 4 1 A4',
    says: { notes: 'none | C7 3 | F7 3', landings: 'C7 early 3 | F7 3' },
    why: 'No chord stands before the first downbeat; the first chord can be anticipated.',
  },
  {
    name: 'an upbeat over a written pickup',
    chart: 'key: C\npickup: 1\n| G7 |\n| C | F |',
    line: '-1 1 B3, 0 1 E4, 4 1 A4',
    says: { notes: 'G7 3 | C 3 | F 3', landings: 'C 3 | F 3' },
    why: 'Changes are asked about from the first downbeat on.',
  },
  {
    name: 'a gap of exactly a beat',
    chart: 'key: C\n| C7 |',
    line: '0 1 C4, 2 0.5 G4, 2.5 0.5 E4',
    says: { phraseEnds: 'C7 1 | C7 3' },
    why: 'A gap of a beat or more parts phrases.',
  },
];

const advised: readonly HandCase[] = [
  {
    name: 'the key’s major third over F7, over F6 and in passing',
    chart: 'key: C\n| F7 | F6 | F7 |',
    line: '0 2 E4, 2 1 A4, 4 2 E4, 6 1 A4, 8 0.5 F4, 8.5 0.5 E4, 9 1 Eb4',
    says: { clashes: '1' },
    why: 'Only beside the b7 it clashes, and only where it is no passing tone.',
  },
  {
    name: 'a phrase that ends on the ninth',
    chart: 'key: C\n| C7 |',
    line: '0 1 G4, 2 1 D5',
    says: { roles: 'fifth colour', advice: 'none' },
    why: 'The ladder asks for the ninth: it is a colour, and no fault.',
  },
  {
    name: 'a phrase that ends on the eleventh over a minor chord, and over a major one',
    chart: 'key: C minor\n| Cm7 | F7 |',
    line: '0 1 Eb4, 1 1 F4, 4 1 A4, 5 1 Bb4',
    says: { phraseEnds: 'Cm7 11 | F7 11', advice: 'phrase end F7 Bb4>A4' },
    why: 'Over minor the eleventh is a colour; over major the third lies a half step below.',
  },
  {
    name: 'a flat ninth that its next note resolves',
    chart: G_TO_C,
    line: '0 1 B3, 4 0.5 Db4, 4.5 1 C4',
    says: { landings: 'G7 3 | C7 b9 (outside), put right', advice: 'none' },
    why: 'What its own next note resolves is never corrected.',
  },
  {
    name: 'a landing on a flat ninth that nothing resolves',
    chart: G_TO_C,
    line: '0 1 B3, 4 1 Db4, 5 1 G4',
    says: { landings: 'G7 3 | C7 b9 (outside)', advice: 'landing C7 Db4>C4' },
    why: 'The root lies a half step below.',
  },
];

export const toneCases: readonly HandCase[] = [
  ...chords,
  ...minor,
  ...thirds,
  ...functions,
  ...acrossChords,
  ...time,
  ...advised,
];
