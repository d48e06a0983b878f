/**
 * Small takes, each worked out by hand from the definitions of grading and from what harmony textbooks call a tone ("from
 * memory"), before the grading was asked. At 120 bpm unless said: a beat is half a second, the tolerance a tenth of a beat.
 */

/** What a teacher would say. Only what is written is asked. */
export interface Said {
  /** A change each: "G7 3", "C7 early 3", "C7 held 9 (colour)", "C7 11 (colour), put right", "C7 open". */
  readonly landings?: string;
  /** A note each: its chord and degree, "G7 13"; "none" over no chord. */
  readonly notes?: string;
  /** A note each. */
  readonly roles?: string;
  /** A note each; "-" for a chord tone. */
  readonly functions?: string;
  /** A note each: "x" on a strong beat. */
  readonly strong?: string;
  /** A note each, by name. */
  readonly names?: string;
  /** Landings on thirds, guide tones and chord tones: "1/2 1/2 2/2". */
  readonly shares?: string;
  /** Moves of guide tones into changes: "b7>3 resolved". */
  readonly guide?: string;
  /** "flat 1, into 3 0, back 0, hanging 1, blue 0". */
  readonly thirds?: string;
  /** How many notes clash: the key's major third over a dominant IV. */
  readonly clashes?: string;
  /** Each piece: "phrase end C7 F4>E4", what was played and what would have resolved; "none". */
  readonly advice?: string;
  /** The last note of each phrase: "C7 1". */
  readonly phraseEnds?: string;
}

export interface HandCase {
  readonly name: string;
  /** Headings, then bars. */
  readonly chart: string;
  /** Beat, length in beats, pitch, with cents where they matter: "3.5 1.5 E4, 5 1 Eb4+35". */
  readonly line: string;
  readonly says: Said;
  readonly why: string;
}

export const G_TO_C = 'key: C\n| G7 | C7 |';

const early: readonly HandCase[] = [
  {
    name: 'a third tied over from the eighth before',
    chart: G_TO_C,
    line: '0 1 B3, 3.5 1.5 E4',
    says: { landings: 'G7 3 | C7 early 3', notes: 'G7 3 | C7 3' },
    why: 'It starts an eighth before the change, sounds into it, and is a tone of the new chord.',
  },
  {
    name: 'the same 40 ms earlier still',
    chart: G_TO_C,
    line: '0 1 B3, 3.42 1.5 E4',
    says: { landings: 'G7 3 | C7 early 3' },
    why: 'The tolerance reaches 50 ms further back than the eighth.',
  },
  {
    name: 'the same 60 ms earlier still',
    chart: G_TO_C,
    line: '0 1 B3, 3.38 1.5 E4',
    says: { landings: 'G7 3 | C7 held 3', notes: 'G7 3 | G7 13' },
    why: 'Too early to anticipate: it is the 13 of G7, held into C7, where it is the 3.',
  },
  {
    name: 'an eighth let go 10 ms before the change',
    chart: G_TO_C,
    line: '3.5 0.48 E4, 6 1 G4',
    says: { landings: 'G7 open | C7 early 3' },
    why: 'It ends within the tolerance before the change. Nothing is played in the first beat of G7.',
  },
  {
    name: 'an eighth let go 100 ms before the change',
    chart: G_TO_C,
    line: '3.5 0.3 E4, 6 1 G4',
    says: { landings: 'G7 open | C7 open', notes: 'G7 13 | C7 5' },
    why: 'It no longer sounds, so it belongs to G7; the next note comes two beats after the change.',
  },
  {
    name: 'an early note that the new chord does not hold',
    chart: G_TO_C,
    line: '3.5 1.5 D4',
    says: { landings: 'G7 open | C7 held 9 (colour)', notes: 'G7 5' },
    why: 'D is the 5 of G7 and no tone of C7: graded against the old chord, held across the change.',
  },
  {
    name: 'the same, and a third struck half a beat after the change',
    chart: G_TO_C,
    line: '3.5 1 D4, 4.5 0.5 E4',
    says: { landings: 'G7 open | C7 3' },
    why: 'The first note that belongs to the new chord goes before one that is held into it.',
  },
  {
    name: 'an anticipation under swing',
    chart: `swing: 0.66\n${G_TO_C}`,
    line: '0 1 B3, 3.6 1.5 E4',
    says: { landings: 'G7 3 | C7 early 3' },
    why: 'The swung eighth before the change is 0.34 of a beat long; with the tolerance 0.44.',
  },
  {
    name: 'a straight eighth before the change under swing',
    chart: `swing: 0.66\n${G_TO_C}`,
    line: '0 1 B3, 3.5 1.5 E4',
    says: { landings: 'G7 3 | C7 held 3' },
    why: 'It lies earlier than the swung eighth and the tolerance together.',
  },
  {
    name: 'a foreign tone 20 ms before the change',
    chart: G_TO_C,
    line: '0 1 B3, 3.96 1 C#4',
    says: { landings: 'G7 3 | C7 b9 (outside)', notes: 'G7 3 | C7 b9' },
    why: 'Within the tolerance a note is played on the change, whatever its pitch.',
  },
  {
    name: 'at 360 bpm a foreign tone 45 ms before the change',
    chart: `tempo: 360\n${G_TO_C}`,
    line: '0 1 B3, 3.73 1 C#4',
    says: { landings: 'G7 3 | C7 held b9 (outside)', notes: 'G7 3 | G7 b5' },
    why: 'The tolerance is never more than a quarter of the beat: 42 ms.',
  },
  {
    name: 'at 360 bpm the same 40 ms before it',
    chart: `tempo: 360\n${G_TO_C}`,
    line: '0 1 B3, 3.76 1 C#4',
    says: { landings: 'G7 3 | C7 b9 (outside)' },
    why: 'Within 42 ms it is played on the change.',
  },
];

const landings: readonly HandCase[] = [
  {
    name: 'a note exactly a beat after the change',
    chart: G_TO_C,
    line: '0 1 B3, 5 1 E4',
    says: { landings: 'G7 3 | C7 3' },
    why: 'A landing may come up to a beat after its change.',
  },
  {
    name: 'a note a beat and a half after the change',
    chart: G_TO_C,
    line: '0 1 B3, 5.5 1 E4',
    says: { landings: 'G7 3 | C7 open' },
    why: 'That is no landing any more, and no miss either.',
  },
  {
    name: 'a rest at a change',
    chart: 'key: C\n| C7 | F7 | C7 |',
    line: '0 1 E4, 8 1 E4',
    says: { landings: 'C7 3 | F7 open | C7 3', shares: '2/2 2/2 2/2' },
    why: 'A rest is counted apart and stands in no share.',
  },
  {
    name: 'another bass',
    chart: 'key: C\n| C | C/E | F |',
    line: '0 1 E4, 4 1 G4, 8 1 A4',
    says: { landings: 'C 3 | F 3' },
    why: 'The same chord over another bass is no change.',
  },
  {
    name: 'a bar without chord',
    chart: 'key: C\n| C7 | N.C. | F7 |',
    line: '0 1 E4, 3.5 1 Bb4, 5 1 G4, 7.5 1.5 A4',
    says: { landings: 'C7 3 | F7 early 3', notes: 'C7 3 | C7 b7 | none | F7 3' },
    why: 'N.C. is not anticipated and has no landing; out of it the next chord can be anticipated.',
  },
  {
    name: 'the seam between choruses',
    chart: 'key: C\n| C7 | F7 | C7 |',
    line: '0 1 E4, 4 1 A4, 8 1 E4, 12 1 E4, 16 1 A4, 20 1 E4',
    says: { landings: 'C7 3 | F7 3 | C7 3 | F7 3 | C7 3' },
    why: 'From the last C7 to the first C7 nothing changes.',
  },
  {
    name: 'one note over three chords',
    chart: 'key: C\n| Cmaj7 | Fmaj7 | Am7 |',
    line: '0 12 C4',
    says: { landings: 'Cmaj7 1 | Fmaj7 held 5 | Am7 held b3' },
    why: 'Held across each change it is what it is there.',
  },
  {
    name: 'a fourth that falls to the third',
    chart: G_TO_C,
    line: '0 1 B3, 4 0.5 F4, 4.5 1 E4',
    says: { landings: 'G7 3 | C7 11 (colour), put right' },
    why: 'It lands on no chord tone, and a half step puts it right under the same chord.',
  },
  {
    name: 'the seventh falls to the third',
    chart: 'key: C\n| Dm7 | G7 |',
    line: '0 1 F4, 3 1 C4, 4 1 B3',
    says: { landings: 'Dm7 b3 | G7 3', guide: 'b7>3 resolved' },
    why: 'The seventh of the ii goes a half step down into the third of the V.',
  },
  {
    name: 'the third stays and becomes the seventh',
    chart: 'key: C\n| Dm7 | G7 |',
    line: '0 1 A4, 3 1 F4, 4 1 F4',
    says: { landings: 'Dm7 5 | G7 b7', guide: 'b3>b7 kept' },
    why: 'F is the third of Dm7 and the seventh of G7: kept, not moved.',
  },
];

export const landingCases: readonly HandCase[] = [...early, ...landings];
