/** A WebAssembly module as a data URL: the bundler writes it into the JavaScript. */
declare module '*.wasm?url&inline' {
  const dataUrl: string;
  export default dataUrl;
}
