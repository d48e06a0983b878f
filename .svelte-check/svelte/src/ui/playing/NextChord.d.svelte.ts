export { default } from "./++NextChord.svelte.ts";
export * from "./++NextChord.svelte.ts";
