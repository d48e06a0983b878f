export { default } from "./++RecordingStrip.svelte.ts";
export * from "./++RecordingStrip.svelte.ts";
