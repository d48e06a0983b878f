/** A take goes out as a file and comes back the same; its JSON is held against the published schema by ajv. */
import { Ajv2020 } from 'ajv/dist/2020.js';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { english } from '../../english.ts';
import { isTakeFile, readTakeFile } from '../../../src/core/take-file/read-take-file.ts';
import { takeJsonJsonSchema } from '../../../src/core/take-file/schema.ts';
import { reportJsonSchema } from '../../../src/core/report/json-schema.ts';
import { ZipWriter } from '../../../src/core/files/zip/write-zip.ts';
import { details, fileOf, joined, madeTake, soundOf, sourceOf } from './made-take.ts';

const read = async (bytes: Uint8Array) => {
  const file = await readTakeFile(sourceOf(bytes));
  if (!file.ok) throw new Error(english(file.problem));
  return file.value;
};

describe('a take as a file', () => {
  it('comes back with every detail, its report and its sounds sample by sample', async () => {
    const take = madeTake();
    const file = await read(fileOf(take));
    const { id, frames, messages, report } = file;
    expect({ id, frames, messages, report }).toEqual({
      id: take.id,
      frames: take.frames,
      messages: null,
      report: take.report,
    });
    expect(file.details).toEqual(details);
    expect(file.details.path?.taps).toBeInstanceOf(Float32Array);
    expect(await soundOf(file.line)).toEqual([...take.samples]);
    expect(await soundOf(file.band)).toEqual([...take.band!]);
  });

  it('carries what a MIDI instrument sent, and no sound', async () => {
    const messages = [
      { seconds: 0.5, bytes: [0x90, 60, 100] },
      { seconds: 1, bytes: [0x80, 60, 0] },
    ];
    const midi: Partial<typeof details> = { source: 'midi' };
    const take = madeTake({
      details: { ...details, ...midi },
      messages,
      samples: new Int16Array(0),
      band: null,
    });
    const file = await read(fileOf(take));
    expect(file.messages).toEqual(messages);
    expect(file.line).toBeNull();
  });

  it('is known by its part take.json, not by its name', async () => {
    expect(await isTakeFile(sourceOf(fileOf(madeTake()), 'holiday.zip'))).toBe(true);
    expect(await isTakeFile(sourceOf(zipSync({ 'a.txt': strToU8('a') }), 'a.landfall'))).toBe(false);
    expect(await isTakeFile(sourceOf(strToU8('no archive'), 'a.landfall'))).toBe(false);
  });

  it('agrees with the published schemas (ajv 8, JSON Schema 2020-12)', () => {
    const parts = unzipSync(fileOf(madeTake()));
    const json = (part: string) => JSON.parse(strFromU8(parts[part]!)) as Record<string, unknown>;
    const isTake = new Ajv2020({ strict: false, logger: false }).compile(takeJsonJsonSchema());
    expect(isTake(json('take.json')), JSON.stringify(isTake.errors)).toBe(true);
    expect(isTake({ ...json('take.json'), frames: -1 })).toBe(false);
    expect(isTake({ ...json('take.json'), id: '../up' })).toBe(false);
    const isReport = new Ajv2020({ strict: false, logger: false }).compile(reportJsonSchema());
    expect(isReport(json('report.json')), JSON.stringify(isReport.errors)).toBe(true);
  });

  it('may be packed anew by another program: stored, deflated, with parts that are not ours', async () => {
    const parts = unzipSync(fileOf(madeTake()));
    const more = { ...parts, 'notes/mine.txt': strToU8('breathe') };
    for (const level of [0, 6] as const) {
      const file = await read(zipSync(more, { level }));
      expect(await soundOf(file.line)).toEqual([...madeTake().samples]);
    }
  });
});

describe('a bad file', () => {
  const refused = async (bytes: Uint8Array) => {
    const file = await readTakeFile(sourceOf(bytes));
    return file.ok ? 'read' : file.problem.code;
  };
  const packed = (parts: Readonly<Record<string, Uint8Array>>) => {
    const zip = new ZipWriter('2026-03-01T10:00:00Z');
    const entries = Object.entries(parts).flatMap(([name, bytes]) =>
      zip.entry({ name, parts: [new Uint8Array(bytes)], pack: true }),
    );
    return joined([...entries, ...zip.finish()]);
  };
  const parts = () => unzipSync(fileOf(madeTake()));
  const changed = (change: object) => {
    const json = JSON.parse(strFromU8(parts()['take.json']!)) as object;
    return packed({ ...parts(), 'take.json': strToU8(JSON.stringify({ ...json, ...change })) });
  };

  it.each([
    ['archive.cutShort', () => fileOf(madeTake()).slice(0, 70_000)],
    ['archive.cutShort', () => new Uint8Array(0)],
    ['takeFile.none', () => packed({ 'word/document.xml': strToU8('<w/>') })],
    ['takeFile.newer', () => changed({ version: 2 })],
    ['takeFile.field', () => changed({ format: 'landfall-report' })],
    ['takeFile.field', () => changed({ id: 'a/b' })],
    ['takeFile.field', () => packed({ ...parts(), 'report.json': strToU8('{"version":2}') })],
    ['takeFile.notJson', () => packed({ ...parts(), 'take.json': strToU8('{"format":') })],
    ['takeFile.chart', () => changed({ details: { ...details, path: undefined, chartText: '| H9x |' } })],
    ['takeFile.tooLong', () => changed({ frames: 8000 * 7201 })],
    ['takeFile.sound', () => changed({ frames: 4 })],
    ['takeFile.sound', () => packed({ ...parts(), 'line.wav': strToU8('RIFF and no more') })],
    ['takeFile.noLine', () => packed({ 'take.json': parts()['take.json']! })],
    ['archive.partName', () => packed({ ...parts(), '../../.bashrc': strToU8('echo') })],
    ['archive.partName', () => packed({ ...parts(), 'C:\\a.txt': strToU8('a') })],
    ['archive.bomb', () => packed({ ...parts(), 'take.json': new Uint8Array(30_000_000).fill(32) })],
    ['archive.bomb', () => packed({ ...parts(), 'report.json': new Uint8Array(80_000_000).fill(32) })],
    [
      'archive.manyParts',
      () =>
        packed({
          ...parts(),
          ...Object.fromEntries(Array.from({ length: 99 }, (_, i) => [`${i}`, strToU8('a')])),
        }),
    ],
  ] as const)('%s', async (code, make) => {
    expect(await refused(make())).toBe(code);
  });
});
