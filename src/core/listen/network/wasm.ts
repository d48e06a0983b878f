/** What this folder uses of WebAssembly, which browsers, workers and Node all have. */
declare const WebAssembly: {
  readonly Module: new (bytes: Uint8Array) => object;
  readonly Instance: new (module: object) => { readonly exports: unknown };
};

const compiled = new Map<readonly number[], object>();

/** A new instance of the WebAssembly module whose bytes these are, with memory of its own; a list of bytes is compiled once. */
export function instanceOf<Exports>(bytes: readonly number[]): Exports {
  let module = compiled.get(bytes);
  if (!module) {
    module = new WebAssembly.Module(Uint8Array.from(bytes));
    compiled.set(bytes, module);
  }
  return new WebAssembly.Instance(module).exports as Exports;
}
