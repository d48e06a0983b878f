export { default } from "./++NoteExplained.svelte.ts";
export * from "./++NoteExplained.svelte.ts";
