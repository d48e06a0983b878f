import { english } from '../../english.ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readMusicXml } from '../../../src/core/files/charts/read-musicxml.ts';
import { writeMusicXml } from '../../../src/core/files/charts/write-musicxml.ts';
import { formChart, listForms } from '../../../src/core/chart/forms.ts';
import { chartOf, chartText, playedText } from '../chart/charts.ts';

const read = (text: string) => {
  const file = readMusicXml(text, 'score.musicxml');
  if (!file.ok) throw new Error(english(file.problem));
  return file.value;
};
const refusal = (text: string) => {
  const file = readMusicXml(text, 'score.musicxml');
  return file.ok ? 'was taken' : english(file.problem);
};
const score = (measures: string) =>
  `<score-partwise><part-list/><part id="P1">${measures}</part></score-partwise>`;
const bar = (inside: string, attributes = '') => `<measure number="1"${attributes}>${inside}</measure>`;
const FOUR =
  '<attributes><divisions>2</divisions><time><beats>4</beats><beat-type>4</beat-type></time></attributes>';
const note = (duration: number) =>
  `<note><pitch><step>C</step><octave>4</octave></pitch><duration>${duration}</duration></note>`;
const chord = (root: string, kind = 'major', rest = '') =>
  `<harmony><root><root-step>${root}</root-step></root><kind>${kind}</kind>${rest}</harmony>`;

describe('a chart as MusicXML', () => {
  it('comes back as the same chords, repeats, sections and headings', () => {
    fc.assert(
      fc.property(chartText, (text) => {
        const chart = chartOf(text);
        const { chart: back, warnings } = read(writeMusicXml(chart));
        expect(warnings).toEqual([]);
        expect(playedText(back)).toBe(playedText(chart));
        expect(back.meter).toEqual(chart.meter);
        expect(back.title).toBe(chart.title);
        expect(back.bpm).toBe(chart.bpm);
        expect(back.swing).toBe(chart.swing);
        expect(back.key).toEqual(chart.key);
        expect(back.pickup?.chords).toEqual(chart.pickup?.chords);
        const names = (sections: readonly { readonly name: string | null }[]) =>
          sections.map(({ name }) => name).filter((name) => name !== null);
        expect(names(back.sections)).toEqual(names(chart.sections));
      }),
      { numRuns: 150 },
    );
  });

  it.each(['A | B', '| C |', '# 4', 'Étude #3', 'Two ‖ bars', 'title: x; key: F', '[A]'])(
    'keeps its bars under the title %j',
    (title) => {
      const { chart } = read(writeMusicXml({ ...chartOf('| C7 | F7 |'), title }));
      expect(playedText(chart)).toBe('C7:4 | F7:4');
      // Signs of double width (Unicode, compatibility decomposition) stand for those of a chart's text.
      expect(chart.title?.normalize('NFKC')).toBe(title.replace('‖', '||'));
    },
  );

  it.each(Object.getOwnPropertyNames(Object.prototype))('tells of a chord of the kind %s', (kind) => {
    const { warnings } = read(score(bar(FOUR + chord('C', kind) + note(8)) + bar(chord('F') + note(8))));
    expect(warnings.map(({ code }) => code)).toEqual(['score.unreadChord']);
  });

  it('holds every built-in form', () => {
    for (const { name } of listForms()) {
      const form = formChart(name, 'Eb');
      if (!form.ok) throw new Error(english(form.problem));
      expect(playedText(read(writeMusicXml(form.value)).chart), name).toBe(playedText(form.value));
    }
  });

  it('keeps the feel of a section', () => {
    const { chart } = read(
      writeMusicXml(chartOf('feel: swing\n[A]\n| C6 | G7 |\n[B]\nfeel: bossa\n| F6 | C6 |')),
    );
    expect([chart.feel, chart.sections[1]?.feel]).toEqual(['swing', 'bossa']);
  });
});

describe('a score from elsewhere', () => {
  it('has its chords where they stand among the notes', () => {
    // Two voices and a backup, a chord of notes, a grace note, an offset.
    const measures =
      bar(
        `${FOUR}${chord('C')}${note(2)}<note><chord/><duration>2</duration></note>${note(2)}` +
          `${chord('F', 'dominant')}${note(4)}<backup><duration>8</duration></backup>` +
          `<note><grace/></note>${note(6)}${chord('G', 'dominant', '<offset>1</offset>')}${note(2)}`,
      ) +
      bar(note(8)) +
      bar(`${chord('A', 'minor-seventh')}${note(8)}`);
    expect(playedText(read(score(measures)).chart)).toBe('C:2 F7:1.5 G7:0.5 | G7:4 | Am7:4');
  });

  it('has repeats and endings', () => {
    const barline = (location: string, inside: string) =>
      `<barline location="${location}">${inside}</barline>`;
    const measures =
      bar(`${FOUR}${barline('left', '<repeat direction="forward"/>')}${chord('C')}${note(8)}`) +
      bar(
        `${barline('left', '<ending number="1, 2" type="start"/>')}${chord('G')}${note(8)}` +
          barline('right', '<ending number="1, 2" type="stop"/><repeat direction="backward" times="3"/>'),
      ) +
      bar(`${barline('left', '<ending number="3" type="start"/>')}${chord('F')}${note(8)}`);
    expect(playedText(read(score(measures)).chart)).toBe('C:4 | G:4 | C:4 | G:4 | C:4 | F:4');
  });

  it('counts compound time in dotted quarters, and its tempo too', () => {
    const twelve =
      '<attributes><divisions>2</divisions><time><beats>12</beats><beat-type>8</beat-type></time></attributes>';
    const { chart } = read(
      score(bar(`${twelve}<sound tempo="90"/>${chord('C')}${note(6)}${chord('F')}${note(6)}`)),
    );
    expect(chart.meter.written).toBe('12/8');
    expect(chart.bpm).toBe(60);
    expect(playedText(chart)).toBe('C:2 F:2');
  });

  it('says what it left out', () => {
    const { warnings, chart } = read(
      score(
        bar(`${FOUR}${chord('C')}${note(4)}${chord('D', 'pedal')}${note(4)}`) +
          bar(`${chord('G', 'dominant')}${note(8)}<sound dalsegno="segno"/>`),
      ),
    );
    expect(playedText(chart)).toBe('C:4 | G7:4');
    const told = warnings.map(english).join('\n');
    expect(told).toMatch(/bar 1 “D pedal”/);
    expect(told).toMatch(/have no place to jump to/);
  });

  it('is refused with a sentence', () => {
    expect(refusal('<score-partwise>')).toMatch(/not well-formed/);
    expect(refusal('<!DOCTYPE a [<!ENTITY x "y">]><a>&x;</a>')).toMatch(/XML/);
    expect(refusal('<svg/>')).toMatch(/not a MusicXML score/);
    expect(refusal('<score-timewise/>')).toMatch(/score-timewise/);
    expect(refusal(score(bar(`${FOUR}${note(8)}`)))).toMatch(/no chord symbols/);
    const three = FOUR.replace('<beats>4', '<beats>3');
    expect(
      refusal(score(bar(`${FOUR}${chord('C')}${note(8)}`) + bar(`${three}${chord('F')}${note(6)}`))),
    ).toMatch(/meter changes to 3\/4/);
    expect(refusal(score(bar(`${FOUR.replace('<beats>4', '<beats>11')}${chord('C')}`)))).toMatch(/11\/4/);
  });

  it('never throws, whatever is cut out of it', () => {
    const whole = writeMusicXml(chartOf('pickup: 1\n| G7 |\n|: C6 | Am7 D7 |[1 G7 :|[2 C6 ||'));
    fc.assert(
      fc.property(fc.nat(whole.length), fc.nat(40), (at, length) => {
        readMusicXml(whole.slice(0, at) + whole.slice(at + length), 'cut.musicxml');
      }),
    );
  });
});

describe('a score without a meter', () => {
  it('is told so, by its bar', () => {
    const free = '<attributes><divisions>2</divisions><time><senza-misura/></time></attributes>';
    expect(refusal(score(bar(free + chord('E', 'dominant') + note(8))))).toContain(
      'bar 1 has no meter (senza misura)',
    );
  });
});

describe('a chord whose root is no letter from A to G', () => {
  it('is named with that root', () => {
    const { warnings } = read(
      score(bar(FOUR + chord('E', 'dominant') + note(4) + chord('H', 'dominant') + note(4))),
    );
    expect(warnings).toMatchObject([{ code: 'score.unreadChord', facts: { bar: '1', what: 'H dominant' } }]);
  });
});
