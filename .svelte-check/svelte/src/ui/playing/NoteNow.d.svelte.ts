export { default } from "./++NoteNow.svelte.ts";
export * from "./++NoteNow.svelte.ts";
