// eslint-disable-next-line @typescript-eslint/triple-slash-reference -- every project that takes this file in needs it
/// <reference path="./wasm-url.d.ts" />
/**
 * minimp3 (CC0) as the package minimp3-wasm (Apache-2.0) compiles it. The package's own wrapper fetches its
 * module by URL and takes whole files; here the 21 kB stand in the bundle, and frames go in one by one: the
 * decoder's state stays between calls, and a damaged byte cannot make it search for the next frame.
 */
import moduleUrl from 'minimp3-wasm/dist/decoder.opt.wasm?url&inline';

/** Every host of the core has WebAssembly; its types come with the DOM, which the core does not. */
declare const WebAssembly: {
  instantiate(bytes: Uint8Array): Promise<{ readonly instance: { readonly exports: unknown } }>;
};

interface Exports {
  readonly memory: { readonly buffer: ArrayBuffer };
  decoder_init(): void;
  decoder_set_mp3_data_size(bytes: number): void;
  decoder_mp3_data_offset(): number;
  decoder_pcm_data_offset(): number;
  decoder_decode(seconds: number): void;
  decode_results_num_channels(): number;
  decode_results_num_samples(): number;
}

/** Longer than any frame: makes the decoder take all that it was given. */
const WHOLE_FRAME_SECONDS = 10;
/** 1152 samples of two channels of two bytes. */
const MOST_SAMPLE_BYTES = 1152 * 2 * 2;
const FULL_SCALE = 32_768;

function bytesOf(dataUrl: string): Uint8Array {
  const ALPHABET = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';
  const text = dataUrl.slice(dataUrl.indexOf(',') + 1).replace(/=+$/, '');
  const bytes = new Uint8Array(Math.floor((text.length * 3) / 4));
  let bits = 0;
  for (let k = 0, at = 0; k < text.length; k++) {
    bits = (bits << 6) | ALPHABET.indexOf(text[k]!);
    if (k % 4 !== 0) bytes[at++] = (bits >> (6 - 2 * (k % 4))) & 0xff;
  }
  return bytes;
}

/** Decodes one whole frame to its channels, full scale ±1; silence where the frame can't be decoded. */
export type FrameDecoder = (frame: Uint8Array) => readonly Float32Array[];

export async function startMinimp3(): Promise<FrameDecoder> {
  const { instance } = await WebAssembly.instantiate(bytesOf(moduleUrl));
  const decoder = instance.exports as Exports;
  decoder.decoder_init();
  return (frame) => {
    // Room for the samples first, then the exact length: with a byte too many the decoder would start afresh.
    decoder.decoder_set_mp3_data_size(frame.length + MOST_SAMPLE_BYTES);
    decoder.decoder_set_mp3_data_size(frame.length);
    const { buffer } = decoder.memory;
    new Uint8Array(buffer, decoder.decoder_mp3_data_offset(), frame.length).set(frame);
    // The samples come right behind the frame, at an odd address where its length is odd.
    const samples = new DataView(buffer, decoder.decoder_pcm_data_offset(), MOST_SAMPLE_BYTES);
    for (let at = 0; at < MOST_SAMPLE_BYTES; at += 4) samples.setInt32(at, 0);
    decoder.decoder_decode(WHOLE_FRAME_SECONDS);
    const channels = decoder.decode_results_num_channels();
    const frames = channels === 0 ? 0 : decoder.decode_results_num_samples() / channels;
    return Array.from({ length: channels }, (_, channel) => {
      const line = new Float32Array(frames);
      for (let k = 0; k < frames; k++)
        line[k] = samples.getInt16(2 * (k * channels + channel), true) / FULL_SCALE;
      return line;
    });
  };
}
