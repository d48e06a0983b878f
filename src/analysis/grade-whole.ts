/** The page's side of grading a whole recording: sent at once, or piece by piece where its band is searched for. */
import { good, type Outcome } from '../core/base/outcome.ts';
import type { GradeOrder } from '../core/grade-order.ts';
import type { GradedSound, SoundToGrade } from '../core/grade-samples.ts';
import type { Order } from './messages.ts';

const PIECE_SECONDS = 30;

/** A worker that is asked. */
interface Asking {
  ask<T>(order: Order, transfer?: Transferable[]): Promise<Outcome<T>>;
}

/**
 * A take of which it is unknown whether its band came back is sent in pieces, each after the one before it was taken: its
 * search needs a fifth of it, and an hour of take and band are 636 MB. Only where neither the band was found in it nor its
 * notes are known is it sent as a whole, to be listened to.
 * @param pieceSeconds so much is copied and sent at once
 */
export async function gradeWhole(
  sound: SoundToGrade,
  order: GradeOrder,
  worker: Asking,
  pieceSeconds = PIECE_SECONDS,
): Promise<Outcome<GradedSound>> {
  const { backing, known = null } = sound;
  if (backing?.kind !== 'band' || backing.path !== null) return worker.ask({ kind: 'grade', sound, order });
  const sent = await sendPieces(sound, backing.samples, worker, pieceSeconds);
  if (!sent.ok) return sent;
  const found = await worker.ask<GradedSound | null>({ kind: 'grade searched', order, known });
  if (!found.ok) return found;
  if (found.value !== null) return good(found.value);
  return worker.ask({ kind: 'grade', sound: { ...sound, backing: null }, order });
}

async function sendPieces(
  { samples, sampleRate }: SoundToGrade,
  band: Int16Array,
  worker: Asking,
  pieceSeconds: number,
): Promise<Outcome<void>> {
  const whole = { frames: samples.length, bandFrames: band.length, sampleRate };
  const step = Math.round(pieceSeconds * sampleRate);
  for (let from = 0; from === 0 || from < Math.max(samples.length, band.length); from += step) {
    const piece = { take: samples.slice(from, from + step), band: band.slice(from, from + step) };
    const taken = await worker.ask<undefined>({ kind: 'search piece', whole, ...piece }, [
      piece.take.buffer,
      piece.band.buffer,
    ]);
    if (!taken.ok) return taken;
  }
  return good(undefined);
}
