export { default } from "./++TapTempo.svelte.ts";
export * from "./++TapTempo.svelte.ts";
