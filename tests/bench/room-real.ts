/**
 * A real guitar over chords of real guitar notes, as loud, out by the backing's file alone. The notes lie beside the
 * checkout or nowhere (fixtures/lines/real-notes.ts).
 *
 *   npx tsx tests/bench/room-real.ts FIRST_SEED SEEDS     5000 and up report; 1 to 999 tune
 */
import { rms } from '../../fixtures/lines/noise.ts';
import { realLine } from '../../fixtures/lines/real-notes.ts';
import { levelDb } from '../../fixtures/room/band-in-a-room.ts';
import { LIVING_ROOM, roomPath, throughSpeaker } from '../../fixtures/room/rooms.ts';
import { listen } from '../../src/core/listen.ts';
import { removeBand } from '../../src/core/room/cancel/remove-band.ts';
import { ROOM_HZ, toRoomRate } from '../../src/core/room/align/room-rate.ts';
import { breakDown } from './note-errors.ts';
import { noteScore } from './note-metrics.ts';
import { live, swept } from './room-live.ts';

const first = Number(process.argv[2] ?? 300);
const seeds = Number(process.argv[3] ?? 2);
const scores = new Map<string, number[]>();
const put = (name: string, value: number) => scores.set(name, [...(scores.get(name) ?? []), value]);

for (let seed = first; seed < first + seeds; seed++) {
  const { samples: player, sampleRate, truth } = await realLine('guitar', seed, { overlapSeconds: 0.1 });
  const voices = await Promise.all(
    [1, 2, 3, 4].map((voice) =>
      realLine('guitar', seed * 10 + voice, { notes: 30, overlapSeconds: 0.8, steps: [0.3, 1.2] }),
    ),
  );
  const chords = player.map((_, i) => voices.reduce((sum, { samples }) => sum + (samples[i] ?? 0), 0));
  const loudest = chords.reduce((most, x) => Math.max(most, Math.abs(x)), 0);
  for (let i = 0; i < chords.length; i++) chords[i]! *= 0.3 / loudest;
  const slow = toRoomRate(player, sampleRate);
  const tell = (name: string, samples: Float32Array, rate: number) => {
    const heard = listen(samples, rate);
    put(`${name}, F1`, noteScore(truth, heard).f1);
    for (const [kind, count] of Object.entries(breakDown(truth, heard).counts))
      put(`${name}, ${kind}`, count);
    if (rate !== ROOM_HZ) return;
    const error = slow.map((x, i) => (samples[i] ?? 0) - x);
    put(`${name}, left dB`, levelDb(error, slow, ROOM_HZ, [1, Math.floor(slow.length / ROOM_HZ) - 1]));
  };
  tell('line alone', player, sampleRate);
  for (const [name, path] of [
    ['mixed', Float32Array.of(1)],
    ['in a room', roomPath(LIVING_ROOM, sampleRate, 0.06, seed + 31)],
  ] as const) {
    const echo = path.length === 1 ? chords : throughSpeaker(chords, path);
    const gain = rms(player) / rms(echo);
    const take = player.map((x, i) => x + gain * echo[i]!);
    put(`${name}, as it is, F1`, noteScore(truth, listen(take, sampleRate)).f1);
    const out = removeBand({ samples: take, sampleRate }, { samples: chords, sampleRate });
    if (out) tell(`${name}, backing alone`, out.samples, ROOM_HZ);
    else console.log(`    seed ${seed}, ${name}: not found`);
    if (path.length === 1) continue;
    const known = swept(
      path.map((x) => gain * x),
      sampleRate,
    );
    if (known) tell(`${name}, swept`, live(take, chords, known, sampleRate), ROOM_HZ);
  }
}
for (const [name, values] of scores) {
  const mean = values.reduce((all, x) => all + x, 0) / values.length;
  console.log(`${mean.toFixed(3).padStart(9)}  ${name}  (${values.map((x) => x.toFixed(2)).join(' ')})`);
}
