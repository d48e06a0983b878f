export { default } from "./++RecordingFields.svelte.ts";
export * from "./++RecordingFields.svelte.ts";
