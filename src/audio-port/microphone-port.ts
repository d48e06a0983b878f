/** The microphone, and the devices that sound comes in by and goes out by. */
import { heardContextSeconds } from '../audio/base/clock.ts';
import { wake } from '../audio/base/context.ts';
import {
  chooseOutput,
  listDevices,
  microphoneAllowed,
  onDevicesChanged,
  outputCanBeChosen,
  outputName,
} from '../audio/devices/devices.ts';
import { midiAllowed } from '../audio/devices/midi-input.ts';
import { openMicrophone } from '../audio/microphone/capture.ts';
import { playSounds } from '../audio/playback/play-sounds.ts';
import type { AudioPort } from '../state/ports.ts';
import type { OpenAudio } from './open-audio.ts';

/**
 * No browser says how long a sound takes from the microphone to the audio clock. The latency that it reports for the
 * output is doubled instead: the input and output buffers of one machine are commonly alike. Chromium on Linux reports
 * 10 + 30 ms, so that 80 ms are assumed where a measured loop took about 90. A sound check measures the real value.
 */
const INPUT_LIKE_OUTPUT = 2;

type MicrophonePort = Pick<
  AudioPort,
  | 'wake'
  | 'heardSeconds'
  | 'assumedRoundTripSeconds'
  | 'openMicrophone'
  | 'mayOpen'
  | 'devices'
  | 'onDevicesChanged'
  | 'chooseOutput'
  | 'outputName'
  | 'playSounds'
>;

export function microphonePort(audio: OpenAudio): MicrophonePort {
  const { context } = audio;
  return {
    wake: () => wake(context),
    heardSeconds: () => heardContextSeconds(context),
    assumedRoundTripSeconds: () => INPUT_LIKE_OUTPUT * outputSeconds(context),

    openMicrophone: ({ onHop, onLost, onSilent, onSoundBack }, deviceId) =>
      openMicrophone(context, {
        ...(deviceId === null ? {} : { deviceId }),
        onHop,
        onLost,
        onSilent,
        ...(onSoundBack && { onSoundBack }),
        ...(audio.bandBus === null ? {} : { bandBus: audio.bandBus }),
      }),

    mayOpen: async (input) => {
      if (!(await (input === 'midi' ? midiAllowed() : microphoneAllowed()))) return 'closed';
      // A browser starts its audio clock only after the user has touched the page.
      return context.state === 'running' || navigator.userActivation?.hasBeenActive ? 'yes' : 'asleep';
    },

    devices: async () => ({
      inputs: await listDevices('audioinput'),
      outputs: outputCanBeChosen(context) ? await listDevices('audiooutput') : [],
    }),
    onDevicesChanged,
    chooseOutput: (deviceId) => chooseOutput(context, deviceId),
    outputName,
    playSounds: (sounds, gapSeconds) => playSounds(context, sounds, gapSeconds),
  };
}

/** The latency that the browser reports from its audio clock to the output; what it does not report counts as 0. */
function outputSeconds({ baseLatency, outputLatency }: AudioContext): number {
  return (
    (Number.isFinite(baseLatency) ? baseLatency : 0) + (Number.isFinite(outputLatency) ? outputLatency : 0)
  );
}
