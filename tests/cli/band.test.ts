/** `landfall band` as a process: what it writes, and where the sound of it lies against the grid. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseMidi } from 'midi-file';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { BandEvent } from '../../src/core/band/events.ts';
import { feels } from '../../src/core/band/feels/table.ts';
import { renderEvents } from '../../src/core/sound/render-events.ts';
import { mixDown } from '../core/sound/mix-down.ts';
import { kitSynth } from '../core/sound/kit-file.ts';
import { build, landfall, scratch } from './built.ts';

beforeAll(build);
const files = scratch();
afterAll(files.dispose);
const out = (name: string) => join(files.folder, name);

interface Strike {
  readonly seconds: number;
  readonly midi: number;
  readonly velocity: number;
  readonly channel: number;
  readonly track: string;
}

/** Every strike of a MIDI file in seconds, by the reader's own count. */
function strikes(file: string): readonly Strike[] {
  const { header, tracks } = parseMidi(readFileSync(file));
  const tempo = tracks[0]!.find((event) => event.type === 'setTempo')!.microsecondsPerBeat;
  return tracks.flatMap((track) => {
    let tick = 0;
    const name = track.find((event) => event.type === 'trackName')?.text ?? '';
    return track.flatMap((event): Strike[] => {
      tick += event.deltaTime;
      if (event.type !== 'noteOn') return [];
      const { noteNumber: midi, velocity, channel } = event;
      return [
        { seconds: ((tick / header.ticksPerBeat!) * tempo) / 1e6, midi, velocity, channel, track: name },
      ];
    });
  });
}

/** The left side of a 16-bit stereo WAV with the plain header. */
function leftOf(file: string): { readonly samples: Float32Array; readonly sampleRate: number } {
  const bytes = readFileSync(file);
  expect(bytes.readUInt16LE(22)).toBe(2);
  expect(bytes.readUInt32LE(40)).toBe(bytes.length - 44);
  const samples = Float32Array.from({ length: (bytes.length - 44) / 4 }, (_, i) =>
    bytes.readInt16LE(44 + 4 * i),
  );
  return { samples, sampleRate: bytes.readUInt32LE(24) };
}

describe('landfall band', () => {
  it('writes sound in which every stroke lies within 1 ms of the grid, to the last of 21 choruses', async () => {
    // A tempo whose beats are no whole frames.
    const band = ['band', '--chart', '| C7 | G7 |', '--tempo', '97.3', '--feel', 'rock', '--choruses', '21'];
    expect(landfall(...band, '--out', out('grid.wav'))).toMatchObject({ status: 0, stderr: '' });
    expect(landfall(...band, '--out', out('grid.mid')).status).toBe(0);
    const { samples, sampleRate } = leftOf(out('grid.wav'));
    const grid = new Map<number, Strike[]>();
    for (const strike of strikes(out('grid.mid'))) {
      const at = Math.round(strike.seconds * 1e4);
      grid.set(at, [...(grid.get(at) ?? []), strike]);
    }

    // What is struck together sounds alone like this; where in the file is it most like it?
    const synth = await kitSynth(sampleRate);
    const channels = ['bass', 'chords'] as const;
    const aloneOf = (struck: readonly Strike[]) => {
      const events = struck.map(({ midi, velocity, channel, track }): BandEvent => ({
        beat: 0,
        durationBeats: 0.25,
        part: track === 'Count-in' ? 'click' : (channels[channel] ?? 'drums'),
        midi,
        velocity,
      }));
      const stretch = { bpm: 97.3, startBeat: 0, endBeat: 1 };
      return mixDown([renderEvents(synth, events, feels.rock.instruments, stretch)], 0)[0];
    };
    // Attacks are steep: of the differences they are most.
    const frames = Math.round(0.03 * sampleRate);
    const likeness = (alone: Float32Array, at: number) => {
      let sum = 0;
      for (let i = 1; i < frames; i++) {
        const here = (samples[at + i] ?? 0) - (samples[at + i - 1] ?? 0);
        sum += here * (alone[i]! - alone[i - 1]!);
      }
      return sum;
    };
    const errorsMs = [...grid.values()].map((struck) => {
      const alone = aloneOf(struck);
      const due = struck[0]!.seconds * sampleRate;
      const around = Array.from({ length: 241 }, (_, i) => Math.round(due) - 120 + i);
      const best = around.reduce((most, at) => (likeness(alone, at) > likeness(alone, most) ? at : most));
      return { seconds: struck[0]!.seconds, ms: ((best - due) / sampleRate) * 1000 };
    });
    expect(errorsMs.length).toBeGreaterThan(300);
    for (const { seconds, ms } of errorsMs) expect(Math.abs(ms), `${seconds} s`).toBeLessThan(1);
    const downbeat = ((4 + 20 * 8) * 60) / 97.3;
    expect(errorsMs.some(({ seconds }) => Math.abs(seconds - downbeat) < 1e-3)).toBe(true);
  });

  it('starts with the first click, and not before it', () => {
    landfall(
      'band',
      '--chart',
      '| C6 | G7 |',
      '--tempo',
      '120',
      '--choruses',
      '1',
      '--out',
      out('click.wav'),
    );
    const { samples, sampleRate } = leftOf(out('click.wav'));
    const peak = samples.subarray(0, 0.1 * sampleRate).reduce((most, v) => Math.max(most, Math.abs(v)), 0);
    const onset = samples.findIndex((sample) => Math.abs(sample) > 0.2 * peak);
    expect((onset / sampleRate) * 1000).toBeLessThan(5);
    // A bar of count-in, two of music, one that ends it, and what rings on.
    expect(samples.length / sampleRate).toBeGreaterThan(8);
    expect(samples.length / sampleRate).toBeLessThanOrEqual(11);
  });

  it('writes a MIDI file with the chords of every chorus, in the key that was asked for', () => {
    const args = [
      '--chart',
      '| C6 Am7 | Dm7 G7 |',
      '--key',
      'Eb',
      '--tempo',
      '132',
      '--feel',
      'swing',
      '--choruses',
      '2',
    ];
    const answer = landfall('band', ...args, '--out', out('band.mid'));
    expect(answer.stdout).toContain('2 choruses of 2 bars, swing, 132 bpm, seed 1');
    const first = parseMidi(readFileSync(out('band.mid'))).tracks[0]!;
    const chords = first.flatMap((event) => (event.type === 'marker' ? [event.text] : []));
    expect(chords).toEqual(['Eb6', 'Cm7', 'Fm7', 'Bb7', 'Eb6', 'Cm7', 'Fm7', 'Bb7', 'end']);
    landfall('band', ...args, '--out', out('again.mid'));
    expect(readFileSync(out('again.mid'))).toEqual(readFileSync(out('band.mid')));
    landfall('band', ...args, '--seed', '2', '--out', out('other.mid'));
    expect(readFileSync(out('other.mid'))).not.toEqual(readFileSync(out('band.mid')));
  });

  it('takes tempo, meter and feel from the chart, and says what feel it does not know', () => {
    const chart = files.file('chart.txt', 'meter: 12/8\ntempo: 60\nfeel: stately\n| C7 | F7 |');
    const answer = landfall('band', '--chart', chart, '--choruses', '1', '--out', out('own.mid'));
    expect(answer.status).toBe(0);
    expect(answer.stdout).toContain('shuffle, 60 bpm');
    expect(answer.stderr).toMatch(/can’t play the feel “stately”/);
  });

  it('hands a chart on as a score, and takes scores and MIDI files as charts', () => {
    const score = out('sheet.musicxml');
    const given = landfall('band', '--chart', 'form:jazz blues in Bb', '--tempo', '140', '--out', score);
    expect(given).toMatchObject({ status: 0, stdout: `${score}: 12 bars of chords.\n` });
    const markers = (name: string, ...args: string[]) => {
      expect(landfall('band', ...args, '--choruses', '1', '--out', out(name)).status).toBe(0);
      return parseMidi(readFileSync(out(name))).tracks[0]!.flatMap((event) =>
        event.type === 'marker' ? [event.text] : [],
      );
    };
    const fromForm = markers('form.mid', '--chart', 'form:jazz blues in Bb', '--tempo', '140');
    expect(fromForm).toContain('Edim7');
    // The score carries its tempo.
    expect(markers('score.mid', '--chart', score)).toEqual(fromForm);
    expect(markers('midi.mid', '--chart', out('form.mid'))).toEqual(fromForm);
    const line = files.file('line.csv', 'onset,duration,pitch\n0,0.4,62\n1.714,0.4,67\n');
    const graded = landfall('grade', line, '--chart', score, '--json');
    expect((JSON.parse(graded.stdout) as { timeline: { bpm: number; bars: number } }).timeline).toMatchObject(
      {
        bpm: 140,
        bars: 12,
      },
    );
  });

  it('does not write over the chart that it reads', () => {
    const score = out('own.musicxml');
    landfall('band', '--chart', '| C7 | F7 |', '--tempo', '100', '--out', score);
    const before = readFileSync(score);
    const given = landfall(
      'band',
      '--chart',
      score,
      '--key',
      'E',
      '--out',
      join(files.folder, '.', 'own.musicxml'),
    );
    expect(given).toMatchObject({ status: 1, stdout: '' });
    expect(given.stderr).toContain('is the chart itself and would be overwritten');
    expect(readFileSync(score)).toEqual(before);
  });

  it('refuses with one sentence', () => {
    const chart = ['--chart', '| C7 |', '--tempo', '120'];
    const cases: readonly (readonly [readonly string[], number, RegExp])[] = [
      [['band', '--out', 'x.mid'], 2, /--chart/],
      [['band', ...chart], 2, /--out band\.wav/],
      [['band', ...chart, '--out', 'x.ogg'], 2, /\.wav, \.mid or \.musicxml/],
      [['band', ...chart, '--out', 'x.mid', '--feel', 'polka'], 2, /one of shuffle/],
      [
        [
          'band',
          '--chart',
          `${'| C7 '.repeat(4000)}|`,
          '--tempo',
          '120',
          '--out',
          'x.mid',
          '--choruses',
          '99',
        ],
        1,
        /longer than 6 hours/,
      ],
      [['band', ...chart, '--out', 'x.mid', '--choruses', '0'], 2, /1 to 99/],
      [['band', ...chart, '--out', 'x.mid', '--choruses', '1.5'], 2, /whole number/],
      [['band', ...chart, '--out', 'x.mid', '--json'], 2, /--json has no meaning/],
      [['grade', 'x.csv', ...chart, '--out', 'x.mid'], 2, /--out is for landfall band/],
      [['band', '--chart', '| C7 |', '--out', 'x.mid'], 2, /no tempo/],
      [['band', '--chart', '| C7 |', '--tempo', '300', '--out', 'x.mid'], 1, /40 to 280/],
      [['band', '--chart', '| H7 |', '--tempo', '90', '--out', 'x.mid'], 1, /H7/],
      [
        ['band', ...chart, '--out', join(files.folder, 'nowhere', 'x.wav')],
        1,
        /can’t be written: there is no such folder/,
      ],
    ];
    for (const [args, status, reason] of cases) {
      const answer = landfall(...args);
      expect(answer, args.join(' ')).toMatchObject({ status, stdout: '' });
      expect(answer.stderr.split('\n')[0]).toMatch(reason);
    }
  });
});
