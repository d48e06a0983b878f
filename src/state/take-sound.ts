/** The sound of a take while it is played and written: what was played, the band beside it, and both as a whole at the end. */
import type { RoomPath } from '../core/room/cancel/band-remover.ts';
import type { Hop } from '../audio/microphone/hop.ts';
import { bad, good, type Outcome } from '../core/base/outcome.ts';
import type { TakeContent } from './finished-take.ts';
import type { TakesPort, TakeWriter } from './ports.ts';
import { BandRecording, Recording } from './recording.ts';

export class TakeSound {
  readonly recording: Recording;
  readonly #band: BandRecording | null;

  /** @param keepsBand false where a sound check has heard that the band does not come back through the microphone */
  constructor(sampleRate: number, keepsBand: boolean) {
    this.recording = new Recording(sampleRate);
    this.#band = keepsBand ? new BandRecording() : null;
  }

  /** Takes a hop in; answers with what is new of the sound, and of the band on the same frames. */
  add(hop: Hop): { readonly piece: Int16Array<ArrayBuffer>; readonly band: Int16Array<ArrayBuffer> | null } {
    const piece = this.recording.add(hop);
    return { piece, band: this.#band?.add(hop, piece.length) ?? null };
  }

  /** Lets go what the writer has safe on the disk, so that an hour needs no more memory than a minute. */
  letGo({ frames }: Pick<TakeWriter, 'frames'>): void {
    this.recording.letGo(frames);
    this.#band?.letGo(frames);
  }

  /**
   * All of it, what was let go read from the disk again. Fails where the disk has it no more.
   * @param written where it was written to; null where it stands in memory as a whole
   * @param path by which the band came back; null where that is not known
   */
  async content(
    written: Pick<TakeWriter, 'id' | 'frames'> | null,
    takes: Pick<TakesPort, 'open'>,
    path: RoomPath | null,
  ): Promise<Outcome<TakeContent>> {
    const { sampleRate } = this.recording;
    const kept = written === null || written.frames === 0 ? null : await takes.open(written.id);
    if (kept?.ok === false) return kept;
    const { samples, band } = kept?.value ?? {};
    const isThere = (safe: Int16Array | null | undefined) =>
      (safe?.length ?? 0) >= this.recording.letGoFrames;
    if (!isThere(samples) || (this.#band !== null && !isThere(band))) return bad('take.gone');
    return good({
      kind: 'sound',
      audio: { samples: this.recording.whole(samples), sampleRate },
      backing: this.#band && { kind: 'band', samples: this.#band.whole(band ?? undefined), path },
    });
  }
}
