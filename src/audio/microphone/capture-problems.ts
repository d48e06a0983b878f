/** Why a microphone can't be opened, or is not as it should be. Names of exceptions: W3C Media Capture and Streams. */
import { notice, problem, type Notice, type Problem, type ProblemCode } from '../../core/words/problem.ts';

/** Why no microphone can be asked for at all, or null. */
export function whyUnavailable(isSecure: boolean, mediaDevices: MediaDevices | undefined): Problem | null {
  if (!isSecure) return problem('microphone.insecure');
  return mediaDevices ? null : problem('microphone.unsupported');
}

type Refusal = Extract<
  ProblemCode,
  `microphone.${'blocked' | 'blockedByPage' | 'notFound' | 'removed' | 'busy' | 'stopped'}`
>;

const REFUSALS: Readonly<Record<string, Refusal>> = {
  NotAllowedError: 'microphone.blocked',
  SecurityError: 'microphone.blockedByPage',
  NotFoundError: 'microphone.notFound',
  OverconstrainedError: 'microphone.removed',
  NotReadableError: 'microphone.busy',
  AbortError: 'microphone.stopped',
};

/** From the name of getUserMedia's exception to what the player can do. */
export const whyRefused = (name: string): Problem => problem(REFUSALS[name] ?? 'microphone.failed');

/** Below this a headset has switched to a telephone codec. */
const TELEPHONE_HZ = 24_000;

/** Compares what the track says it does with what was asked; what a browser does not tell is taken as asked. */
export function capturedOtherwise({
  echoCancellation,
  noiseSuppression,
  autoGainControl,
  sampleRate,
}: MediaTrackSettings): readonly Notice[] {
  const kept = {
    echo: Boolean(echoCancellation),
    noise: noiseSuppression === true,
    gain: autoGainControl === true,
  };
  return [
    ...(Object.values(kept).includes(true) ? [notice('microphone.processing', kept)] : []),
    ...(sampleRate !== undefined && sampleRate <= TELEPHONE_HZ ? [notice('microphone.telephone')] : []),
  ];
}
