import { english } from '../english.ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readArgs } from '../../src/cli/args.ts';

const order = (...args: string[]) => {
  const read = readArgs(args);
  if (!read.ok) throw new Error(english(read.problem));
  return read.value;
};
const sentence = (...args: string[]) => {
  const read = readArgs(args);
  return read.ok ? 'was taken' : english(read.problem);
};

it.each(Object.getOwnPropertyNames(Object.prototype))(
  'no option takes a word that every object knows: %s',
  (word) => {
    const band = ['band', '--chart', '| C |', '--tempo', '100', '--out', 'a.wav'];
    for (const option of ['drone', 'feel', 'aim', 'meter'])
      expect(readArgs([...band, `--${option}=${word}`]).ok, option).toBe(false);
  },
);

describe('a capo', () => {
  const words = (...more: string[]) => ['grade', 'take.wav', '--chart', '| C7 |', '--tempo', '96', ...more];

  it('lies on the neck of the instrument', () => {
    expect(order(...words('--instrument', 'guitar', '--capo', '3'))).toMatchObject({
      instrument: { id: 'guitar', neck: { capo: 3 } },
    });
  });

  it('needs a neck, and a fret on it', () => {
    expect(sentence(...words('--capo', '3'))).toMatch(/needs an --instrument with a neck/);
    expect(sentence(...words('--instrument', 'flute', '--capo', '3'))).toMatch(/with a neck/);
    expect(sentence(...words('--instrument', 'guitar', '--capo', '99'))).toMatch(
      /a fret from 1 to \d+, not 99/,
    );
    expect(sentence(...words('--instrument', 'guitar', '--capo', '0'))).toMatch(/from 1 up/);
  });
});

describe('the words of the command line', () => {
  it('become an order', () => {
    expect(
      order(
        ...['grade', 'take.wav', '--chart', '| C7 |', '--tempo', '96.5', '--meter', '12/8', '--swing=0.66'],
        ...[
          '--first-beat',
          '-0.25',
          '--reference',
          'auto',
          '--anticipation',
          '0',
          '--json',
          '--key',
          'A minor',
        ],
        ...[
          '--instrument',
          'guitar',
          '--aim',
          'one.json',
          '--aim',
          'add-the-sixth',
          '--palette',
          'Blues scale',
        ],
      ),
    ).toMatchObject({
      command: 'grade',
      file: 'take.wav',
      under: { kind: 'chart', chart: '| C7 |', bpm: 96.5, firstBeatSeconds: -0.25 },
      meter: { written: '12/8' },
      swing: 0.66,
      referenceHz: 'auto',
      anticipationBeats: 0,
      key: { tonic: 'A', mode: 'minor' },
      instrument: { id: 'guitar' },
      aims: ['one.json', 'add-the-sixth'],
      palette: 'blues scale',
      json: true,
    });
  });

  it('leave out what was not given', () => {
    expect(order('grade', 'line.csv', '--beats', 'beats.csv')).toMatchObject({
      under: { kind: 'beats', file: 'beats.csv' },
      swing: null,
      referenceHz: 440,
      anticipationBeats: null,
      json: false,
    });
  });

  it('take a file whose name begins with a dash behind --', () => {
    expect(order('grade', '--beats', 'b.csv', '--', '-take.wav')).toMatchObject({ file: '-take.wav' });
  });

  it('ask for help before all else', () => {
    expect(order('grade', '--help')).toEqual({ command: 'help', of: 'grade' });
    expect(order('help', 'band')).toEqual({ command: 'help', of: 'band' });
    expect(order('-h')).toEqual({ command: 'help', of: null });
    expect(order('help')).toEqual({ command: 'help', of: null });
    expect(order('--version')).toMatchObject({ command: 'version' });
  });

  const chart = ['grade', 'x', '--chart', '| C |'];
  it.each<[RegExp, string[]]>([
    [/No command is given/, []],
    [/no command "play"/, ['play']],
    [/no option --loud/, ['grade', 'x', '--loud']],
    [/no option -x/, ['grade', '-x']],
    [/No file is given/, ['grade']],
    [/with --chart and --tempo, or with --beats/, ['grade', 'x']],
    [/not both/, [...chart, '--beats', 'b.csv']],
    [/--tempo has no meaning with --beats/, ['grade', 'x', '--beats', 'b.csv', '--tempo', '90']],
    [/--explain is for one file/, ['grade', 'x', 'y', '--chart', '| C |', '--tempo', '90', '--explain', '1']],
    [/no schema "song"/, ['schema', 'song']],
    [/--sheet is for landfall class/, ['grade', 'x', '--sheet', 's.json']],
    [/no meaning for landfall class/, ['class', 'x', '--sheet', 's.json', '--tempo', '90']],
    [/one of --csv, --json and --html/, ['class', 'x', '--sheet', 's.json', '--csv', '--html']],
    [/--tempo needs a value/, [...chart, '--tempo']],
    [/--tempo needs a value/, [...chart, '--tempo', '--json']],
    [/--tempo is given twice/, [...chart, '--tempo', '90', '--tempo', '91']],
    [/--json takes no value/, [...chart, '--json=yes']],
    ...['0', '-90', 'NaN', 'abc', 'Infinity', '1e9', '', '19.9', '401', '0x60'].map<[RegExp, string[]]>(
      (tempo) => [/--tempo must be a number from 20 to 400 beats a minute/, [...chart, '--tempo', tempo]],
    ),
    [/--swing must be a number from 0.5 to 0.75/, [...chart, '--swing', '0.8']],
    [/--reference must be a number from 380 to 500 Hz, or auto/, [...chart, '--reference', '0']],
    [/--anticipation must be a number from 0 to 1 beats/, [...chart, '--anticipation', '-0.5']],
    [/--first-beat must be a number/, [...chart, '--first-beat', 'soon']],
    [/--meter must be one of 4\/4/, [...chart, '--meter', '4']],
    [/--key must be a key/, [...chart, '--key', 'H']],
    [/--palette must be one of both pentatonics/, [...chart, '--palette', 'grey']],
    [/--instrument must be one/, [...chart, '--instrument', 'kazoo']],
    [/--explain must be a number from 1/, [...chart, '--explain', '0']],
    [/--json or --explain/, [...chart, '--explain', '1', '--json']],
    [/give --explain BAR with it/, [...chart, '--chorus', '2']],
    [/takes no file/, ['forms', 'x']],
  ])('%s', (reason, args) => {
    expect(sentence(...args)).toMatch(reason);
    expect(sentence(...args)).toMatch(/\.$/);
  });

  it('of any kind never throw', () => {
    const word = fc.oneof(
      fc.constantFrom('grade', 'forms', '--chart', '--tempo', '--json', '--', '-', '--=', '--beats', '-1'),
      fc.string(),
    );
    fc.assert(
      fc.property(fc.array(word, { maxLength: 8 }), (args) => {
        expect(() => readArgs(args)).not.toThrow();
      }),
      { numRuns: 2000, seed: 5 },
    );
  });
});
