/** What to say when a microphone can't be opened, or is not as it should be. Names: W3C Media Capture and Streams. */

/** Why no microphone can be asked for at all, or null. */
export function unavailableSentence(
  isSecure: boolean,
  mediaDevices: MediaDevices | undefined,
): string | null {
  if (!isSecure) {
    return 'Browsers open the microphone only on https or localhost: open the page at such an address.';
  }
  return mediaDevices
    ? null
    : 'This browser has no microphone for web pages: use a current Chrome, Edge, Firefox or Safari.';
}

const refusals: Readonly<Record<string, string>> = {
  NotAllowedError:
    'The microphone is blocked: allow it for this page in the address bar, and in the system settings, then try again.',
  SecurityError:
    'The microphone is blocked on this page by its settings: open the page by itself, then try again.',
  NotFoundError: 'No microphone was found: plug one in, then try again.',
  OverconstrainedError: 'That microphone is not there any more: choose another one.',
  NotReadableError:
    'The microphone is there but gives nothing: another program may hold it. Close that program, then try again.',
  AbortError: 'The microphone stopped while it was being opened: try again.',
};

/** From the name of getUserMedia's exception to what the player can do. */
export const refusalSentence = (name: string): string =>
  refusals[name] ?? 'The microphone could not be opened: check that it is plugged in, then try again.';

export const lostSentence =
  'The microphone is gone. What you played until now is kept; plug it in and open it again.';

export const silentSentence =
  'The microphone sends nothing but silence: look for a mute switch, and at the input chosen in the system settings.';

/** Below this a headset has switched to a telephone codec. */
const telephoneHz = 24_000;

/** Compares what the track says it does with what was asked; what a browser does not tell is taken as asked. */
export function capturedAsAsked(settings: MediaTrackSettings): readonly string[] {
  const on = [
    settings.echoCancellation ? 'echo cancellation' : null,
    settings.noiseSuppression ? 'noise suppression' : null,
    settings.autoGainControl ? 'automatic gain' : null,
  ].filter((name) => name !== null);
  const warnings: string[] = [];
  if (on.length > 0) {
    warnings.push(
      `The browser kept ${on.join(' and ')} on, which eats notes: turn it off in the system's sound settings.`,
    );
  }
  if (settings.sampleRate !== undefined && settings.sampleRate <= telephoneHz) {
    warnings.push('This headset sends telephone sound: use a wired microphone, or the one in the laptop.');
  }
  return warnings;
}
