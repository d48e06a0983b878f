/**
 * Backings that are not as they should be, out of a take by their file alone: in stereo, shorter than the take, at
 * other rates, drifting. Note F1.
 *
 *   npx tsx tests/bench/room-odd.ts FIRST_SEED SEEDS [NAMES]     5000 and up report; 1 to 999 tune
 */
import { rms } from '../../fixtures/lines/noise.ts';
import { random } from '../../fixtures/lines/random.ts';
import { convolve } from '../../fixtures/lines/room.ts';
import { levelDb, sumOf } from '../../fixtures/room/band-in-a-room.ts';
import { LIVING_ROOM, roomPath, throughSpeaker } from '../../fixtures/room/rooms.ts';
import { listen } from '../../src/core/listen.ts';
import { interpolated } from '../../src/core/base/interpolate.ts';
import { removeBand, type Recorded } from '../../src/core/room/cancel/remove-band.ts';
import { ROOM_HZ, toRoomRate } from '../../src/core/room/align/room-rate.ts';
import { Resampler } from '../../src/core/base/resample.ts';
import { noteScore } from './note-metrics.ts';
import { keptLine } from './room-lines.ts';

const RATE = 44_100;
const INSTRUMENTS = ['nylon', 'steel', 'jazz', 'clean'];
const first = Number(process.argv[2] ?? 300);
const seeds = Number(process.argv[3] ?? 1);
const wanted = new RegExp(process.argv[4] ?? '.');

interface Scene {
  readonly player: Float32Array;
  readonly parts: readonly Float32Array[];
  readonly seed: number;
  readonly delay: number;
}
interface Made {
  readonly take: Recorded;
  readonly backing: Recorded;
  readonly offset?: number;
}

const mean = (values: readonly number[]) => values.reduce((all, x) => all + x, 0) / values.length;
const scaled = (x: Float32Array, gain: number) => x.map((y) => gain * y);
const mixed = (player: Float32Array, echo: Float32Array, db = 0) => {
  const gain = (rms(player) / rms(echo)) * 10 ** (db / 20);
  return player.map((x, i) => x + gain * (echo[i] ?? 0));
};

/** To another rate by a plain resampler. */
function at(samples: Float32Array, rate: number): Float32Array {
  const resampler = new Resampler(RATE, rate, Math.min(0.42 * rate, 18_000), Math.min(0.5 * rate, 22_000));
  const out = new Float32Array(Math.ceil((samples.length * rate) / RATE));
  const piece = new Float32Array(Math.ceil((resampler.largestInput * rate) / RATE) + 4);
  let written = 0;
  for (let from = 0; from < samples.length; from += resampler.largestInput) {
    const to = Math.min(samples.length, from + resampler.largestInput);
    const count = resampler.process(samples, from, to, piece, 0);
    out.set(piece.subarray(0, Math.min(count, out.length - written)), written);
    written += count;
  }
  return out;
}

/** Chords left, drums a little right, bass in the middle; two speakers, two paths. */
function stereo({ player, parts, seed, delay }: Scene, width: number) {
  const pans = [0, -1, 0.5].map((pan) => pan * width);
  const side = (sign: number) =>
    sumOf(parts.map((part, p) => scaled(part, Math.SQRT2 * Math.cos((Math.PI / 4) * (1 - sign * pans[p]!)))));
  const [left, right] = [side(-1), side(1)];
  const paths = [0, 1].map((k) => roomPath(LIVING_ROOM, RATE, delay + 0.0003 * k, seed * 13 + 31 + 500 * k));
  const echo = sumOf([throughSpeaker(left, paths[0]!), throughSpeaker(right, paths[1]!)]);
  const take = { samples: mixed(player, echo), sampleRate: RATE };
  return {
    take,
    mid: left.map((x, i) => (x + right[i]!) / 2),
    side: left.map((x, i) => (x - right[i]!) / 2),
  };
}
const plainEcho = ({ parts, seed, delay }: Scene) =>
  throughSpeaker(sumOf(parts), roomPath(LIVING_ROOM, RATE, delay, seed * 13 + 31));

function looped(scene: Scene, seconds: number, gap: number): Made {
  const { player, parts, seed, delay } = scene;
  const band = sumOf(parts);
  const from = 2 * RATE;
  const loop = band.slice(from, from + Math.round(seconds * RATE));
  const step = loop.length + Math.round(gap * RATE);
  const played = player.map((_, i) => loop[i % step] ?? 0);
  const path = roomPath(LIVING_ROOM, RATE, delay, seed * 13 + 31);
  return {
    take: { samples: mixed(player, throughSpeaker(played, path)), sampleRate: RATE },
    backing: { samples: loop, sampleRate: RATE },
  };
}
const drifting = (scene: Scene, ppm: number): Made => {
  const band = sumOf(scene.parts);
  const bent = band.map((x) => x + 0.1 * x * x - 0.3 * x * x * x);
  const drifted = bent.map((_, i) => interpolated(bent, i * (1 - ppm / 1e6)));
  const path = roomPath(LIVING_ROOM, RATE, scene.delay, scene.seed * 13 + 31);
  return {
    take: { samples: mixed(scene.player, convolve(drifted, path)), sampleRate: RATE },
    backing: { samples: band, sampleRate: RATE },
  };
};
const rated = (scene: Scene, rate: number): Made => ({
  take: { samples: at(mixed(scene.player, plainEcho(scene)), rate), sampleRate: rate },
  backing: { samples: sumOf(scene.parts), sampleRate: RATE },
});

const CASES: readonly (readonly [string, (scene: Scene) => Made])[] = [
  ['mono', (scene) => rated(scene, RATE)],
  ...[1, 0.4].flatMap((width) => [
    [
      `stereo, width ${width}, mono sum`,
      (scene: Scene) => {
        const { take, mid } = stereo(scene, width);
        return { take, backing: { samples: mid, sampleRate: RATE } };
      },
    ] as const,
    [
      `stereo, width ${width}, both`,
      (scene: Scene) => {
        const { take, mid, side } = stereo(scene, width);
        return { take, backing: { samples: mid, side, sampleRate: RATE } };
      },
    ] as const,
  ]),
  ['loop of 9 s', (scene) => looped(scene, 9, 0)],
  ['loop of 4 s', (scene) => looped(scene, 4, 0)],
  ['loop of 12 s, a pause of 1.5 s', (scene) => looped(scene, 12, 1.5)],
  [
    'ends after 14 s',
    (scene) => {
      const band = sumOf(scene.parts).map((x, i) => (i < 14 * RATE ? x : 0));
      const echo = throughSpeaker(band, roomPath(LIVING_ROOM, RATE, scene.delay, scene.seed * 13 + 31));
      return {
        take: { samples: mixed(scene.player, echo), sampleRate: RATE },
        backing: { samples: band.slice(0, 14 * RATE), sampleRate: RATE },
      };
    },
  ],
  ...[8000, 11_025, 16_000, 22_050, 96_000].map(
    (rate) => [`take at ${rate} Hz`, (scene: Scene) => rated(scene, rate)] as const,
  ),
  [
    'upside down',
    (scene) => ({
      take: { samples: mixed(scene.player, scaled(plainEcho(scene), -1)), sampleRate: RATE },
      backing: { samples: sumOf(scene.parts), sampleRate: RATE },
    }),
  ],
  ...[50, 200, -200].map((ppm) => [`drift ${ppm} ppm`, (scene: Scene) => drifting(scene, ppm)] as const),
];

for (const [name, make] of CASES.filter(([name]) => wanted.test(name))) {
  const [scores, left]: number[][] = [[], []];
  for (const instrument of INSTRUMENTS)
    for (let seed = first; seed < first + seeds; seed++) {
      const { truth, player, parts } = await keptLine({ instrument, sampleRate: RATE, seconds: 30, seed });
      const delay = 0.01 * random(seed * 7 + 3).between(2, 14);
      const { take, backing } = make({ player, parts, seed, delay });
      const found = removeBand(take, backing);
      if (!found) {
        console.log(`    ${instrument} ${seed}: not found`);
        scores!.push(0);
        continue;
      }
      const off = 1000 * (found.alignment.offsetSeconds - delay);
      if (Math.abs(off) > 3) console.log(`    ${instrument} ${seed}: offset ${off.toFixed(1)} ms off`);
      const rounds = found.alignment.runs.map((run) => run.offsetSeconds);
      if (rounds.length > 1) console.log(`    rounds ${rounds.map((x) => x.toFixed(3)).join(' ')}`);
      scores!.push(noteScore(truth, listen(found.samples, ROOM_HZ)).f1);
      const slow = toRoomRate(player, RATE);
      left!.push(
        levelDb(
          slow.map((x, i) => (found.samples[i] ?? 0) - x),
          slow,
          ROOM_HZ,
          [2, 29],
        ),
      );
    }
  console.log(
    `${name.padEnd(34)} ${mean(scores!).toFixed(3)} (${Math.min(...scores!).toFixed(3)})  left ${mean(left!).toFixed(1)} dB`,
  );
}
