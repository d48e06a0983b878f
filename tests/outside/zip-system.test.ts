/**
 * Zip archives against Info-ZIP's `zip` 3 and `unzip` 6, where they are installed: they read what we write, long archives
 * too, and what they write is read by us. The checksum is held against the check value of CRC-32/ISO-HDLC (0xCBF43926
 * for "123456789", Williams, "A painless guide to CRC error detection algorithms", 1993).
 */
import { execFileSync, spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { afterAll, describe, expect, it } from 'vitest';
import { crc32 } from '../../src/core/files/zip/crc32.ts';
import { openZip } from '../../src/core/files/zip/read-zip.ts';
import { readPart } from '../../src/core/files/zip/unpack.ts';
import { ZipWriter } from '../../src/core/files/zip/write-zip.ts';
import { readTakeFile } from '../../src/core/take-file/read-take-file.ts';
import { needs } from '../needs.ts';
import { fileOf, joined, madeTake, soundOf, sourceOf } from '../core/take-file/made-take.ts';

const hasZip = spawnSync('zip', ['-v']).error === undefined && spawnSync('unzip', ['-v']).error === undefined;
const folder = mkdtempSync(join(tmpdir(), 'landfall-zip-'));
afterAll(() => rmSync(folder, { recursive: true }));

it('has the checksum of the standard', () => {
  expect(crc32(new TextEncoder().encode('123456789'))).toBe(0xcbf43926);
  expect(crc32(new TextEncoder().encode('6789'), crc32(new TextEncoder().encode('12345')))).toBe(0xcbf43926);
});

describe('against Info-ZIP', needs(hasZip, 'Info-ZIP is not installed: zip and unzip.'), () => {
  const take = madeTake();
  const path = join(folder, 'take.landfall');
  writeFileSync(path, fileOf(take));

  it('unzip finds no fault in a take file, and its parts are the same', () => {
    expect(execFileSync('unzip', ['-t', path], { encoding: 'utf8' })).toContain('No errors detected');
    const out = join(folder, 'unpacked');
    execFileSync('unzip', ['-q', path, '-d', out]);
    const parts = unzipSync(fileOf(take));
    expect(Object.keys(parts)).toEqual(['take.json', 'report.json', 'line.wav', 'band.wav']);
    for (const [name, bytes] of Object.entries(parts))
      expect(readFileSync(join(out, name)).equals(bytes), name).toBe(true);
    expect(execFileSync('unzip', ['-l', path], { encoding: 'utf8' })).toMatch(/2026-03-01 10:00 +take\.json/);
  });

  it.each([
    ['deflated', []],
    ['stored', ['-0']],
    ['with descriptors behind the parts, as when streamed', ['-fd']],
    ['with fields of Zip64', ['-fz']],
  ])('a take packed by zip is read: %s', async (_, options) => {
    const out = join(folder, 'again');
    rmSync(out, { recursive: true, force: true });
    mkdirSync(out);
    for (const [name, bytes] of Object.entries(unzipSync(fileOf(take))))
      writeFileSync(join(out, name), bytes);
    const packed = join(folder, 'again.zip');
    rmSync(packed, { force: true });
    execFileSync('zip', ['-q', ...options, packed, 'take.json', 'line.wav', 'report.json', 'band.wav'], {
      cwd: out,
    });
    const read = await readTakeFile(sourceOf(readFileSync(packed)));
    expect(read).toMatchObject({ ok: true, value: { id: take.id, report: take.report } });
    if (read.ok) expect(await soundOf(read.value.line)).toEqual([...take.samples]);
  });

  it('a part that zip has encrypted is named', async () => {
    const packed = join(folder, 'secret.zip');
    execFileSync('zip', ['-q', '-j', '-P', 'word', packed, path]);
    expect(await openZip(sourceOf(readFileSync(packed)), 9)).toMatchObject({
      ok: false,
      problem: { code: 'archive.encrypted' },
    });
  });

  it('more than 65,535 parts take the fields of Zip64, and unzip counts them', async () => {
    const zip = new ZipWriter('2026-03-01T10:00:00Z');
    const count = 65_600;
    const bytes = joined([
      ...Array.from({ length: count }, (_, i) =>
        zip.entry({ name: `${i}.txt`, parts: [], pack: false }),
      ).flat(),
      ...zip.finish(),
    ]);
    const many = join(folder, 'many.zip');
    writeFileSync(many, bytes);
    const listed = execFileSync('unzip', ['-l', many], { encoding: 'utf8', maxBuffer: 1 << 26 });
    expect(listed.trim().split('\n').at(-1)).toContain(`${count} files`);
    const read = await openZip(sourceOf(bytes), count);
    expect(read.ok && read.value.entries.length).toBe(count);
  });

  it('a part beyond four gigabytes is found where it is', async () => {
    // The file is not made: a source that is empty up to there. unzip reads such an archive only as a whole file.
    const far = 5 * 2 ** 30;
    const zip = new ZipWriter('2026-03-01T10:00:00Z', far);
    const pieces = [
      ...zip.entry({ name: 'far.txt', parts: [new TextEncoder().encode('far away')], pack: true }),
      ...zip.finish(),
    ];
    const end = joined(pieces);
    const source = {
      name: 'far.zip',
      size: far + end.length,
      read(offset: number, length: number) {
        const bytes = new Uint8Array(Math.max(0, Math.min(length, far + end.length - offset)));
        const inside = Math.max(offset, far);
        if (inside < offset + bytes.length)
          bytes.set(end.subarray(inside - far, offset + bytes.length - far), inside - offset);
        return bytes;
      },
    };
    const archive = await openZip(source, 9);
    if (!archive.ok) throw new Error(archive.problem.code);
    const part = await readPart(archive.value, archive.value.entries[0]!, 100);
    expect(part.ok && strFromU8(part.value)).toBe('far away');
  });
});
