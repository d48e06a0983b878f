/** The microphone, and the devices that sound comes in by and goes out by. */
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
import { assumedRoundTripSeconds, heardClockSeconds } from '../core/take/round-trip.ts';
import type { AudioPort } from '../state/ports.ts';
import type { OpenAudio } from './open-audio.ts';

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
    heardSeconds: () => heardClockSeconds(context),
    assumedRoundTripSeconds: () => assumedRoundTripSeconds(context),

    openMicrophone: (events, deviceId) =>
      openMicrophone(context, {
        ...events,
        ...(deviceId === null ? {} : { deviceId }),
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
