export { default } from "./++RecordingScreen.svelte.ts";
export * from "./++RecordingScreen.svelte.ts";
