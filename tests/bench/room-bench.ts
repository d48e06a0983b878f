/**
 * The figures of the room: note F1 of plucked lines with the band in the microphone, and what is done about it.
 *
 *   npx tsx tests/bench/room-bench.ts [FIRST SEED] [SEEDS]     5000 and up report; 1 to 999 tune
 */
import { convolve } from '../../fixtures/lines/room.ts';
import { bandInARoom, levelDb, type Heard } from '../../fixtures/room/band-in-a-room.ts';
import { listen } from '../../src/core/listen.ts';
import type { RoomPath } from '../../src/core/room/cancel/band-remover.ts';
import { interpolated } from '../../src/core/base/interpolate.ts';
import { removeBand } from '../../src/core/room/cancel/remove-band.ts';
import { ROOM_HZ, toRoomRate } from '../../src/core/room/align/room-rate.ts';
import { noteScore } from './note-metrics.ts';
import { live, swept } from './room-live.ts';

const RATE = 44_100;
const INSTRUMENTS = ['nylon', 'steel', 'jazz', 'clean'];
const firstSeed = Number(process.argv[2] ?? 5000);
const seeds = Number(process.argv[3] ?? 2);

function sweptIn(path: Float32Array): RoomPath {
  const found = swept(path, RATE);
  if (found === null) throw new Error('the sweep failed');
  return found;
}
const liveIn = (microphone: Float32Array, band: Float32Array, path: RoomPath) =>
  live(microphone, band, path, RATE);

const sum = (a: Float32Array, b: Float32Array) => a.map((x, i) => x + b[i]!);
const figures = new Map<string, number[]>();
const put = (name: string, value: number) => figures.set(name, [...(figures.get(name) ?? []), value]);

/** F1 of the notes from a moment on. */
function f1(heard: Heard, samples: Float32Array, rate: number, from = 0): number {
  const later = <N extends { readonly onsetSeconds: number }>(notes: readonly N[]) =>
    notes.filter(({ onsetSeconds }) => onsetSeconds >= from);
  return noteScore(later(heard.truth), later(listen(samples, rate))).f1;
}

for (const instrument of INSTRUMENTS)
  for (let seed = firstSeed; seed < firstSeed + seeds; seed++) {
    const scene = { instrument, sampleRate: RATE, seconds: 15, seed, delaySeconds: 0.03 + (seed % 10) / 100 };
    for (const bandDb of [0, -10]) {
      const heard = await bandInARoom({ ...scene, bandDb });
      const path = sweptIn(heard.path);
      put(`band ${bandDb} dB, nothing done`, f1(heard, heard.microphone, RATE));
      put(`band ${bandDb} dB, swept`, f1(heard, liveIn(heard.microphone, heard.band, path), ROOM_HZ));
      const without = removeBand(
        { samples: heard.microphone, sampleRate: RATE },
        { samples: heard.band, sampleRate: RATE },
      );
      put(`band ${bandDb} dB, backing alone`, without ? f1(heard, without.samples, ROOM_HZ) : 0);
      if (bandDb !== 0) continue;
      put('player alone, plain', f1(heard, heard.player, RATE));
      const alone = liveIn(heard.player, heard.band, path);
      const bare = toRoomRate(heard.player, RATE);
      put(
        'player alone, path of a room, band silent at the microphone: distortion dB',
        levelDb(
          bare.map((x, i) => x - alone[i]!),
          bare,
          ROOM_HZ,
          [5, 14],
        ),
      );
      const phones = liveIn(heard.player, heard.band, { ...path, taps: new Float32Array(path.taps.length) });
      put(
        'player alone, headphones: distortion dB',
        levelDb(
          bare.map((x, i) => x - phones[i]!),
          bare,
          ROOM_HZ,
          [0, 14],
        ),
      );
      for (const knob of [2, 0.5]) {
        const turned = heard.echo.map((x, i) => (i < 5 * RATE ? x : knob * x));
        const out = liveIn(sum(heard.player, turned), heard.band, path);
        put(`knob × ${knob} at 5 s, notes from 8 s on`, f1(heard, out, ROOM_HZ, 8));
      }
      const out = liveIn(heard.microphone, heard.band, path);
      put('the same notes, knob at rest', f1(heard, out, ROOM_HZ, 8));
    }
  }

{
  const scene = {
    instrument: 'steel',
    sampleRate: RATE,
    seconds: 300,
    seed: firstSeed,
    delaySeconds: 0.08,
    bandDb: 0,
  };
  const heard = await bandInARoom(scene);
  const path = sweptIn(heard.path);
  const drifting = heard.band.map((_, i) => interpolated(heard.band, i * (1 - 1e-4)));
  const bend = (played: Float32Array) => played.map((x) => x + 0.1 * x * x - 0.3 * x * x * x);
  const drifted = sum(heard.player, convolve(bend(drifting), heard.path));
  put('five minutes, clocks alike', f1(heard, liveIn(heard.microphone, heard.band, path), ROOM_HZ));
  put('five minutes, 100 ppm apart', f1(heard, liveIn(drifted, heard.band, path), ROOM_HZ));
  const before = process.cpuUsage();
  liveIn(heard.microphone, heard.band, path);
  put('live: share of one core, %', process.cpuUsage(before).user / 3e6);
  const started = process.cpuUsage();
  removeBand({ samples: heard.microphone, sampleRate: RATE }, { samples: heard.band, sampleRate: RATE });
  put('backing out of five minutes, times real time', 3e8 / process.cpuUsage(started).user);
}

for (const [name, values] of figures) {
  const mean = values.reduce((all, value) => all + value, 0) / values.length;
  console.log(
    `${mean.toFixed(3).padStart(9)}  ${name}  (worst ${Math.min(...values).toFixed(3)}, best ${Math.max(...values).toFixed(3)}, ${values.length})`,
  );
}
