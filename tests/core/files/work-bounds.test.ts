/**
 * What is refused is refused before the work: of a large file no more bytes are asked for than its beginning, and of a
 * small file that would grow no more is made than the limit. Counted in bytes and calls, as no clock can be relied on.
 */
import { readFileSync } from 'node:fs';
import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { MOST_BAR_CHORDS, MOST_CHART_CHORDS, MOST_SCORE_SIGNS } from '../../../src/core/base/limits.ts';
import type { Outcome } from '../../../src/core/base/outcome.ts';
import { parseChart } from '../../../src/core/chart/parse-chart.ts';
import { playedBars } from '../../../src/core/chart/play-order.ts';
import { isAudio, openAudioOfKind } from '../../../src/core/files/audio.ts';
import type { ByteSource } from '../../../src/core/files/bytes/bytes.ts';
import { readTable } from '../../../src/core/files/bytes/table.ts';
import { isOverfull, readXml } from '../../../src/core/files/bytes/xml.ts';
import { readChartFile } from '../../../src/core/files/charts/read-chart-file.ts';
import { readList } from '../../../src/core/files/read-list.ts';
import { sniff } from '../../../src/core/files/sniff.ts';
import { unpackOne } from '../../../src/core/files/zip/unpack-one.ts';
import { describeNotice, describeProblem, notice, problem } from '../../../src/core/words/problem.ts';
import { languages } from '../../../src/core/words/catalogues.ts';
import { english } from '../../english.ts';
import { processorTime } from '../../processor-time.ts';
import { readAudio } from './collect.ts';

const ASCII = (text: string) => new TextEncoder().encode(text);
const GIGABYTES = 1e9;

/** A file of any size that begins so and goes on with zeros; it counts the bytes that are asked of it. */
function largeFile(start: Uint8Array, size: number) {
  const counted = { bytes: 0 };
  const source: ByteSource = {
    name: 'large.file',
    size,
    read(offset, length) {
      const bytes = new Uint8Array(Math.max(0, Math.min(length, size - offset)));
      if (offset < start.length) bytes.set(start.subarray(offset, offset + bytes.length));
      counted.bytes += bytes.length;
      return bytes;
    },
  };
  return { source, counted };
}

/** As a take is read, as far as the sound itself. */
async function begun(source: ByteSource): Promise<Outcome<unknown>> {
  const kind = await sniff(source);
  if (!kind.ok) return kind;
  return isAudio(kind.value) ? openAudioOfKind(source, kind.value) : readList(source, kind.value);
}

/** Header of a WAV file (RIFF, Microsoft 1991), 16 bits mono. */
function wavStart(sampleRate: number, dataBytes: number): Uint8Array {
  const bytes = new Uint8Array(44);
  bytes.set(ASCII('RIFF\0\0\0\0WAVEfmt \x10\0\0\0\x01\0\x01\0'));
  const view = new DataView(bytes.buffer);
  view.setUint32(24, sampleRate, true);
  view.setUint32(28, 2 * sampleRate, true);
  bytes.set([2, 0, 16, 0], 32);
  bytes.set(ASCII('data'), 36);
  view.setUint32(40, dataBytes, true);
  return bytes;
}

/** A FLAC file's mark and its STREAMINFO with so many samples at 44.1 kHz (RFC 9639, section 8.2). */
function flacStart(samples: number): Uint8Array {
  const bytes = new Uint8Array(42);
  bytes.set([0x66, 0x4c, 0x61, 0x43, 0x80, 0, 0, 34, 0x10, 0, 0x10, 0]);
  bytes.set([0x0a, 0xc4, 0x42, 0xf0 + Math.floor(samples / 2 ** 32)], 18);
  new DataView(bytes.buffer).setUint32(22, samples % 2 ** 32);
  return bytes;
}

const joined = (...parts: readonly Uint8Array[]) => Uint8Array.from(parts.flatMap((part) => [...part]));

describe('of a file that is refused no more than its beginning is read', () => {
  it.each([
    ['a recording of 12 hours', wavStart(44_100, 3.9 * GIGABYTES), 3.9 * GIGABYTES],
    ['an impossible sample rate', wavStart(4_000_000_000, GIGABYTES), GIGABYTES],
    ['a header without sound', ASCII('RIFF\xff\xff\xff\xffWAVEjunk\xf0\xff\xff\xff'), 8 * GIGABYTES],
    ['a FLAC file of 24 hours', flacStart(44_100 * 3600 * 24), GIGABYTES],
    ['a list of notes of a gigabyte', ASCII(`onset,duration,pitch\n${'1,1,60\n'.repeat(4000)}`), GIGABYTES],
    ['a MIDI file of a gigabyte', joined(ASCII('MThd'), Uint8Array.of(0, 0, 0, 6)), GIGABYTES],
    ['a text of a gigabyte', ASCII('words and words '.repeat(2000)), GIGABYTES],
    ['a program', ASCII('\x7fELF'), GIGABYTES],
    ['zeros', new Uint8Array(16), GIGABYTES],
    ['marks of Ogg pages without pages', ASCII('OggS'.repeat(100_000)), GIGABYTES],
    ['a tag that is longer than the file', ASCII('ID3\x04\0\0\x7f\x7f\x7f\x7f'), 200_000_000],
  ])('%s', async (_, start, size) => {
    const { source, counted } = largeFile(start, size);
    const read = await begun(source);
    expect(read.ok).toBe(false);
    expect(counted.bytes).toBeLessThan(4_000_000);
  });
});

it('megabytes of 0xff behind an MP3 file, each of which may begin a frame, are passed over within a second', async () => {
  const sound = readFileSync(new URL('../../../fixtures/audio/pluck.mp3', import.meta.url));
  const bytes = new Uint8Array(sound.length + 3_000_000).fill(0xff);
  bytes.set(sound);
  const { result, milliseconds } = await processorTime(() => readAudio('long.mp3', bytes));
  expect(typeof result).not.toBe('string');
  expect(milliseconds).toBeLessThan(1000);
});

describe('a table', () => {
  it('whose row does not end, as a quotation mark is never closed, is read no further', () => {
    const text = `onset,duration,pitch\n0,"1,60\n${'1,1,60\n'.repeat(30_000)}`;
    const read = readTable(text, ['onset'], 'line.csv', 100_000);
    expect(read).toMatchObject({ ok: false, problem: { code: 'table.longRow', facts: { line: 2 } } });
  });

  it('with a long row that ends is read', () => {
    const text = `onset,words\n0,"${'a""b '.repeat(10_000)}"\n1,\n`;
    expect(readTable(text, ['onset'], 'line.csv', 100)).toMatchObject({
      ok: true,
      value: [{ cells: ['0'] }, { cells: ['1'] }],
    });
  });
});

describe('an archive', () => {
  const archive = zipSync({ 'a.txt': strToU8('hello'), 'b.txt': new Uint8Array(5_000_000) });

  it('gives the part that is asked for', () => {
    expect(Buffer.from(unpackOne(archive, 'a.txt', 100)!).toString()).toBe('hello');
    expect(unpackOne(archive, 'b.txt', 5_000_000)).toHaveLength(5_000_000);
    expect(unpackOne(archive, 'c.txt', 100)).toBeNull();
  });

  it('whose part is larger than it says is unpacked as far as the limit', () => {
    const lying = archive.slice();
    const view = new DataView(lying.buffer);
    // The size of b.txt by its local header and by the directory (PKWARE APPNOTE 4.3.7, 4.3.12).
    for (let at = 0; at + 46 < lying.length; at++) {
      if (view.getUint32(at, true) === 0x04034b50) view.setUint32(at + 22, 10, true);
      if (view.getUint32(at, true) === 0x02014b50) view.setUint32(at + 24, 10, true);
    }
    expect(unpackOne(lying, 'b.txt', 1_000_000)).toBeNull();
  });
});

describe('a score', () => {
  const score = (inside: string) =>
    ASCII(
      `<score-partwise><part id="P1"><measure number="1"><attributes><divisions>1</divisions></attributes>` +
        `${inside}<note><rest/><duration>4</duration></note></measure></part></score-partwise>`,
    );
  const harmony = (more = '', rootAlter = '') =>
    `<harmony><root><root-step>C</root-step>${rootAlter}</root><kind>dominant</kind>${more}</harmony>`;
  const told = (bytes: Uint8Array) => {
    const read = readChartFile(bytes, 'a.musicxml');
    return read.ok
      ? read.value.warnings.map((one) => describeNotice(one, languages.en)).join(' ')
      : english(read.problem);
  };

  it('of too many elements is counted before anything is made of them', () => {
    expect(isOverfull('<a/>'.repeat(MOST_SCORE_SIGNS))).toBe(false);
    expect(isOverfull('<a/>'.repeat(MOST_SCORE_SIGNS + 1))).toBe(true);
    expect(isOverfull('&lt;'.repeat(MOST_SCORE_SIGNS + 1))).toBe(true);
    expect(told(score('<a/>'.repeat(MOST_SCORE_SIGNS)))).toMatch(/more elements than any score needs/);
  });

  it('of long stretches of blanks, each just short of what is cut, is read through once', async () => {
    const blanks = `${' '.repeat(999)}x`.repeat(4000);
    const { result, milliseconds } = await processorTime(() => readXml(`<a>${blanks}</a>`));
    expect(result?.name).toBe('a');
    expect(milliseconds).toBeLessThan(1500);
  });

  it('with more chords in a bar than can be played is refused', () => {
    expect(told(score(harmony().repeat(MOST_BAR_CHORDS + 1)))).toMatch(
      /bar 1 has more than 60 chord symbols/,
    );
  });

  it('with a chord that is changed more often than it has tones, or a root of many sharps, names the bar', () => {
    const degree =
      '<degree><degree-value>9</degree-value><degree-alter>1</degree-alter><degree-type>add</degree-type></degree>';
    expect(told(score(harmony(degree.repeat(500))))).toMatch(/in bar 1 “C dominant” can’t be read/);
    expect(told(score(harmony('', '<root-alter>1e9</root-alter>')))).toMatch(/in bar 1 .* can’t be read/);
  });

  it('whose ending has no number of one digit says so', () => {
    const barline = '<barline><ending number="10" type="start"/></barline>';
    expect(told(score(harmony() + barline))).toMatch(/ending for time 10/);
  });

  it('that is odd in every bar is told so fifty times at the most', () => {
    const odd = '<harmony><root><root-step>H</root-step></root><kind>x</kind></harmony>';
    const bars = Array.from(
      { length: 500 },
      (_, i) =>
        `<measure number="${i}">${i === 0 ? harmony() : odd}<note><rest/><duration>4</duration></note></measure>`,
    ).join('');
    const read = readChartFile(
      ASCII(`<score-partwise><part id="P1">${bars}</part></score-partwise>`),
      'a.musicxml',
    );
    expect(read.ok && read.value.warnings.length).toBe(50);
  });
});

describe('a chart', () => {
  it('with more chords in a bar than can be played is refused', () => {
    expect(parseChart(`| ${'C '.repeat(MOST_BAR_CHORDS)} |`).ok).toBe(true);
    const read = parseChart(`| F | ${'C '.repeat(MOST_BAR_CHORDS + 1)} |`);
    expect(read).toMatchObject({ ok: false, problem: { code: 'chart.chordsInBar', facts: { bar: 2 } } });
  });

  it('of more chords than four thousand bars hold is refused', () => {
    const bars = (count: number) => `| ${'C '.repeat(50)} `.repeat(count);
    expect(parseChart(`${bars(MOST_CHART_CHORDS / 50)}|`).ok).toBe(true);
    expect(parseChart(`${bars(MOST_CHART_CHORDS / 50 + 1)}|`)).toMatchObject({
      ok: false,
      problem: { code: 'chart.tooManyChords' },
    });
  });

  it('with a jump in each of three thousand bars looks at each bar a few times only', () => {
    let looks = 0;
    const counted = {
      chords: [],
      repeatStart: false,
      repeatTimes: 0,
      endings: [],
      get signs() {
        looks++;
        return { jump: { to: 'start', until: null } } as const;
      },
    };
    const bars = Array.from({ length: 3000 }, () => counted);
    playedBars({ sections: [{ name: null, feel: null, bars }] });
    expect(looks).toBeLessThan(40_000);
  });

  it('of MIDI markers without end is refused', () => {
    // A marker a tick (Standard MIDI Files 1.0: delta, ff 06, length, text), then the end of the track.
    const marker = ASCII('\x01\0\x06\x02C7\x01\0\x06\x02F7');
    marker[1] = marker[7] = 0xff;
    const count = 15_000;
    const end = Uint8Array.of(0, 0xff, 0x2f, 0);
    const bytes = new Uint8Array(22 + count * marker.length + end.length);
    bytes.set(ASCII('MThd\0\0\0\x06\0\0\0\x01\0\x60MTrk'));
    new DataView(bytes.buffer).setUint32(18, bytes.length - 22);
    for (let i = 0; i < count; i++) bytes.set(marker, 22 + i * marker.length);
    bytes.set(end, bytes.length - end.length);
    expect(readChartFile(bytes, 'a.mid')).toMatchObject({
      ok: false,
      problem: { facts: { cause: { code: 'chart.tooManyChords' } } },
    });
  });
});

describe('a sentence', () => {
  it('repeats no endless text of a file, in any language', () => {
    const long = 'x'.repeat(100_000);
    for (const words of Object.values(languages)) {
      expect(
        describeNotice(notice('score.unreadChord', { name: 'a', bar: long, what: long }), words).length,
      ).toBeLessThan(1000);
      expect(
        describeProblem(problem('chart.sectionEmpty', { section: long, feel: null }), words).length,
      ).toBeLessThan(1000);
      expect(describeProblem(problem('cli.unknownAim', { given: long }), words).length).toBeLessThan(1000);
      expect(
        describeProblem(problem('form.unknown', { form: 'a', known: [long, long] }), words).length,
      ).toBeLessThan(1000);
    }
  });

  it('repeats the whole name of a file', () => {
    const name = `${'folder/'.repeat(100)}take.wav`;
    expect(english(problem('file.empty', { name }))).toContain(name);
  });
});
