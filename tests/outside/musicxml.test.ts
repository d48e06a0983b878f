/**
 * Chord symbols against MusicXML 4.0 itself: the tones that the standard gives to each kind-value, the rules of
 * degree-alter, and the three chords of its tutorial "Chord Symbols and Diagrams".
 * Source: w3.org/2021/06/musicxml40 (kind-value, degree-alter, degree-type; the tutorial).
 */
import { english } from '../english.ts';
import { describe, expect, it } from 'vitest';
import { readMusicXml } from '../../src/core/files/charts/read-musicxml.ts';
import { writeMusicXml } from '../../src/core/files/charts/write-musicxml.ts';
import { parseChord } from '../../src/core/music/parse-chord.ts';
import { chartOf } from '../core/chart/charts.ts';

/** The symbol and the tones of one harmony element. */
function chordOf(harmony: string) {
  const file = readMusicXml(
    `<score-partwise version="4.0"><part-list/><part id="P1"><measure number="1">${harmony}` +
      '<note><rest measure="yes"/><duration>4</duration></note></measure></part></score-partwise>',
    'example',
  );
  if (!file.ok) throw new Error(english(file.problem));
  return file.value.chart.sections[0]!.bars[0]!.chords[0]!.chord;
}
const onC = (kind: string, degrees = '') =>
  `<harmony><root><root-step>C</root-step></root><kind>${kind}</kind>${degrees}</harmony>`;
const degree = (value: number, alter: number, type: string) =>
  `<degree><degree-value>${value}</degree-value><degree-alter>${alter}</degree-alter><degree-type>${type}</degree-type></degree>`;
const names = (harmony: string) => chordOf(harmony)!.tones.map((tone) => tone.name);

describe('kind-value', () => {
  // As the standard spells them out: "dominant (major triad, minor seventh)" and so on. Its 13ths hold the 11th,
  // "usually as the basis for alteration"; players leave it out, and so do we.
  it.each([
    ['major', 'C E G'],
    ['minor', 'C Eb G'],
    ['augmented', 'C E G#'],
    ['diminished', 'C Eb Gb'],
    ['dominant', 'C E G Bb'],
    ['major-seventh', 'C E G B'],
    ['minor-seventh', 'C Eb G Bb'],
    ['diminished-seventh', 'C Eb Gb Bbb'],
    ['augmented-seventh', 'C E G# Bb'],
    ['half-diminished', 'C Eb Gb Bb'],
    ['major-minor', 'C Eb G B'],
    ['major-sixth', 'C E G A'],
    ['minor-sixth', 'C Eb G A'],
    ['dominant-ninth', 'C E G Bb D'],
    ['major-ninth', 'C E G B D'],
    ['minor-ninth', 'C Eb G Bb D'],
    ['dominant-11th', 'C E G Bb D F'],
    ['major-11th', 'C E G B D F'],
    ['minor-11th', 'C Eb G Bb D F'],
    ['dominant-13th', 'C E G Bb D A'],
    ['major-13th', 'C E G B D A'],
    ['minor-13th', 'C Eb G Bb D A'],
    ['suspended-second', 'C G D'],
    ['suspended-fourth', 'C G F'],
    ['power', 'C G'],
  ])('%s is %s', (kind, tones) => {
    expect(names(onC(kind))).toEqual(tones.split(' '));
  });

  it('none is no chord', () => expect(chordOf(onC('none'))).toBeNull());
});

describe('degrees', () => {
  it('added count from a dominant chord: major and perfect but for a minor seventh', () => {
    expect(names(onC('suspended-fourth', degree(7, 0, 'add')))).toEqual(['C', 'G', 'Bb', 'F']);
    expect(names(onC('minor', degree(7, 1, 'add')))).toEqual(['C', 'Eb', 'G', 'B']);
    expect(names(onC('major', degree(9, 0, 'add')))).toEqual(['C', 'E', 'G', 'D']);
  });

  it('altered and subtracted count from what the kind has', () => {
    expect(names(onC('dominant-ninth', degree(9, -1, 'alter')))).toEqual(['C', 'E', 'G', 'Bb', 'Db']);
    expect(names(onC('minor-seventh', degree(5, -1, 'alter')))).toEqual(['C', 'Eb', 'Gb', 'Bb']);
    expect(names(onC('dominant', degree(5, 0, 'subtract')))).toEqual(['C', 'E', 'Bb']);
  });

  it('spell out a kind that is other', () => {
    const other = degree(3, 0, 'add') + degree(5, 1, 'add') + degree(7, 0, 'add') + degree(9, 1, 'add');
    expect(names(onC('other', other))).toEqual(['C', 'E', 'G#', 'Bb', 'D#']);
  });

  it('stand with the text that says it all', () => {
    const sus =
      '<harmony><root><root-step>F</root-step><root-alter>1</root-alter></root><kind text="13sus">suspended-fourth</kind>' +
      `${degree(7, 0, 'add')}${degree(9, 0, 'add')}${degree(13, 0, 'add')}</harmony>`;
    expect(chordOf(sus)?.symbol).toBe('F#13sus');
  });
});

describe('the tutorial', () => {
  it('is G6 over D, A with an added ninth, and A11', () => {
    const tutorial = [
      '<harmony default-y="100"><root><root-step>G</root-step></root><kind halign="center" text="6">major-sixth</kind><bass><bass-step>D</bass-step></bass></harmony>',
      `<harmony><root><root-step>A</root-step></root><kind text="">major</kind>${degree(9, 0, 'add')}</harmony>`,
      '<harmony><root><root-step>A</root-step></root><kind text="11">dominant-11th</kind></harmony>',
    ];
    const [first, second, third] = tutorial.map(chordOf);
    expect(first).toMatchObject({ symbol: 'G6/D', bass: 'D' });
    expect(second!.tones.map(({ name }) => name)).toEqual(['A', 'C#', 'E', 'B']);
    expect(third!.symbol).toBe('A11');
  });

  it('has an inversion by number', () => {
    expect(chordOf(onC('dominant', '').replace('</kind>', '</kind><inversion>3</inversion>'))?.symbol).toBe(
      'C7/Bb',
    );
  });
});

describe('what is written', () => {
  it('has the tones of the chord in kind and degrees alone, whoever reads it without the text', () => {
    const symbols =
      'C Cm C7 Cmaj7 Cm7b5 Co7 C+ C7#5 C7b9 C7#9 C7alt C13 C13b9 C7#11 Cmaj7#11 C6/9 C7sus4 C9sus Csus2 Cadd9 Cm11 C7b5 Cm(maj7) C5 C13sus4 Cm6/9';
    for (const symbol of symbols.split(' ')) {
      const written = writeMusicXml(chartOf(`| ${symbol} |`));
      const harmony = /<harmony>.*<\/harmony>/s.exec(written)![0];
      const bare = chordOf(harmony.replace(/ text="[^"]*"/, ''));
      const tones = (chord: ReturnType<typeof parseChord>) =>
        chord!.tones.map(({ pitchClass }) => pitchClass).sort((a, b) => a - b);
      expect(tones(bare), symbol).toEqual(tones(parseChord(symbol)));
    }
  });

  // The order of elements inside harmony, attributes and measure: MusicXML 4.0, element reference.
  it('has its elements in the order of the standard', () => {
    const text = writeMusicXml(chartOf('key: Eb\nmeter: 6/8\ntempo: 60\nswing: 0.6\n| C7#9/E | F |'));
    expect(text).toMatch(
      /<root>.*<\/root>\s*<kind text="7#9">dominant<\/kind>\s*<bass>.*<\/bass>\s*<degree /,
    );
    expect(text).toMatch(
      /<divisions>.*<key><fifths>-3<\/fifths><mode>major<\/mode><\/key>\s*<time>.*<clef>/s,
    );
    expect(text).toMatch(/<sound tempo="90">/);
    expect(text).toMatch(/<beat-unit>quarter<\/beat-unit><beat-unit-dot\/><per-minute>60/);
  });
});
