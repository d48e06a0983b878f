export { default } from "./++PlaybackBar.svelte.ts";
export * from "./++PlaybackBar.svelte.ts";
