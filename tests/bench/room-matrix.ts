/**
 * Rooms, speakers and levels side by side: note F1 of plucked lines with the band in the microphone.
 *
 *   npx tsx tests/bench/room-matrix.ts FIRST_SEED SEEDS [NAMES]     5000 and up report; 1 to 999 tune
 *
 * NAMES is a regular expression of the conditions wanted.
 */
import { rms } from '../../fixtures/lines/noise.ts';
import { random } from '../../fixtures/lines/random.ts';
import { levelDb } from '../../fixtures/room/band-in-a-room.ts';
import { LIVING_ROOM, roomPath, throughSpeaker, type RoomShape } from '../../fixtures/room/rooms.ts';
import { listen } from '../../src/core/listen.ts';
import { removeBand } from '../../src/core/room/cancel/remove-band.ts';
import { ROOM_HZ, toRoomRate } from '../../src/core/room/align/room-rate.ts';
import { breakDown } from './note-errors.ts';
import { noteScore } from './note-metrics.ts';
import { keptLine } from './room-lines.ts';
import { live, swept } from './room-live.ts';

const RATE = 44_100;
const INSTRUMENTS = ['nylon', 'steel', 'jazz', 'clean'];

interface Condition {
  readonly name: string;
  readonly room?: Partial<RoomShape>;
  /** Band against player, dB. */
  readonly bandDb?: number;
  /** White noise against the player, dB. */
  readonly noiseDb?: number;
  readonly delaySeconds?: number;
  /** Drums against the rest of the band, dB. */
  readonly drumsDb?: number;
  /** Without a sound check: the sweeps are not needed. */
}

const CONDITIONS: readonly Condition[] = [
  { name: 'living room' },
  { name: 'RT60 0.2 s', room: { rt60Seconds: 0.2 } },
  { name: 'RT60 0.6 s', room: { rt60Seconds: 0.6 } },
  { name: 'RT60 0.9 s', room: { rt60Seconds: 0.9 } },
  { name: 'wet 3 dB over direct', room: { wetDb: 3 } },
  { name: 'wet 10 dB over direct', room: { wetDb: 10 } },
  { name: 'RT60 0.6 s, wet 6 dB over', room: { rt60Seconds: 0.6, wetDb: 6 } },
  { name: 'direct sound covered, −10 dB', room: { wetDb: 0, directDb: -10 } },
  { name: 'laptop, 250 Hz up', room: { highPassHz: 250 } },
  { name: 'laptop, 400 Hz up, bent three times', room: { highPassHz: 400, bend: 3 } },
  { name: 'bent three times', room: { bend: 3 } },
  { name: 'late by 250 ms', delaySeconds: 0.25 },
  { name: 'band 6 dB over', bandDb: 6 },
  { name: 'band 10 dB under', bandDb: -10 },
  { name: 'band 20 dB under', bandDb: -20 },
  { name: 'noise −30 dB', noiseDb: -30 },
  { name: 'drums 8 dB louder', drumsDb: 8 },
];

const first = Number(process.argv[2] ?? 300);
const seeds = Number(process.argv[3] ?? 1);
const wanted = new RegExp(process.argv[4] ?? '.');

const mean = (values: readonly number[]) => values.reduce((all, x) => all + x, 0) / values.length;

console.log(
  'condition, then mean (worst) of: nothing done; swept; backing alone; splits swept, alone, player alone',
);
const plain = new Map<string, { f1: number; splits: number }>();
for (const condition of CONDITIONS.filter(({ name }) => wanted.test(name))) {
  const columns: number[][] = [[], [], [], []];
  const splits: number[][] = [[], [], []];
  const left: number[][] = [[], []];
  for (const instrument of INSTRUMENTS)
    for (let seed = first; seed < first + seeds; seed++) {
      const { truth, player, parts } = await keptLine({ instrument, sampleRate: RATE, seconds: 15, seed });
      const gains = [1, 1, 10 ** ((condition.drumsDb ?? 0) / 20)];
      const band = player.map((_, i) => parts.reduce((sum, part, p) => sum + gains[p]! * part[i]!, 0));
      const loudest = band.reduce((most, x) => Math.max(most, Math.abs(x)), 0);
      for (let i = 0; i < band.length; i++) band[i]! *= 0.3 / loudest;
      const room = { ...LIVING_ROOM, ...condition.room };
      const dice = random(seed * 7 + 3);
      const delay = condition.delaySeconds ?? 0.01 * dice.between(2, 14);
      const bare = roomPath(room, RATE, delay, seed * 13 + 31);
      const comes = throughSpeaker(band, bare, room.bend);
      const gain = (rms(player) / rms(comes)) * 10 ** ((condition.bandDb ?? 0) / 20);
      const noise = condition.noiseDb === undefined ? 0 : rms(player) * 10 ** (condition.noiseDb / 20);
      const microphone = player.map((x, i) => x + gain * comes[i]! + (noise && noise * dice.normal()));
      const path = bare.map((x) => gain * x);
      const f1 = (samples: Float32Array, rate: number) => noteScore(truth, listen(samples, rate)).f1;
      const bareKey = `${instrument} ${seed}`;
      if (!plain.has(bareKey)) {
        const heard = listen(player, RATE);
        plain.set(bareKey, { f1: noteScore(truth, heard).f1, splits: breakDown(truth, heard).counts.split });
      }
      columns[0]!.push(process.env['FAST'] ? 0 : f1(microphone, RATE));
      const slow = toRoomRate(player, RATE);
      const tell = (samples: Float32Array, column: number) => {
        const heard = listen(samples, ROOM_HZ);
        columns[column]!.push(noteScore(truth, heard).f1);
        splits[column - 1]!.push(breakDown(truth, heard).counts.split);
        left[column - 1]!.push(
          levelDb(
            slow.map((x, i) => samples[i]! - x),
            slow,
            ROOM_HZ,
            [1, 14],
          ),
        );
      };
      const sweptPath = process.env['ALONE'] ? null : swept(path, RATE, room.bend);
      if (process.env['ALONE']) columns[1]!.push(0);
      else if (sweptPath) tell(live(microphone, band, sweptPath, RATE), 1);
      else columns[1]!.push(0);
      const without = removeBand(
        { samples: microphone, sampleRate: RATE },
        { samples: band, sampleRate: RATE },
      );
      if (without) {
        tell(without.samples, 2);
        const off = 1000 * (without.alignment.offsetSeconds - delay);
        if (Math.abs(off) > 3) console.log(`    ${instrument} ${seed}: offset ${off.toFixed(1)} ms off`);
      } else {
        columns[2]!.push(0);
        console.log(`    ${instrument} ${seed}: backing not found`);
      }
      columns[3]!.push(plain.get(bareKey)!.f1);
      splits[2]!.push(plain.get(bareKey)!.splits);
    }
  const cells = columns.map((values) => `${mean(values).toFixed(3)} (${Math.min(...values).toFixed(3)})`);
  const dbs = left.map((values) => mean(values).toFixed(1)).join(' ');
  const split = splits.map((values) => mean(values).toFixed(1)).join(' ');
  console.log(`${condition.name.padEnd(36)} ${cells.join('  ')}  left dB ${dbs}  splits ${split}`);
}
