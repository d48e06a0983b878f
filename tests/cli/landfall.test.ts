/** The built command line as a process of its own: what it prints where, and what it ends with. */
import { english } from '../english.ts';
import { execFileSync, spawn, spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readReport } from '../../src/core/take/schema.ts';
import { writeWav } from '../../src/core/files/sound/write-wav.ts';
import { build, fixture, landfall, LANDFALL, scratch } from './built.ts';

beforeAll(build);
const files = scratch();
afterAll(files.dispose);

const CHART = ['--chart', '| A7 | D7 |', '--tempo', '120'];
const NOTES = 'onset,duration,pitch\n0,0.5,69\n0.5,0.5,73\n2,0.5,74\n2.5,1,78\n';

/** Exit 1: nothing on standard output, one sentence on standard error. */
function expectRefusal(result: ReturnType<typeof landfall>, reason: RegExp) {
  expect(result).toMatchObject({ status: 1, stdout: '' });
  expect(result.stderr).toMatch(reason);
  expect(result.stderr.trimEnd().split('\n')).toHaveLength(1);
  expect(result.stderr).toMatch(/\.\n$/);
}

/** Exit 2: a sentence and the short usage on standard error. */
function expectUsage(result: ReturnType<typeof landfall>, reason: RegExp) {
  expect(result).toMatchObject({ status: 2, stdout: '' });
  expect(result.stderr.split('\n')[0]).toMatch(reason);
  expect(result.stderr).toContain('Usage: landfall grade FILE');
}

function expectReport(result: ReturnType<typeof landfall>) {
  expect(result.status).toBe(0);
  const report = readReport(JSON.parse(result.stdout));
  if (!report.ok) throw new Error(english(report.problem));
  return report.value;
}

describe('landfall', () => {
  it('tells how it is used', () => {
    const help = landfall('--help');
    expect(help).toMatchObject({ status: 0, stderr: '' });
    expect(help.stdout).toContain('--chart TEXT|FILE');
    for (const line of help.stdout.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
    // Between an option and what it does there is a space.
    expect(help.stdout).toMatch(/^ {2}--csv, --json, --html$/m);
  });

  it.each([
    ['grade', ['--chart', '--tolerance', '--lines', 'FILE...'], ['--out', '--sheet', 'landfall class']],
    ['class', ['--sheet', '--csv, --json', '--first-beat'], ['--out', '--tolerance', 'FILE is']],
    ['band', ['--chart', '--drone', '--out'], ['--sheet', '--tolerance', '--lines', '--backing']],
    ['chords', ['--json'], ['--chart', '--lines', '--sheet']],
    ['forms', ['--json'], ['--chart']],
    ['schema', ['sheet|take|answer'], ['--chart', '--json']],
  ])('tells of `%s` what belongs to it', (command, its, others) => {
    for (const language of ['en', 'de']) {
      const help = landfall(command, '--help', '--language', language);
      expect(help).toMatchObject({ status: 0, stderr: '' });
      expect(help.stdout).toMatch(new RegExp(`^(Usage:|Aufruf:) landfall ${command}`));
      for (const own of its) expect(help.stdout).toContain(own);
      for (const other of others) expect(help.stdout).not.toContain(other);
    }
  });

  it('tells its version', () => {
    const { version } = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8')) as {
      version: string;
    };
    expect(landfall('--version')).toEqual({ status: 0, stdout: `${version}\n`, stderr: '' });
  });

  it('lists the forms, each of which can be taken', () => {
    const forms = JSON.parse(landfall('forms', '--json').stdout) as { name: string }[];
    expect(forms.length).toBeGreaterThan(8);
    const page = landfall('forms').stdout;
    for (const { name } of forms) expect(page).toContain(name);
    const line = files.file('line.csv', NOTES);
    const report = expectReport(
      landfall('grade', line, '--chart', `form:${forms[0]!.name} in Bb`, '--tempo', '90', '--json'),
    );
    expect(report.timeline.key.tonic).toBe('Bb');
  });

  it('prints the schema of the report as JSON', () => {
    const schema = JSON.parse(landfall('schema').stdout) as { required: string[] };
    expect(schema.required).toEqual(expect.arrayContaining(['format', 'notes', 'landings', 'summary']));
  });

  it('is executable and starts by its first line', () => {
    expect(execFileSync(LANDFALL, ['--version'], { encoding: 'utf8' })).toMatch(/^\d+\.\d+\.\d+\n$/);
  });

  it.each([
    [/No command is given/, []],
    [/no command/, ['play']],
    [/--tempo must be a number from 20 to 400/, ['grade', 'x', '--chart', '| C |', '--tempo', '0']],
    [/with --chart and --tempo, or with --beats/, ['grade', 'x']],
    [/give --tempo/, ['grade', 'x', '--chart', '| C |']],
  ])('called wrongly ends with 2: %s', (reason, args) => {
    expectUsage(landfall(...args), reason);
  });
});

describe('landfall grade', () => {
  it('grades a list of notes: the page, and the report alone with --json', () => {
    const line = files.file('line.csv', NOTES);
    const page = landfall('grade', line, ...CHART);
    expect(page).toMatchObject({ status: 0, stderr: '' });
    expect(page.stdout).toContain('4 notes over 2 bars');
    const report = expectReport(landfall('grade', line, ...CHART, '--json'));
    expect(report.source).toEqual({ kind: 'notes', durationSeconds: 3.5, sampleRate: null });
    expect(report.notes.map(({ chord, degree, role }) => [chord, degree, role])).toEqual([
      ['A7', '1', 'root'],
      ['A7', '3', 'third'],
      ['D7', '1', 'root'],
      ['D7', '3', 'third'],
    ]);
    expect(report.summary).toMatchObject({ notes: 4, chordToneShare: 1, thirdShare: 0.5 });
  });

  it('takes a chart from a file and grades the same', () => {
    const line = files.file('line.csv', NOTES);
    const chart = files.file('chart.txt', 'tempo: 120\n| A7 | D7 |\n');
    const fromFile = expectReport(landfall('grade', line, '--chart', chart, '--json'));
    const fromText = expectReport(landfall('grade', line, ...CHART, '--json'));
    expect({ ...fromFile, timeline: null }).toEqual({ ...fromText, timeline: null });
    expect(fromFile.timeline.spans).toEqual(fromText.timeline.spans);
  });

  it('takes a list of beats', () => {
    const line = files.file('line.csv', NOTES);
    const rows = Array.from({ length: 8 }, (_, k) => `${k * 0.5},${['A7', '', '', '', 'D7'][k] ?? ''}`);
    const beats = files.file('beats.csv', `time,chord\n${rows.join('\n')}\n`);
    const report = expectReport(landfall('grade', line, '--beats', beats, '--json'));
    expect(report.timeline.bpm).toBeNull();
    expect(report.notes.map(({ chord }) => chord)).toEqual(['A7', 'A7', 'D7', 'D7']);
  });

  it('leaves notes without a chord outside every share', () => {
    const line = files.file('line.csv', NOTES);
    const report = expectReport(
      landfall('grade', line, '--chart', '| N.C. | D7 |', '--tempo', '120', '--first-beat', '0.25', '--json'),
    );
    expect(report.notes.slice(0, 2).map(({ chord, degree, role }) => [chord, degree, role])).toEqual([
      [null, null, null],
      [null, null, null],
    ]);
    expect(report.summary.notes).toBe(report.notes.filter(({ chord }) => chord !== null).length);
  });

  it.each(['pluck.mp3', 'pluck.ogg', 'pluck.flac'])('hears A3 and C#4 in %s', (name) => {
    const report = expectReport(landfall('grade', fixture(name), ...CHART, '--json'));
    expect(report.source).toMatchObject({ kind: 'audio', sampleRate: 22_050 });
    expect(report.source.durationSeconds).toBeCloseTo(0.5, 3);
    expect(report.notes.map((note) => note.name)).toEqual(['A3', 'C#4']);
    expect(report.notes[0]!.onsetSeconds).toBeCloseTo(0.1, 1);
  });

  it('explains a bar', () => {
    const line = files.file('line.csv', NOTES);
    const explained = landfall('grade', line, ...CHART, '--explain', '2');
    expect(explained.status).toBe(0);
    expect(explained.stdout).toMatch(/F#5, the third of D7; bar 2/);
    expect(landfall('grade', line, ...CHART, '--explain', '2', '--chorus', '1').stdout).toBe(
      explained.stdout,
    );
    const later = landfall('grade', line, ...CHART, '--explain', '2', '--chorus', '2');
    expect(later.stdout).toBe('Nothing was played in bar 2 of chorus 2.\n');
    expectRefusal(landfall('grade', line, ...CHART, '--explain', '3'), /2 bars, so there is no bar 3/);
  });

  it('measures an aim of a file, and refuses a file that holds none', () => {
    const line = files.file('line.csv', NOTES);
    const report = expectReport(landfall('grade', line, ...CHART, '--aim', 'third-on-arrival', '--json'));
    expect(report.aims[0]).toMatchObject({ id: 'third-on-arrival' });
    expectRefusal(
      landfall('grade', line, ...CHART, '--aim', files.file('aim.json', '{}')),
      /aim\.json: The aim has no field "format"/,
    );
    expectRefusal(landfall('grade', line, ...CHART, '--aim', line), /line\.csv is not JSON/);
    expectRefusal(landfall('grade', line, ...CHART, '--aim', 'win'), /"win" is neither/);
  });

  it('reports what it corrected on standard error, not in the report', () => {
    const tone = Int16Array.from(
      { length: 16_000 },
      (_, k) => 12_000 * Math.sin((2 * Math.PI * 220 * k) / 16_000),
    );
    const cut = writeWav(tone, 16_000).subarray(0, 30_000);
    const result = landfall('grade', files.file('cut.wav', cut), ...CHART, '--json');
    expect(result.stderr).toMatch(/^.*cut\.wav is cut short or damaged: .*what is there was taken\.\n$/);
    expect(expectReport(result).source.durationSeconds).toBeLessThan(1);
    expect(landfall('grade', fixture('nan.wav'), ...CHART, '--json').stderr).toMatch(
      /3 samples that are no usable number/,
    );
  });
});

describe('what can’t be graded ends with 1 and one sentence', () => {
  it.each<[string, RegExp, () => string]>([
    ['no file', /absent\.wav can’t be read: there is no such file/, () => join(files.folder, 'absent.wav')],
    [
      'a folder without takes',
      /no recording and no list of notes in .*empty/,
      () => {
        mkdirSync(join(files.folder, 'empty'), { recursive: true });
        return join(files.folder, 'empty');
      },
    ],
    ['an empty file', /empty\.wav is empty/, () => files.file('empty.wav', '')],
    ['text', /diary\.wav is text/, () => files.file('diary.wav', 'Dear diary, practised today.\n')],
    [
      'a picture',
      /photo\.wav is a picture \(PNG\)/,
      () => files.file('photo.wav', Uint8Array.of(0x89, 80, 78, 71, 13, 10, 26, 10)),
    ],
    [
      'a header and no more',
      /head\.wav.*no samples/,
      () => files.file('head.wav', readFileSync(fixture('s16.wav')).subarray(0, 44)),
    ],
    [
      'a table with a slip',
      /slip\.csv, line 3: the pitch "high"/,
      () => files.file('slip.csv', 'onset,duration,pitch\n0,1,60\n1,1,high\n'),
    ],
    [
      'a table of no notes',
      /none\.csv has a header and no notes/,
      () => files.file('none.csv', 'onset,duration,pitch\n'),
    ],
    ['a list of beats', /b\.csv is a list of beats/, () => files.file('b.csv', 'time,chord\n0,C\n1,\n')],
    ['a damaged MIDI file', /d\.mid is a damaged MIDI file/, () => files.file('d.mid', 'MThd\0\0\0\x06\0\0')],
  ])('%s', (_, reason, make) => {
    expectRefusal(landfall('grade', make(), ...CHART), reason);
  });

  it.each([
    ['one bad symbol', /Bar 2: “Hmm” can’t be read as a chord/, '| C7 | Hmm |'],
    ['a form that is none', /no form “waltz”; the forms are/, 'form:waltz in C'],
    ['neither file nor chart', /"chart\.text" is neither a file nor a chart/, 'chart.text'],
  ])('a chart: %s', (_, reason, chart) => {
    expectRefusal(
      landfall('grade', files.file('line.csv', NOTES), '--chart', chart, '--tempo', '120'),
      reason,
    );
  });

  it('a chart in a file, named', () => {
    const chart = files.file('bad.txt', '| C7 | Hmm |\n');
    expectRefusal(
      landfall('grade', files.file('line.csv', NOTES), '--chart', chart, '--tempo', '120'),
      /bad\.txt can’t be read as a chart: Bar 2: “Hmm”/,
    );
    mkdirSync(join(files.folder, 'charts'));
    expectRefusal(
      landfall(
        'grade',
        files.file('line.csv', NOTES),
        '--chart',
        join(files.folder, 'charts'),
        '--tempo',
        '120',
      ),
      /charts can’t be read: it is a folder/,
    );
  });

  it.each([
    [/absent\.csv can’t be read/, null],
    [/b\.csv, line 3.*does not come after/, 'time,chord\n1,C\n0,F\n'],
    [/b\.csv: Row 2 of the beats: “Hmm”/, 'time,chord\n1,C\n2,Hmm\n'],
    [/b\.csv has no column "chord"/, 'time,chords\n1,C\n2,F\n'],
  ])('beats: %s', (reason, text) => {
    const path = text === null ? join(files.folder, 'absent.csv') : files.file('b.csv', text);
    expectRefusal(landfall('grade', files.file('line.csv', NOTES), '--beats', path), reason);
  });
});

describe('landfall among other programs', () => {
  it('reads a take from a pipe', () => {
    const command = `cat "${fixture('pluck.flac')}" | "${LANDFALL}" grade /dev/stdin --chart '| A7 |' --tempo 120 --json`;
    const { status, stdout } = spawnSync('sh', ['-c', command], { encoding: 'utf8' });
    expect(status).toBe(0);
    expect((JSON.parse(stdout) as { notes: unknown[] }).notes).toHaveLength(2);
  });

  it('ends quietly when its reader has seen enough', async () => {
    const rows = Array.from({ length: 5000 }, (_, k) => `${k / 4},0.2,${60 + (k % 12)}`);
    const line = files.file('long.csv', `onset,duration,pitch\n${rows.join('\n')}\n`);
    const child = spawn(process.execPath, [LANDFALL, 'grade', line, ...CHART, '--json']);
    let errors = '';
    child.stderr.on('data', (data: Buffer) => (errors += data.toString()));
    child.stdout.once('data', () => child.stdout.destroy());
    const code = await new Promise((resolve) => child.on('close', resolve));
    expect(errors).toBe('');
    expect(code).toBe(0);
  });

  it('shows no progress where the output is not a terminal', () => {
    expect(landfall('grade', fixture('pluck.flac'), ...CHART).stderr).toBe('');
  });
});
