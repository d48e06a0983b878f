export { default } from "./++InstrumentView.svelte.ts";
export * from "./++InstrumentView.svelte.ts";
