/** The browser's audio behind the port that the state classes speak to. */
import { loadRecorder } from '../audio/microphone/capture.ts';
import type { AudioPort } from '../state/ports.ts';
import { bandPort } from './band-port.ts';
import { microphonePort } from './microphone-port.ts';
import { OpenAudio } from './open-audio.ts';
import { playbackPort } from './playback-port.ts';

/** Opens the audio context, and loads the kit and the recorder ahead, so that a take can start at once. */
export function audioPort(): AudioPort {
  const audio = new OpenAudio();
  void loadRecorder(audio.context);
  return { ...microphonePort(audio), ...bandPort(audio), ...playbackPort(audio) };
}
