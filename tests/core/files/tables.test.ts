import type { Outcome } from '../../../src/core/base/outcome.ts';
import { english } from '../../english.ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readBeatsCsv } from '../../../src/core/files/charts/beats-csv.ts';
import { readNotesCsv } from '../../../src/core/files/notes/notes-csv.ts';
import { decodeText } from '../../../src/core/files/bytes/text.ts';

const sentence = (outcome: Outcome<unknown>) => (outcome.ok ? 'was read' : english(outcome.problem));

/** Windows-1252 by the table of the WHATWG Encoding Standard: é is E9, ’ is 92, ß is DF. */
const windows1252 = (text: string) =>
  Uint8Array.from(text, (sign) => (({ '’': 0x92 }) as Record<string, number>)[sign] ?? sign.charCodeAt(0));

describe('text of one byte a letter, as a spreadsheet on Windows saves it', () => {
  it('is read, and bytes with control characters are no text', () => {
    expect(decodeText(windows1252('Léa ß'))).toBe('Léa ß');
    expect(decodeText(Uint8Array.of(0xe9, 0x00, 0x41))).toBeNull();
    expect(decodeText(Uint8Array.of(0xff, 0xfb, 0x90, 0x04))).toBeNull();
  });

  it('may name the pieces of a list of notes', () => {
    const text = decodeText(windows1252('onset,duration,pitch,Stück\n1,0.5,60,Für Léa\n'))!;
    expect(readNotesCsv(text, 'line.csv')).toMatchObject({
      ok: true,
      value: [{ onsetSeconds: 1, midi: 60 }],
    });
  });
});

describe('a list of notes', () => {
  it('gives what was written, sorted by onset', () => {
    const read = readNotesCsv('onset,duration,pitch\n1.5,0.25,60\n0.5,0.5,64.37\n', 'line.csv');
    if (!read.ok) throw new Error(english(read.problem));
    expect(
      read.value.map(({ onsetSeconds, offsetSeconds, midi }) => [onsetSeconds, offsetSeconds, midi]),
    ).toEqual([
      [0.5, 1, 64.37],
      [1.5, 1.75, 60],
    ]);
    expect(read.value[0]).toMatchObject({ confidence: 1, attack: 'struck', bendSemitones: 0, vibrato: null });
  });

  it.each([
    ['semicolons and decimal commas', 'Onset;Duration;Pitch\r\n0,5;0,25;60\r\n'],
    ['tabs', 'onset\tduration\tpitch\n0.5\t0.25\t60'],
    ['other columns and another order', 'pitch,velocity,onset,name,duration\n60,90,0.5,"C, low",0.25\n'],
    ['blank lines', '\n\nonset,duration,pitch\n\n0.5,.25,60\n\n'],
    ['quotes', '"onset","duration","pitch"\n"0.5","0.25","6e1"\n'],
    ['a first line that tells the separator', 'sep=;\r\nonset;duration;pitch\r\n0,5;0,25;60\r\n'],
    ['a first line that tells no separator', 'sep=\nonset,duration,pitch\n0.5,0.25,60\n'],
    ['a tab that the first line tells', 'sep=\t\r\nonset\tduration\tpitch\r\n0,5\t0,25\t60\r\n'],
    ['a separator that only that line tells', 'sep=|\nonset|duration|pitch\n0.5|0.25|60\n'],
    ['remarks above the header', '# made by a tracker\n\n# take, 2\nonset,duration,pitch\n0.5,0.25,60\n'],
    // As numpy.savetxt writes a header (from memory).
    ['a header in a remark', '# take 2\n# onset,duration,pitch\n0.5,0.25,60\n'],
    ['a column called #', '#,onset,duration,pitch\n1,0.5,0.25,60\n'],
  ])('may come with %s', (_, text) => {
    const read = readNotesCsv(text, 'line.csv');
    if (!read.ok) throw new Error(english(read.problem));
    expect(read.value).toMatchObject([{ onsetSeconds: 0.5, offsetSeconds: 0.75, midi: 60 }]);
  });

  it.each([
    ['onset,pitch\n0,60', /no column "duration".*onset,duration,pitch/],
    ['onset,duration,pitch\n', /no notes/],
    ['onset,duration,pitch\n0,1,60\nsoon,1,60', /line 3.*onset "soon"/],
    ['sep=,\n# from a tracker\n\nonset,duration,pitch\nsoon,1,60', /line 5.*onset "soon"/],
    ['# nothing but remarks\n', /no column/],
    ['onset,duration,pitch\n0,-1,60', /line 2.*duration "-1".*0 or more/],
    ['onset,duration,pitch\n0,1,128', /pitch "128".*0 to 127/],
    ['onset,duration,pitch\n0,1,NaN', /pitch "NaN"/],
    ['onset,duration,pitch\n0,1', /pitch ""/],
    ['onset,duration,pitch\n0,1,0x3c', /pitch "0x3c"/],
  ])('%j gets its sentence', (text, reason) => {
    expect(sentence(readNotesCsv(text, 'line.csv'))).toMatch(reason);
  });

  it('comes back as it was written', () => {
    // Steps of twenty seconds and more are taken for milliseconds.
    const seconds = fc.double({ min: 0, max: 19, noNaN: true });
    fc.assert(
      fc.property(
        fc.array(fc.tuple(seconds, seconds, fc.double({ min: 0, max: 127, noNaN: true })), { minLength: 1 }),
        (rows) => {
          const text = `onset,duration,pitch\n${rows.map((row) => row.join(',')).join('\n')}\n`;
          const read = readNotesCsv(text, 'line.csv');
          if (!read.ok) throw new Error(english(read.problem));
          const expected = [...rows].sort((a, b) => a[0] - b[0]);
          expect(read.value.map((note) => [note.onsetSeconds, note.midi])).toEqual(
            expected.map((row) => [row[0], row[2]]),
          );
        },
      ),
      { seed: 1 },
    );
  });
});

describe('a list of beats', () => {
  it('gives times and chords as written', () => {
    const read = readBeatsCsv('time,chord\n0.1,C7\n0.6,\n1.1,"F7/A"\n', 'beats.csv');
    expect(read).toEqual({
      ok: true,
      value: [
        { timeSeconds: 0.1, chord: 'C7' },
        { timeSeconds: 0.6, chord: '' },
        { timeSeconds: 1.1, chord: 'F7/A' },
      ],
    });
  });

  it.each([
    ['time,chord\n1,C\n0.5,F', /line 3.*does not come after/],
    ['time,chord\n1,C\n1,F', /line 3/],
    ['time,chord\none,C\n2,F', /line 2.*"one"/],
    ['time,chord\n1,C', /only one beat/],
    ['time,chord\n', /no beats/],
    ['beat,chord\n1,C', /no column "time"/],
  ])('%j gets its sentence', (text, reason) => {
    expect(sentence(readBeatsCsv(text, 'beats.csv'))).toMatch(reason);
  });
});

describe('text', () => {
  it('is UTF-8 as TextDecoder reads it, or none', () => {
    const strict = (bytes: Uint8Array) => {
      try {
        return new TextDecoder('utf-8', { fatal: true, ignoreBOM: false }).decode(bytes);
      } catch {
        return null;
      }
    };
    const hasControls = (text: string) =>
      [...text].some((character) =>
        character < ' ' ? !'\t\n\f\r'.includes(character) : character === '\x7f',
      );
    fc.assert(
      fc.property(
        fc.oneof(
          fc.uint8Array({ maxLength: 6 }),
          fc.string({ unit: 'binary' }).map((text) => new TextEncoder().encode(text)),
        ),
        (bytes) => {
          fc.pre(!(bytes[0] === 0xff && bytes[1] === 0xfe) && !(bytes[0] === 0xfe && bytes[1] === 0xff));
          const text = strict(bytes) ?? new TextDecoder('windows-1252').decode(bytes);
          expect(decodeText(bytes)).toBe(hasControls(text) ? null : text);
        },
      ),
      { numRuns: 3000, seed: 4 },
    );
  });

  it('may be UTF-16 with its mark, or end in mid-character', () => {
    expect(decodeText(Uint8Array.of(0xff, 0xfe, 0x43, 0, 0x94, 0x03))).toBe('CΔ');
    expect(decodeText(Uint8Array.of(0xfe, 0xff, 0, 0x43, 0x03, 0x94))).toBe('CΔ');
    expect(decodeText(Uint8Array.of(0x43, 0xce), true)).toBe('C');
    expect(decodeText(Uint8Array.of(0x43, 0xce))).toBe('CÎ');
  });
});
