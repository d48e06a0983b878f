/** Which files of a folder are looked at: what a student may send, links, and what can't be read. */
import { mkdirSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { diskProblem, openFile } from '../../src/cli/file-source.ts';
import { findTakes, isFolder } from '../../src/cli/find-takes.ts';
import { bytesInMemory } from '../../src/core/files/bytes/bytes.ts';
import { gradeReturned } from '../../src/core/take-file/grade-returned.ts';
import { english } from '../english.ts';
import { scratch } from './built.ts';

const disk = scratch();
afterAll(disk.dispose);

const found = (folder: string) => {
  const takes = findTakes([folder]);
  if (!takes.ok) throw new Error(english(takes.problem));
  return takes.value.map((path) => path.slice(folder.length + 1));
};

describe('a folder of a class', () => {
  it('gives what students send, also what will be refused, and leaves the rest', () => {
    const folder = join(disk.folder, 'class');
    mkdirSync(join(folder, 'tuba'), { recursive: true });
    for (const name of [
      'oboe.csv',
      'tuba/1.WAV',
      'lute.m4a',
      'harp.aiff',
      'takes.zip',
      'notes.txt',
      '.hidden.wav',
    ])
      disk.file(`class/${name}`, 'x');
    expect(found(folder)).toEqual(['harp.aiff', 'lute.m4a', 'oboe.csv', 'takes.zip', 'tuba/1.WAV']);
  });

  it('is no link that leads back to itself, which reading then names', () => {
    const link = join(disk.folder, 'round.wav');
    symlinkSync('round.wav', link);
    expect(isFolder(link)).toBe(false);
    expect(isFolder(disk.folder)).toBe(true);
    expect(openFile(link)).toMatchObject({
      ok: false,
      problem: { facts: { name: link, reason: 'linkLoop' } },
    });
  });

  it('follows a link to a file, tells of one that leads nowhere, and never goes round in a circle', () => {
    const folder = join(disk.folder, 'links');
    mkdirSync(folder);
    disk.file('links/oboe.csv', 'x');
    symlinkSync('oboe.csv', join(folder, 'link.csv'));
    symlinkSync('nowhere.csv', join(folder, 'lost.csv'));
    symlinkSync('self.csv', join(folder, 'self.csv'));
    symlinkSync('.', join(folder, 'round.wav'));
    expect(found(folder)).toEqual(['link.csv', 'lost.csv', 'oboe.csv', 'self.csv']);
  });
});

describe('a file that can’t be found', () => {
  it('is told to be renamed where bytes of its name are no UTF-8', () => {
    const missing = Object.assign(new Error('ENOENT'), { code: 'ENOENT' });
    expect(english(diskProblem('l\ufffda.csv', missing)!)).toMatch(/its name holds signs.*another name/);
    expect(english(diskProblem('lute.csv', missing)!)).toMatch(/no such file/);
  });
});

describe('a take file that was cut', () => {
  it('is told so, and not taken for an archive to unpack', async () => {
    const cut = bytesInMemory('horn.landfall', new TextEncoder().encode('PK\u0003\u0004 and no directory'));
    const graded = await gradeReturned(cut, 'horn.landfall', {
      sheets: [],
      firstBeatSeconds: 0,
      progress: () => undefined,
    });
    expect(graded).toMatchObject({ ok: false, problem: { code: 'archive.cutShort' } });
  });
});
