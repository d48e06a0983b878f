export { default } from "./++Waveform.svelte.ts";
export * from "./++Waveform.svelte.ts";
