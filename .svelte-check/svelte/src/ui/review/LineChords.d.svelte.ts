export { default } from "./++LineChords.svelte.ts";
export * from "./++LineChords.svelte.ts";
