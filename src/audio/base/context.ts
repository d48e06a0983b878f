/** The one audio context. */
import { bad, good, type Outcome } from '../../core/base/outcome.ts';

/**
 * A wireless output takes a second or two to begin. Without any output Firefox never answers (WebAudio/web-audio-api
 * issue 2625: it counts as started once the output has asked for sound), so that longer waiting is of no use.
 */
const longestMsToWake = 6000;

/** At the browser's own sample rate: with any other, the browser would resample the microphone. */
export const createAudioContext = (): AudioContext => new AudioContext({ latencyHint: 'interactive' });

/** Starts the audio clock; the first time it takes a user's gesture. */
export async function wake(
  context: Pick<AudioContext, 'state' | 'resume'>,
  longestMs = longestMsToWake,
): Promise<Outcome<void>> {
  if (context.state === 'running') return good(undefined);
  let patience: ReturnType<typeof setTimeout> | undefined;
  const tooLong = new Promise<boolean>((answer) => {
    patience = setTimeout(() => answer(false), longestMs);
  });
  const started = context.resume().then(
    () => true,
    () => false,
  );
  const awake = await Promise.race([started, tooLong]);
  clearTimeout(patience);
  return awake ? good(undefined) : bad('output.asleep');
}
