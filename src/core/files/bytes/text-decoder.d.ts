/** The part of the Encoding standard (WHATWG) that is used here. Browsers, workers and Node all have it; ES2023 does not list it. */
declare class TextDecoder {
  constructor(label: string, options?: { readonly fatal?: boolean });
  decode(bytes: Uint8Array, options?: { readonly stream?: boolean }): string;
}

/** Text to UTF-8 bytes. */
declare class TextEncoder {
  encode(text: string): Uint8Array;
}
