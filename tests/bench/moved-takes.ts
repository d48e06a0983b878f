/**
 * How often a take is said to be moved in key or in time: of takes in the right place never, of moved ones always would be best. Made
 * players of known skill over a blues and over rhythm changes, and transcribed solos where they lie beside the repository.
 * `npx tsx tests/bench/moved-takes.ts 200 5000` prints a row a kind, of 200 seeds from 5000 on; with `solos` behind them
 * only the solos are measured.
 */
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { timelineFromBeats } from '../../src/core/chart/build-timeline.ts';
import type { Timeline } from '../../src/core/chart/timeline.ts';
import { grade } from '../../src/core/grade.ts';
import { line, SETTINGS, TWELVE_BARS, type Played } from '../core/grade/line.ts';
import {
  CHROMATIC,
  MAJOR_PENTATONIC,
  MINOR_PENTATONIC,
  MIXOLYDIAN,
  chartTimeline,
  mulberry32,
  riff,
  thirdPlayer,
  wanderer,
} from './made-players.ts';

const RHYTHM_CHANGES =
  '| Bb | G7 | Cm7 | F7 | Dm7 | G7 | Cm7 | F7 | Bb | Bb7 | Eb | Ebm | Bb | F7 | Bb | F7 |' +
  ' D7 | D7 | G7 | G7 | C7 | C7 | F7 | F7 | Bb | G7 | Cm7 | F7 | Dm7 | G7 | Cm7 | Bb |';
const seeds = Number(process.argv[2] ?? 100);
const firstSeed = Number(process.argv[3] ?? 5000);
const blues = chartTimeline(TWELVE_BARS);
const rhythm = chartTimeline(RHYTHM_CHANGES);
const SCALES = [MINOR_PENTATONIC, MAJOR_PENTATONIC, MIXOLYDIAN, CHROMATIC];
const scaleOf = (seed: number) => SCALES[seed % SCALES.length]!;

/** Eighths with rests: a tone of the chord with a likelihood, else one of the scale. */
function follower(seed: number, timeline: Timeline, choruses: number, likelihood: number): readonly Played[] {
  const random = mulberry32(seed);
  const played: Played[] = [];
  for (let beat = 0; beat < choruses * timeline.roundBeats; beat += 0.5) {
    if (random() < 0.25) continue;
    const tones = timeline.chordAt(beat)?.tones ?? [];
    const scale = scaleOf(seed);
    const tone =
      random() < likelihood && tones.length > 0
        ? tones[Math.floor(random() * tones.length)]!.pitchClass
        : scale[Math.floor(random() * scale.length)]!;
    played.push([beat, 0.45, 60 + tone]);
  }
  return played;
}

const higher = (played: readonly Played[], by: number) =>
  played.map(([beat, beats, midi]): Played => [beat, beats, midi + by]);
/** Goes round: what is pushed out at the end comes in at the start. */
const later = (played: readonly Played[], by: number, beats: number) =>
  played
    .map(([beat, length, midi]): Played => [(beat + by + beats) % beats, length, midi])
    .sort((a, b) => a[0] - b[0]);

function tell(name: string, takes: readonly { readonly played: readonly Played[]; readonly on: Timeline }[]) {
  let key = 0;
  let place = 0;
  const found = new Map<string, number>();
  for (const { played, on } of takes) {
    const { suspected } = grade(line(played), on, SETTINGS);
    if (suspected?.what === 'key') key += 1;
    if (suspected?.what === 'place') place += 1;
    if (suspected === null) continue;
    const where = suspected.what === 'key' ? `${suspected.semitones} half steps` : `${suspected.beats} beats`;
    found.set(where, (found.get(where) ?? 0) + 1);
  }
  const most = [...found].sort((a, b) => b[1] - a[1]).slice(0, 3);
  console.log(
    `${name.padEnd(50)}${takes.length} takes: key ${key}, time ${place}; ${most.map(([where, count]) => `${where} ${count}`).join(', ')}`,
  );
}

const each = (play: (seed: number) => readonly Played[], on: Timeline) =>
  Array.from({ length: seeds }, (_, i) => ({ played: play(firstSeed + i), on }));

if (process.argv[4] !== 'solos')
  for (const [form, on] of [
    ['blues', blues],
    ['rhythm changes', rhythm],
  ] as const) {
    const beats = 2 * on.roundBeats;
    // The scales stand in C; over the other form they are those of its key.
    const inKey = (played: readonly Played[]) => higher(played, on.key.tonicPitchClass);
    tell(
      `in place: wanders, ${form}`,
      each((seed) => inKey(wanderer(seed, scaleOf(seed), beats)), on),
    );
    for (const bars of [1, 2, 4])
      tell(
        `in place: riff of ${bars}, ${form}`,
        each((seed) => inKey(riff(seed, scaleOf(seed), bars, beats / 4)), on),
      );
    tell(
      `in place: thirds, ${form}`,
      each((seed) => thirdPlayer(seed, on, 2, 0.6, scaleOf(seed)), on),
    );
    for (const likelihood of [0.3, 0.6]) {
      const play = (seed: number) => follower(seed, on, 2, likelihood);
      const who = `chord tones ${likelihood}, ${form}`;
      tell(`in place: ${who}`, each(play, on));
      for (const by of [1, 2, 5])
        tell(
          `${by} half steps up: ${who}`,
          each((seed) => higher(play(seed), by), on),
        );
      for (const by of [1, 2, 4, 8, 16])
        tell(
          `${by} beats late: ${who}`,
          each((seed) => later(play(seed), by, beats), on),
        );
    }
  }

const solos = fileURLToPath(new URL('../../../shared/solos/', import.meta.url));
if (existsSync(`${solos}expected.json`)) {
  const names = Object.keys(JSON.parse(readFileSync(`${solos}expected.json`, 'utf8')) as object);
  const rowsOf = (file: string) =>
    readFileSync(solos + file, 'utf8')
      .trim()
      .split(/\r?\n/)
      .slice(1)
      .map((row) => row.split(','));
  /** A solo in pieces of so many beats, each as a take of its own; the notes lie higher, or their chords later. */
  const piecesOf = (name: string, pieceBeats: number, higherBy: number, chordsLaterBy: number) => {
    const rows = rowsOf(`${name}.beats.csv`);
    let chord = '';
    const chords = rows.map(([, own = '']) => (chord = own === '' ? chord : own));
    const beats = rows.map(([time], i) => ({
      timeSeconds: Number(time),
      chord: chords[(i - chordsLaterBy + chords.length) % chords.length]!,
    }));
    const notes = rowsOf(`${name}.notes.csv`).map((row) => row.map(Number) as [number, number, number]);
    const count = Math.max(1, Math.floor(beats.length / pieceBeats));
    return Array.from({ length: count }, (_, piece) => {
      const own = beats.slice(piece * pieceBeats, piece === count - 1 ? undefined : (piece + 1) * pieceBeats);
      const on = timelineFromBeats(own);
      if (!on.ok) throw new Error(on.problem.code);
      const from = own[0]!.timeSeconds;
      const to = beats[piece * pieceBeats + own.length]?.timeSeconds ?? Infinity;
      const played = notes.filter(([onset]) => onset >= from && onset < to);
      return grade(line(higher(played, higherBy), 60), on.value, SETTINGS).suspected;
    });
  };
  for (const pieceBeats of [64, 128])
    for (const [move, up, late] of [
      ['as played', 0, 0],
      ['1 half step up', 1, 0],
      ['2 half steps up', 2, 0],
      ['5 half steps up', 5, 0],
      ['7 half steps up', 7, 0],
      ['1 beat', 0, 1],
      ['2 beats', 0, 2],
      ['4 beats', 0, 4],
      ['16 beats', 0, 16],
    ] as const) {
      const found = names.flatMap((name) => piecesOf(name, pieceBeats, up, late));
      const key = found.filter((one) => one?.what === 'key').length;
      const place = found.filter((one) => one?.what === 'place').length;
      const wanted = up > 6 ? up - 12 : up;
      const right = found.filter((one) => one?.semitones === wanted && one.beats === -late).length;
      console.log(
        `solos in pieces of ${pieceBeats} beats, ${move}`.padEnd(50) +
          `${found.length} takes: key ${key}, time ${place}; ${up + late === 0 ? '' : `rightly ${right}`}`,
      );
    }
}
