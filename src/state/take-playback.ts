/** Opens the playback of a take: its sound, or its notes rendered on the kit, and the band as it played. */
import type { HeardNote } from '../core/take/note.ts';
import { accompaniment, type Review } from './phase.ts';
import { Playback } from './playback.svelte.ts';
import type { AudioPort, BackingsPort, BandLevels, FramesPort } from './ports.ts';
import { backingRun, backingSource } from './chosen-backing.ts';

/** @param usual the band's levels, for takes that were stored without any */
export function openTakePlayback(
  review: Review,
  {
    audio,
    frames,
    backings,
  }: {
    readonly audio: AudioPort;
    readonly frames: FramesPort;
    readonly backings: Pick<BackingsPort, 'file'>;
  },
  usual: BandLevels,
): Playback {
  const { content, details } = review;
  const levels = details.levels ?? usual;
  const { backing } = details;
  const band = {
    ...accompaniment(review, levels),
    ...(backing && {
      backing: backingRun(backing, backingSource(backings, backing), review.timeline.beatsPerBar),
    }),
  };
  const line =
    content.kind === 'sound'
      ? content.audio
      : { notes: content.notes, durationSeconds: content.durationSeconds, instrument: details.instrument };
  const player = audio.openPlayer(line, band);
  // An opened recording may have a band of its own in it; a second band would clash with it.
  const withBand = !(details.source === 'recording' && content.kind === 'sound');
  const render = (notes: readonly HeardNote[], seconds: number) =>
    audio.renderNotes(notes, seconds, details.instrument);
  return new Playback({ player, frames, levels, render, mix: withBand ? 'both' : 'line' });
}
