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
  const bytes = new Uint8Array(44 + dataBytes + cueBytes);
  const view = new DataView(bytes.buffer);
  const name = (at: number, text: string) => {
    for (let i = 0; i < 4; i++) bytes[at + i] = text.charCodeAt(i);
  };
  name(0, 'RIFF');
  view.setUint32(4, bytes.length - 8, true);
  name(8, 'WAVE');
  name(12, 'fmt ');
  view.setUint32(16, 16, true);
  view.setUint16(20, 1, true);
  view.setUint16(22, 1, true);
  view.setUint32(24, sampleRate, true);
  view.setUint32(28, sampleRate * 2, true);
  view.setUint16(32, 2, true);
  view.setUint16(34, 16, true);
  name(36, 'data');
  view.setUint32(40, dataBytes, true);
  for (let i = 0; i < samples.length; i++) view.setInt16(44 + 2 * i, samples[i]!, true);
  if (cueFrame !== null) {
    const at = 44 + dataBytes;
    name(at, 'cue ');
    view.setUint32(at + 4, cueBytes - 8, true);
    view.setUint32(at + 8, 1, true);
    view.setUint32(at + 12, 1, true);
    view.setUint32(at + 16, cueFrame, true);
    name(at + 20, 'data');
    view.setUint32(at + 32, cueFrame, true);
  }
  return bytes;
}
