/** The microphone: opened without the browser's voice processing, watched while it runs, never sent to the speakers. */
import { bad, failure, good, type Outcome } from '../../core/base/outcome.ts';
import type { Hop } from './hop.ts';
import { clockWatch } from './clock-watch.ts';
import { silenceWatch } from './silence-watch.ts';
import workletUrl from './capture.worklet.ts?worker&url';
import { problem, type Notice, type Problem } from '../../core/words/problem.ts';
import { capturedOtherwise, whyRefused, whyUnavailable } from './capture-problems.ts';

/**
 * The stream is checked this often. A check without a new hop is a miss; misses are counted one at a time, so that a page
 * that was busy for a second, with hops waiting in its queue, does not lose its microphone.
 */
const lookEveryMs = 250;
/** Half a second without a hop: the microphone is lost. Browsers can take seconds to report that. */
const missesToLose = 2;
/** A device may take its time to open. */
const missesToOpen = 16;

const SILENT = problem('microphone.silent');
const PAUSED = problem('microphone.paused');

/** What an open microphone tells, on the page's thread. */
export interface MicrophoneEvents {
  readonly onHop: (hop: Hop) => void;
  /** Called once when the microphone is lost (removed, used by another program, a stream without data). */
  readonly onLost: (problem: Problem) => void;
  /**
   * Called when nothing but digital silence came for two and a half seconds, or when the browser stopped its sound; called
   * again each time that this happens after sound was back.
   */
  readonly onSilent?: (problem: Problem) => void;
  /** Called when sound is back after that; with the problem that no longer holds. */
  readonly onSoundBack?: (problem: Problem) => void;
  /** Called whenever the browser, being too busy, has thrown away a quarter of a second of sound. */
  readonly onBehind?: () => void;
}

export interface MicrophoneOptions extends MicrophoneEvents {
  readonly deviceId?: string;
  /** The band's bus, to be recorded beside the microphone sample by sample. */
  readonly bandBus?: AudioNode;
}

export interface Microphone {
  readonly label: string;
  readonly sampleRate: number;
  /** Processing that stayed on, a telephone codec. Empty when all is well. */
  readonly warnings: readonly Notice[];
  dispose(): void;
}

/** Loads the worklet before it is needed; a failure is reported by `openMicrophone`, which tries again. */
export async function loadRecorder(context: AudioContext): Promise<void> {
  await context.audioWorklet.addModule(workletUrl).catch(() => undefined);
}

/** Opens a microphone and starts the hops. The context must be running, else no hop comes. */
export async function openMicrophone(
  context: AudioContext,
  options: MicrophoneOptions,
): Promise<Outcome<Microphone>> {
  const unavailable = whyUnavailable(globalThis.isSecureContext, navigator.mediaDevices);
  if (unavailable) return failure(unavailable);
  const [stream, loaded] = await Promise.all([
    requestStream(options.deviceId),
    context.audioWorklet.addModule(workletUrl).then(
      () => true,
      () => false,
    ),
  ]);
  if (!stream.ok) return stream;
  if (!loaded) {
    stopTracks(stream.value);
    return bad('microphone.recorder');
  }
  try {
    return good(listenTo(context, stream.value, options));
  } catch {
    // Firefox refuses a stream of another rate than the context's; the output may have changed since the page was loaded.
    stopTracks(stream.value);
    return bad('microphone.otherRate');
  }
}

async function requestStream(deviceId: string | undefined): Promise<Outcome<MediaStream>> {
  try {
    const stream = await navigator.mediaDevices.getUserMedia({
      audio: {
        echoCancellation: false,
        noiseSuppression: false,
        autoGainControl: false,
        channelCount: { ideal: 1 },
        ...(deviceId === undefined ? {} : { deviceId: { exact: deviceId } }),
      },
    });
    return good(stream);
  } catch (error) {
    return failure(whyRefused(error instanceof DOMException ? error.name : ''));
  }
}

function listenTo(context: AudioContext, stream: MediaStream, options: MicrophoneOptions): Microphone {
  const track = stream.getAudioTracks()[0];
  const source = context.createMediaStreamSource(stream);
  const node = new AudioWorkletNode(context, 'landfall-capture', {
    numberOfInputs: 2,
    // Without an output the microphone cannot reach the loudspeakers and cause feedback.
    numberOfOutputs: 0,
  });
  source.connect(node, 0, 0);
  options.bandBus?.connect(node, 0, 1);

  let open = true;
  let hops = 0;
  let hopsAtLastLook = 0;
  let misses = 0;
  const close = () => {
    if (!open) return;
    open = false;
    clearInterval(watch);
    track?.removeEventListener('ended', lost);
    node.port.onmessage = null;
    node.port.postMessage('close');
    source.disconnect();
    try {
      options.bandBus?.disconnect(node, 0, 1);
    } catch {
      // A band that failed has left the connection already.
    }
    stopTracks(stream);
  };
  const lost = () => {
    if (!open) return;
    close();
    options.onLost(hops > 0 ? problem('microphone.lost') : whyRefused('NotReadableError'));
  };
  const watchForSilence = silenceWatch(context.sampleRate, {
    silent: () => options.onSilent?.(SILENT),
    soundBack: () => options.onSoundBack?.(SILENT),
  });
  const clocks = clockWatch(() => options.onBehind?.());
  node.port.onmessage = ({ data }: MessageEvent<Hop>) => {
    hops++;
    watchForSilence(data.samples);
    clocks.look(data.startFrame / context.sampleRate, performance.now() / 1000);
    options.onHop(data);
  };
  track?.addEventListener('ended', lost);
  let paused = false;
  let stills = 0;
  let secondsAtLastLook = context.currentTime;
  /**
   * The clock goes. A suspended output stops it although the state stays "running": the microphone is not lost by that. While
   * the first hop is waited for, a clock that does not go yet is nothing that stopped.
   */
  const clockGoes = () => {
    stills = hops > 0 && context.currentTime === secondsAtLastLook ? stills + 1 : 0;
    secondsAtLastLook = context.currentTime;
    return context.state === 'running' && stills < missesToLose;
  };
  const watchContext = (isRunning: boolean) => {
    if (isRunning) {
      if (paused) options.onSoundBack?.(PAUSED);
      paused = false;
      return;
    }
    // The band stands still with the recording, so that both stay together. A page may be allowed to go on by itself.
    if (!paused) options.onSilent?.(PAUSED);
    paused = true;
    clocks.restart();
    void context.resume().catch(() => undefined);
  };
  const watch = setInterval(() => {
    const isRunning = clockGoes();
    watchContext(isRunning);
    // A suspended context (a closed laptop) sends nothing, but the microphone is not lost.
    const missed = hops === hopsAtLastLook && isRunning && stills === 0;
    misses = missed ? misses + 1 : 0;
    hopsAtLastLook = hops;
    if (misses >= (hops > 0 ? missesToLose : missesToOpen)) lost();
  }, lookEveryMs);

  return {
    // A measured room is found again by this name, which is never shown.
    label: track?.label || 'Microphone',
    sampleRate: context.sampleRate,
    warnings: capturedOtherwise(track?.getSettings() ?? {}),
    dispose: close,
  };
}

const stopTracks = (stream: MediaStream) => {
  for (const track of stream.getTracks()) track.stop();
};
