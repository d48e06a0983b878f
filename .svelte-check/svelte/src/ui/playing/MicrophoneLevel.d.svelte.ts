export { default } from "./++MicrophoneLevel.svelte.ts";
export * from "./++MicrophoneLevel.svelte.ts";
