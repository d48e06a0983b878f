export { default } from "./++StartByNotes.svelte.ts";
export * from "./++StartByNotes.svelte.ts";
