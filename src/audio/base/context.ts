/** The one audio context. */
import { bad, good, type Outcome } from '../../core/base/outcome.ts';

/** At the browser's own sample rate: with any other, the browser would resample the microphone. */
export const createAudioContext = (): AudioContext => new AudioContext({ latencyHint: 'interactive' });

/** Starts the audio clock; the first time it takes a user's gesture. */
export async function wake(context: AudioContext): Promise<Outcome<void>> {
  try {
    if (context.state !== 'running') await context.resume();
    return good(undefined);
  } catch {
    return bad('output.asleep');
  }
}
