/** What a sound check and a live take do in a room by arithmetic. */
import { throughSpeaker } from '../../fixtures/room/rooms.ts';
import { BandRemover, type RoomPath } from '../../src/core/room/cancel/band-remover.ts';
import { checkSweeps, judgeSweeps, SWEEP_GAP_SECONDS } from '../../src/core/room/check/sound-check.ts';

/** The sound check in this room: three sweeps through speaker and path, a quiet room's noise under them. */
export function swept(path: Float32Array, sampleRate: number, bend = 1): RoomPath | null {
  const sweeps = checkSweeps(sampleRate);
  const recorded = sweeps.map((sound) => {
    const padded = new Float32Array(sound.length + Math.ceil(SWEEP_GAP_SECONDS * sampleRate));
    padded.set(sound);
    return throughSpeaker(padded, path, bend).map((x, i) => x + 3e-4 * Math.sin(i * i));
  });
  const room = judgeSweeps(recorded, sweeps, sampleRate);
  return room.ok ? room.value.path : null;
}

/** The whole take as the live remover gives it, at ROOM_HZ. */
export function live(
  microphone: Float32Array,
  band: Float32Array,
  path: RoomPath,
  sampleRate: number,
): Float32Array {
  const remover = new BandRemover(sampleRate, path);
  return Float32Array.from([...remover.push(microphone, band), ...remover.finish()]);
}
