/** Charts out of files: MIDI with chord markers, compressed MusicXML, text. */
import { english } from '../../english.ts';
import { strToU8, zipSync } from 'fflate';
import { writeMidi, type MidiEvent } from 'midi-file';
import { describe, expect, it } from 'vitest';
import { arrange } from '../../../src/core/band/arrange.ts';
import { bandForm } from '../../../src/core/band/form.ts';
import { feelNames } from '../../../src/core/chart/feel-names.ts';
import { writeBandMidi } from '../../../src/core/band/write-midi.ts';
import { timelineFromTempo } from '../../../src/core/chart/build-timeline.ts';
import { readChartFile } from '../../../src/core/files/charts/read-chart-file.ts';
import { writeMusicXml } from '../../../src/core/files/charts/write-musicxml.ts';
import { settingsOf } from '../band/forms.ts';
import { chartOf, playedText } from '../chart/charts.ts';

const read = (bytes: Uint8Array) => {
  const file = readChartFile(bytes, 'a-file');
  if (!file.ok) throw new Error(english(file.problem));
  return file.value;
};
const refusal = (bytes: Uint8Array) => {
  const file = readChartFile(bytes, 'a-file');
  return file.ok ? 'was taken' : english(file.problem);
};
const midi = (...events: MidiEvent[]) =>
  Uint8Array.from(
    writeMidi({
      header: { format: 0, numTracks: 1, ticksPerBeat: 480 },
      tracks: [[...events, { deltaTime: 0, type: 'endOfTrack' }]],
    }),
  );
const marker = (deltaTime: number, text: string): MidiEvent => ({ deltaTime, type: 'marker', text });

describe('the band’s own MIDI file', () => {
  it('gives back the chart, once round, its key, meter and tempo', () => {
    for (const feel of feelNames) {
      for (const [head, bars] of [
        ['key: Eb\nmeter: 3/4', '| Ebmaj7 | Cm7 F7:2 Bb7:1 | Fm7 | Bb7sus4 |'],
        ['key: C minor\nmeter: 12/8', '| Cm7 | Fm7 | Dm7b5 G7alt | Cm6 |'],
        ['key: F#', '| F#maj7 | N.C. | C#7/E# | F#6 B7 |'],
      ] as const) {
        const chart = chartOf(`${head}\n${bars.replace('Cm7 F7:2 Bb7:1', 'F7 / Bb7')}`);
        const form = bandForm(timelineFromTempo(chart, { bpm: 96 }));
        const settings = settingsOf({ feel, bpm: 96 });
        const { chart: back, warnings } = read(
          writeBandMidi(arrange(form, settings, 3, true), form, settings),
        );
        expect(warnings).toEqual([]);
        expect(playedText(back)).toBe(playedText(chart));
        expect([back.key, back.meter, back.bpm]).toEqual([chart.key, chart.meter, 96]);
      }
    }
  });
});

describe('a MIDI file from elsewhere', () => {
  it('has its chords wherever they are written, and says what it did not read', () => {
    const file = midi(
      { deltaTime: 0, type: 'text', text: 'Lead sheet' },
      marker(0, 'C7'),
      marker(1920, 'F7'),
      marker(960, 'Verse'),
      marker(0, 'G7'),
      { deltaTime: 960, type: 'text', text: 'x' },
    );
    const { chart, warnings } = read(file);
    expect(playedText(chart)).toBe('C7:4 | F7:2 G7:2');
    expect(warnings.map(english).join()).toContain('“Verse”');
  });

  it('has the signs of its chords also in UTF-8', () => {
    const bytewise = (text: string) => String.fromCharCode(...new TextEncoder().encode(text));
    const file = midi(marker(0, bytewise('B♭7')), marker(1920, bytewise('F♯m7')), marker(1920, 'end'));
    expect(playedText(read(file).chart)).toBe('B♭7:4 | F♯m7:4');
  });

  it('leaves a bar before the first chord out', () => {
    expect(playedText(read(midi(marker(1920, 'C7'), marker(1920, 'F7'), marker(1920, 'end'))).chart)).toBe(
      'C7:4 | F7:4',
    );
  });

  it('is refused with a sentence', () => {
    expect(refusal(midi(marker(0, 'Verse')))).toMatch(/no chord symbols/);
    expect(refusal(midi().slice(0, 20))).toMatch(/damaged|no chord/);
    const meter = (numerator: number): MidiEvent => ({
      deltaTime: 0,
      type: 'timeSignature',
      numerator,
      denominator: 4,
      metronome: 24,
      thirtyseconds: 8,
    });
    expect(refusal(midi(meter(4), marker(0, 'C7'), meter(3)))).toMatch(/from 4\/4 to 3\/4/);
  });
});

describe('a compressed score', () => {
  const chart = chartOf('title: Shore\n| C6 | A7b9 | Dm7 G7 | C6 |');
  // MusicXML 4.0, container: META-INF/container.xml names the score.
  const container =
    '<container><rootfiles><rootfile full-path="lead/sheet.xml" media-type="application/vnd.recordare.musicxml+xml"/></rootfiles></container>';
  const zipped = (files: Readonly<Record<string, string>>) =>
    zipSync(Object.fromEntries(Object.entries(files).map(([name, text]) => [name, strToU8(text)])));

  it('is found by its container', () => {
    const file = zipped({ 'META-INF/container.xml': container, 'lead/sheet.xml': writeMusicXml(chart) });
    expect(playedText(read(file).chart)).toBe(playedText(chart));
    expect(read(file).chart.title).toBe('Shore');
  });

  it('is refused where it is another archive, or a damaged one', () => {
    expect(refusal(zipped({ 'a.txt': 'hello' }))).toMatch(/not a compressed MusicXML/);
    const whole = zipped({ 'META-INF/container.xml': container, 'lead/sheet.xml': writeMusicXml(chart) });
    expect(refusal(whole.slice(0, 60))).toMatch(/archive/);
  });
});

describe('text', () => {
  it('is read as a chart', () => {
    expect(playedText(read(strToU8('\ufeff| C7 | F7 |')).chart)).toBe('C7:4 | F7:4');
    expect(refusal(strToU8('| H7 |'))).toMatch(/^a-file can’t be read as a chart: Bar 1/);
    expect(refusal(Uint8Array.of(0, 1, 2))).toMatch(/not text/);
  });

  it('may be a score that names another encoding (XML 1.0, 4.3.3)', () => {
    const score = writeMusicXml({ ...chartOf('| C7 | F7 |'), title: 'Für Léa' }).replace(
      /encoding="[^"]*"/,
      'encoding="ISO-8859-1"',
    );
    const latin1 = Uint8Array.from(score, (sign) => sign.charCodeAt(0));
    expect(score).toContain('ISO-8859-1');
    expect(read(latin1).chart.title).toBe('Für Léa');
    expect(playedText(read(latin1).chart)).toBe('C7:4 | F7:4');
  });
});
