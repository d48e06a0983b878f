/** What is too long, or looks so, is refused by one sentence and without the work: the limits of base/limits.ts. */
import { strToU8, zipSync } from 'fflate';
import { writeMidi } from 'midi-file';
import { describe, expect, it } from 'vitest';
import { MOST_BARS, MOST_NOTES, MOST_SYMBOL } from '../../../src/core/base/limits.ts';
import type { Outcome } from '../../../src/core/base/outcome.ts';
import { parseChart } from '../../../src/core/chart/parse-chart.ts';
import { playedBars } from '../../../src/core/chart/play-order.ts';
import { bytesInMemory } from '../../../src/core/files/bytes/bytes.ts';
import { readBeatsCsv } from '../../../src/core/files/charts/beats-csv.ts';
import { readChartFile } from '../../../src/core/files/charts/read-chart-file.ts';
import { writeMusicXml } from '../../../src/core/files/charts/write-musicxml.ts';
import { readList } from '../../../src/core/files/read-list.ts';
import { sniff } from '../../../src/core/files/sniff.ts';
import { describeProblem } from '../../../src/core/words/problem.ts';
import { languages } from '../../../src/core/words/catalogues.ts';
import { english } from '../../english.ts';
import { readAudio } from './collect.ts';

const ASCII = (text: string) => new TextEncoder().encode(text);

/** The one sentence that refuses it, in English; both languages have one. */
function refusal(outcome: Outcome<unknown>): string {
  if (outcome.ok) throw new Error('was taken');
  for (const words of Object.values(languages)) {
    const sentence = describeProblem(outcome.problem, words);
    expect(sentence).not.toMatch(/undefined|NaN|Infinity|\[object/);
    expect(sentence.length).toBeLessThan(300);
  }
  return english(outcome.problem);
}

async function listOf(bytes: Uint8Array, name = 'line.csv'): Promise<Outcome<unknown>> {
  const source = bytesInMemory(name, bytes);
  const kind = await sniff(source);
  return kind.ok ? readList(source, kind.value as 'notes' | 'midi') : kind;
}
const table = (rows: readonly string[]) => ASCII(`onset,duration,pitch\n${rows.join('\n')}\n`);

describe('a list of notes', () => {
  it('of too many is refused, and no more rows are read than that', async () => {
    const rows = Array.from({ length: MOST_NOTES + 1 }, (_, i) => `${i / 10},0.1,60`);
    expect(refusal(await listOf(table(rows)))).toMatch(/more than 100000 notes/);
    expect((await listOf(table(rows.slice(1)))).ok).toBe(true);
  });

  it('of 31 MB is refused by its size, and one whose cell never ends by its cell', async () => {
    expect(refusal(await listOf(ASCII(`onset,duration,pitch\n${'1,1,60\n'.repeat(4_500_000)}`)))).toMatch(
      /too long/,
    );
    expect(refusal(await listOf(table([`1,1,6${'0'.repeat(200)}`])))).toMatch(/pitch/);
  });

  it.each([
    ['milliseconds', 1000],
    ['samples', 44_100],
  ])('in %s is told so', async (unit, scale) => {
    const rows = [0, 0.5, 0.75, 1, 1.5, 2.25].map(
      (at) => `${Math.round(at * scale)},${Math.round(0.3 * scale)},60`,
    );
    expect(refusal(await listOf(table(rows)))).toMatch(new RegExp(`times in ${unit}.*in seconds`));
    const beats = [0, 0.5, 1, 1.5, 2].map((at) => `${Math.round(at * scale)},C7`);
    expect(refusal(readBeatsCsv(`time,chord\n${beats.join('\n')}`, 'beats.csv'))).toMatch(
      new RegExp(`times in ${unit}.*in seconds`),
    );
  });

  it('with long notes in seconds stays what it is', async () => {
    expect((await listOf(table(['0,12,60', '15,12,62', '30,12,64', '45,12,65']))).ok).toBe(true);
  });

  it('with one onset after eleven days is refused', async () => {
    expect(refusal(await listOf(table(['0,1,60', '1,1,62', '2,1,64', '1e6,1,65'])))).toMatch(/past 6 hours/);
    expect(refusal(await listOf(table(['-1e6,1,60', '0,1,60', '1,1,62', '2,1,64'])))).toMatch(/past 6 hours/);
    expect(refusal(readBeatsCsv('time,chord\n0,C\n1,\n2,\n1e6,', 'beats.csv'))).toMatch(/past 6 hours/);
  });
});

describe('a MIDI file', () => {
  const written = (deltaTimes: readonly number[]) =>
    Uint8Array.from(
      writeMidi({
        header: { format: 0, numTracks: 1, ticksPerBeat: 96 },
        tracks: [
          deltaTimes.flatMap((deltaTime) => [
            { deltaTime, type: 'noteOn' as const, channel: 0, noteNumber: 60, velocity: 80 },
            { deltaTime: 48, type: 'noteOff' as const, channel: 0, noteNumber: 60, velocity: 0 },
          ]),
        ],
      }),
    );

  it('in which one bit puts a note days away is refused', async () => {
    expect((await listOf(written([0, 0, 48]), 'line.mid')).ok).toBe(true);
    expect(refusal(await listOf(written([0, 0, 2 ** 27]), 'line.mid'))).toMatch(/past 6 hours/);
  });

  it('with a data byte above 127 is taken up to there, and says so', async () => {
    const bytes = written([0, 0, 0]);
    const at = bytes.lastIndexOf(80);
    bytes[at] = 200;
    const list = await listOf(bytes, 'line.mid');
    expect(list).toMatchObject({ ok: true, value: { warnings: [{ code: 'midiFile.cut' }] } });
  });

  it('with two chord markers days apart is refused as a chart', () => {
    const bytes = Uint8Array.from(
      writeMidi({
        header: { format: 0, numTracks: 1, ticksPerBeat: 96 },
        tracks: [
          [
            { deltaTime: 0, type: 'marker', text: 'C7' },
            { deltaTime: 2 ** 27, type: 'marker', text: 'F7' },
          ],
        ],
      }),
    );
    expect(refusal(readChartFile(bytes, 'chart.mid'))).toMatch(/longer than 4000 bars/);
  });
});

describe('a chart', () => {
  it('of as many bars as may be is read, and one bar more is not, however it is written', () => {
    const bars = (count: number) => `| ${Array.from({ length: count }, () => 'C7').join(' | ')} |`;
    const read = parseChart(bars(MOST_BARS));
    expect(read.ok && playedBars(read.value).length).toBe(MOST_BARS);
    expect(refusal(parseChart(bars(MOST_BARS + 1)))).toMatch(/longer than 4000 bars/);
    expect(refusal(parseChart(`|: ${bars(500).slice(2, -2)} :| x32`))).toMatch(/longer than 4000 bars/);
    expect(refusal(parseChart('|: C | [1 F :| '.repeat(12_000)))).toMatch(/\./);
    expect(refusal(parseChart(`|: C ${'| 1. F :'.repeat(24_000)}|`))).toMatch(/\./);
  });

  it('with a symbol that never ends is refused, and the sentence stays short', () => {
    expect(refusal(parseChart(`| C${'(b9'.repeat(20_000)} |`))).toMatch(/can’t be read as a chord/);
    expect(parseChart(`| ${'C'.padEnd(MOST_SYMBOL + 1, '7')} |`).ok).toBe(false);
  });

  it.each(['C |', 'A:', '[A', ': x', 'key: C'])('with white space without end around “%s” ends', (text) => {
    const space = ' '.repeat(90_000);
    parseChart(space + text);
    parseChart(text + space);
    parseChart(`${text.slice(0, 1)}${space}${text.slice(1)}`);
    expect(parseChart(`| C7 |${space}F7 |`).ok).toBe(true);
  });

  it('with control characters gives a score that can be read', () => {
    const read = parseChart('title: My\u0007 blues\u001b[2J\u0000\ufffe\n| C7\u0001 | F7 |');
    if (!read.ok) throw new Error(english(read.problem));
    const again = readChartFile(
      ASCII(writeMusicXml({ ...read.value, title: 'My\u0007 \ud800 blues' })),
      'a.musicxml',
    );
    expect(again).toMatchObject({ ok: true, value: { chart: { title: 'My blues' } } });
  });

  it.each([
    ['white space', ' '.repeat(19_000_000)],
    ['nothing that is XML', '<'.repeat(5_000_000)],
    ['elements in elements', '<a>'.repeat(500_000)],
    ['more than a score holds', ' '.repeat(21_000_000)],
  ])('in an archive of %s is refused', (_, text) => {
    const bytes = zipSync({
      'META-INF/container.xml': strToU8(
        '<container><rootfiles><rootfile full-path="a.xml"/></rootfiles></container>',
      ),
      'a.xml': strToU8(text),
    });
    expect(refusal(readChartFile(bytes, 'chart.mxl'))).toMatch(/^chart\.mxl .*\.$/);
  });
});

describe('a score with absurd numbers', () => {
  const score = (attributes: string, harmony: string, more = '') =>
    ASCII(
      `<score-partwise><part id="P1"><measure number="1"><attributes><divisions>1</divisions>${attributes}</attributes>${more}` +
        `<harmony><root><root-step>C</root-step></root><kind>dominant</kind>${harmony}</harmony>` +
        `<note><rest/><duration>4</duration></note></measure></part></score-partwise>`,
    );
  const degree = (alter: string) =>
    `<degree><degree-value>9</degree-value><degree-alter>${alter}</degree-alter><degree-type>add</degree-type></degree>`;

  it.each([
    ['<key><fifths>1000000000</fifths></key>', '', ''],
    ['<key><fifths>-2147483648</fifths></key>', '', ''],
    ['<key><fifths>0.5</fifths></key>', '', ''],
    ['', degree('1e9'), ''],
    ['', degree('-400000000'), ''],
    ['<divisions>0</divisions>', '', ''],
    ['', '', '<sound tempo="1e308"/>'],
    ['', '', '<barline><repeat direction="backward" times="1e300"/></barline>'],
    ['', '', '<forward><duration>1e308</duration></forward><forward><duration>1e308</duration></forward>'],
  ])('is read without them, or refused: %s%s%s', (attributes, harmony, more) => {
    const read = readChartFile(score(attributes, harmony, more), 'a.musicxml');
    if (!read.ok) refusal(read);
    else expect(read.value.chart.bpm ?? 100).toBeLessThan(401);
  });
});

describe('a recording', () => {
  it('that begins with a million empty chunks is refused', async () => {
    const bytes = new Uint8Array(12 + 8 * 1_000_000);
    bytes.set(ASCII('RIFF\0\0\0\0WAVE'));
    for (let at = 12; at < bytes.length; at += 8) bytes.set(ASCII('junk'), at);
    expect(await readAudio('take.wav', bytes)).toMatch(/more than 10000 blocks/);
  });

  it('that begins with two million empty blocks of FLAC is refused', async () => {
    const bytes = new Uint8Array(4 + 4 * 2_000_000);
    bytes.set(ASCII('fLaC'));
    for (let at = 4; at < bytes.length; at += 4) bytes[at] = 1;
    expect(await readAudio('take.flac', bytes)).toMatch(/more than 10000 blocks/);
  });

  it('of heads of FLAC frames without frames is refused', async () => {
    const bytes = new Uint8Array(4_000_000);
    bytes.set(ASCII('fLaC'));
    bytes.set([0x80, 0, 0, 34, 0x10, 0, 0x10, 0, 0, 0, 0, 0, 0, 0, 0x0a, 0xc4, 0x42, 0xf0], 4);
    for (let at = 42; at + 2 < bytes.length; at += 2) bytes.set([0xff, 0xf8], at);
    expect(await readAudio('take.flac', bytes)).toMatch(/^take\.flac .*\.$/);
  });

  it('without a number is refused, and no silence', async () => {
    const samples = Float32Array.from({ length: 9000 }, () => NaN);
    const bytes = new Uint8Array(44 + samples.byteLength);
    bytes.set(ASCII('RIFF\0\0\0\0WAVEfmt '));
    const view = new DataView(bytes.buffer);
    view.setUint32(4, bytes.length - 8, true);
    view.setUint32(16, 16, true);
    view.setUint16(20, 3, true);
    view.setUint16(22, 1, true);
    view.setUint32(24, 8000, true);
    view.setUint32(28, 32_000, true);
    view.setUint16(32, 4, true);
    view.setUint16(34, 32, true);
    bytes.set(ASCII('data'), 36);
    view.setUint32(40, samples.byteLength, true);
    bytes.set(new Uint8Array(samples.buffer), 44);
    expect(await readAudio('take.wav', bytes)).toMatch(/not one sample that can be sound/);
  });
});
