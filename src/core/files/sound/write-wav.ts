/** Bytes before the first sample. */
export const WAV_HEADER_BYTES = 44;
/** The sizes in a RIFF header have 32 bits. */
export const MOST_WAV_DATA_BYTES = 2 ** 32 - WAV_HEADER_BYTES;

const setName = (bytes: Uint8Array, at: number, text: string) => {
  for (let i = 0; i < 4; i++) bytes[at + i] = text.charCodeAt(i);
};

/** The header of 16-bit samples, `frames` of them in each channel, interleaved behind it. */
export function wavHeader(sound: {
  readonly sampleRate: number;
  readonly channels: 1 | 2;
  readonly frames: number;
}): Uint8Array<ArrayBuffer> {
  const { sampleRate, channels, frames } = sound;
  const frameBytes = 2 * channels;
  const bytes = new Uint8Array(WAV_HEADER_BYTES);
  const view = new DataView(bytes.buffer);
  setName(bytes, 0, 'RIFF');
  view.setUint32(4, WAV_HEADER_BYTES - 8 + frames * frameBytes, true);
  setName(bytes, 8, 'WAVE');
  setName(bytes, 12, 'fmt ');
  view.setUint32(16, 16, true);
  view.setUint16(20, 1, true);
  view.setUint16(22, channels, true);
  view.setUint32(24, sampleRate, true);
  view.setUint32(28, sampleRate * frameBytes, true);
  view.setUint16(32, frameBytes, true);
  view.setUint16(34, 16, true);
  setName(bytes, 36, 'data');
  view.setUint32(40, frames * frameBytes, true);
  return bytes;
}

/**
 * Mono 16-bit samples as a WAV file: RIFF with a plain PCM header, and a cue point where one is given.
 * Source: "Multimedia Programming Interface and Data Specifications 1.0" (IBM and Microsoft, 1991), which
 * defines RIFF WAVE, `fmt `, `data` and `cue `.
 *
 * @param cueFrame a frame to mark, for example the first downbeat; players and editors show it as a marker
 */
export function writeWav(
  samples: Int16Array,
  sampleRate: number,
  cueFrame: number | null = null,
): Uint8Array<ArrayBuffer> {
  const dataBytes = samples.length * 2;
  const cueBytes = cueFrame === null ? 0 : 8 + 4 + 24;
  const bytes = new Uint8Array(WAV_HEADER_BYTES + dataBytes + cueBytes);
  bytes.set(wavHeader({ sampleRate, channels: 1, frames: samples.length }));
  const view = new DataView(bytes.buffer);
  view.setUint32(4, bytes.length - 8, true);
  for (let i = 0; i < samples.length; i++) view.setInt16(44 + 2 * i, samples[i]!, true);
  if (cueFrame !== null) {
    const at = 44 + dataBytes;
    setName(bytes, at, 'cue ');
    view.setUint32(at + 4, cueBytes - 8, true);
    view.setUint32(at + 8, 1, true);
    view.setUint32(at + 12, 1, true);
    view.setUint32(at + 16, cueFrame, true);
    setName(bytes, at + 20, 'data');
    view.setUint32(at + 32, cueFrame, true);
  }
  return bytes;
}
