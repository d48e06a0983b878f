/** A few sounds one after the other on the audio clock: the sweeps and the clicks of a sound check. */

/** Time to schedule the first sound. */
const LEAD_SECONDS = 0.25;

export interface PlayingSounds {
  /** Frame of the context at which each begins. */
  readonly startFrames: readonly number[];
  stop(): void;
}

export function playSounds(
  context: AudioContext,
  sounds: readonly Float32Array<ArrayBuffer>[],
  gapSeconds: number,
): PlayingSounds {
  const { sampleRate } = context;
  const sources: AudioBufferSourceNode[] = [];
  const startFrames: number[] = [];
  let frame = Math.ceil((context.currentTime + LEAD_SECONDS) * sampleRate);
  for (const sound of sounds) {
    const buffer = context.createBuffer(1, sound.length, sampleRate);
    buffer.copyToChannel(sound, 0);
    const source = new AudioBufferSourceNode(context, { buffer });
    source.connect(context.destination);
    source.start(frame / sampleRate);
    source.onended = () => source.disconnect();
    sources.push(source);
    startFrames.push(frame);
    frame += sound.length + Math.round(gapSeconds * sampleRate);
  }
  return {
    startFrames,
    stop: () => {
      for (const source of sources) source.stop();
    },
  };
}
