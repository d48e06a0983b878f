/** What a terminal and a disk can be given: names with control characters, pipes that never end, large files. */
import { spawn, spawnSync } from 'node:child_process';
import { closeSync, ftruncateSync, mkdtempSync, openSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { bytesWithin, diskProblem, openFile } from '../../src/cli/file-source.ts';
import { resultKey } from '../../src/cli/kept-results.ts';
import { printable } from '../../src/cli/printable.ts';
import { readPipe } from '../../src/cli/read-pipe.ts';
import { readChartGiven } from '../../src/cli/read-timeline.ts';
import { describeProblem } from '../../src/core/words/problem.ts';
import { languages } from '../../src/core/words/catalogues.ts';
import { english } from '../english.ts';
import { build, landfall } from './built.ts';

const folder = mkdtempSync(join(tmpdir(), 'landfall-hostile-'));
afterAll(() => {
  rmSync(folder, { recursive: true });
});

describe('a terminal', () => {
  it('gets no control character but tab and line feed', () => {
    expect(printable('\u001b[2J\u0007a\tb\nc\u009bd\u007f')).toBe('\\u001b[2J\\u0007a\tb\nc\\u009bd\\u007f');
    // A line of a CSV table ends with CR LF (RFC 4180); a carriage return by itself would write over the line.
    expect(printable('a,b\r\nc\rd')).toBe('a,b\r\nc\\u000dd');
    // What turns the direction of writing would show another name than the file has (Unicode Annex 9).
    expect(printable('take\u202evaw.exe')).toBe('take\\u202evaw.exe');
  });
});

describe('a name with a line break', () => {
  beforeAll(build, 60_000);

  /** What stands behind the break would read as a sentence of the program. */
  const NAME = 'a\nlandfall: all is well\r\u2028x';
  const ONE_LINE = 'a\\nlandfall: all is well\\r\\u2028x';
  const put = (ending: string, text: string) => {
    const path = join(folder, `${NAME}${ending}`);
    writeFileSync(path, text);
    return path;
  };
  const underBlues = ['--chart', 'form:minor blues in A', '--tempo', '120'];

  it('stays on one line in the sentence of a file, of each of several, and of one that is missing', () => {
    const bad = put('.wav', 'no sound');
    const sentences = [
      landfall('grade', bad, ...underBlues).stderr,
      landfall('grade', join(folder, `${NAME}.flac`), ...underBlues).stderr,
      landfall('chords', bad).stderr,
      landfall('grade', bad, '--beats', join(folder, `${NAME}.csv`)).stderr,
    ];
    for (const said of sentences) {
      expect(said).toContain(ONE_LINE);
      expect(said.trimEnd().split('\n')).toHaveLength(1);
    }
    const several = landfall('grade', bad, bad, ...underBlues)
      .stderr.trimEnd()
      .split('\n');
    expect(several).toHaveLength(2);
  });

  it('stays on one line over a page, and in a class with the names of sheet and student', () => {
    const notes = put(' 1.csv', 'onset,duration,pitch\n0,1,61\n2,1,66\n');
    const [heading, blank] = landfall('grade', notes, notes, ...underBlues).stdout.split('\n');
    expect(heading).toContain(ONE_LINE);
    expect(blank).toBe('');
    const sheet = join(folder, 'sheet.json');
    writeFileSync(
      sheet,
      JSON.stringify({
        ...{
          format: 'landfall-sheet',
          version: 1,
          title: 'Thirds\nAll is well',
          note: '',
          chart: '| D7 | G7 |',
        },
        ...{ tempo: 120, feel: 'swing', choruses: 2, aims: [{ id: 'guide-tones' }] },
      }),
    );
    const page = landfall('class', notes, '--sheet', sheet).stdout;
    expect(page).toContain('Thirds\\nAll is well\n');
    expect(page).toContain('a\\nlandfall: all is well');
    expect(page).not.toMatch(/^(landfall:|All is well)/m);
  });
});

describe('a pipe', () => {
  const pipe = (name: string) => {
    const path = join(folder, name);
    expect(spawnSync('mkfifo', [path]).status).toBe(0);
    return path;
  };

  it('that never ends is given up at its size', () => {
    const path = pipe('endless');
    const writer = spawn('sh', ['-c', `exec yes > ${path}`], { stdio: 'ignore' });
    const read = readPipe(path, { mostBytes: 1_000_000 });
    writer.kill();
    expect(read).toMatchObject({ ok: false, problem: { code: 'disk.longPipe' } });
  });

  it('that nobody ends is given up after a time', () => {
    const path = pipe('silent');
    const writer = spawn('sh', ['-c', `exec 3> ${path}; printf x >&3; sleep 30`], { stdio: 'ignore' });
    const read = readPipe(path, { mostSeconds: 1 });
    writer.kill();
    expect(read).toMatchObject({ ok: false, problem: { code: 'disk.slowPipe' } });
  });

  it('with an end is read whole, slow as it may be', () => {
    const path = pipe('slow');
    const writer = spawn('sh', ['-c', `(printf one; sleep 0.2; printf two) > ${path}`], { stdio: 'ignore' });
    const read = openFile(path);
    writer.unref();
    if (!read.ok) throw new Error(english(read.problem));
    expect(Buffer.from(read.value.read(0, 100) as Uint8Array).toString()).toBe('onetwo');
    expect(Buffer.from(read.value.read(2, 3) as Uint8Array).toString()).toBe('etw');
    expect(Buffer.from(read.value.read(4, 9) as Uint8Array).toString()).toBe('wo');
    expect(read.value.read(6, 9)).toHaveLength(0);
  });

  it('of a device is read to its end', () => {
    expect(bytesWithin('/dev/null', 10)).toMatchObject({ ok: true, value: new Uint8Array() });
    expect(bytesWithin('/dev/zero', 100_000)).toMatchObject({ ok: false });
    // What does not begin as a recording is given up at the size of a list.
    expect(openFile('/dev/zero')).toMatchObject({ ok: false, problem: { facts: { megabytes: 16 } } });
    expect(() => resultKey('/dev/zero', {}, '')).toThrow(RangeError);
  });
});

describe('a file', () => {
  it('of a gigabyte and a half that is given as a chart is refused without being read', () => {
    const path = join(folder, 'large.txt');
    const descriptor = openSync(path, 'w');
    ftruncateSync(descriptor, 1.5e9);
    closeSync(descriptor);
    const read = readChartGiven(path, null);
    if (read.ok) throw new Error('was read');
    expect(english(read.problem)).toMatch(/larger than 20 MB/);
    rmSync(path);
  });

  it.each(['line\nbreak.txt', 'bars | C |.txt', 'form: one.txt'])(
    'is read as a chart whatever its name looks like: %j',
    (name) => {
      const path = join(folder, name);
      writeFileSync(path, '| Eb7 | Ab7 |');
      const read = readChartGiven(path, null);
      if (!read.ok) throw new Error(english(read.problem));
      expect(read.value.chart.sections[0]!.bars).toHaveLength(2);
      rmSync(path);
    },
  );

  it('that is a folder is told so', () => {
    writeFileSync(join(folder, 'a.txt'), '');
    expect(readdirSync(folder)).toContain('a.txt');
    expect(openFile(folder)).toMatchObject({ ok: false, problem: { facts: { reason: 'folder' } } });
  });

  it.each(['ENOSPC', 'EDQUOT', 'EROFS', 'EBUSY'])('that the disk refuses by %s is told in words', (code) => {
    const told = diskProblem('band.wav', Object.assign(new Error(code), { code }), 'write')!;
    for (const words of Object.values(languages)) expect(describeProblem(told, words)).not.toContain(code);
  });
});
