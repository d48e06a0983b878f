export { default } from "./++Segments.svelte.ts";
export * from "./++Segments.svelte.ts";
