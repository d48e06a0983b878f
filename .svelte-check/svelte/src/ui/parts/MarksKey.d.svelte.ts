export { default } from "./++MarksKey.svelte.ts";
export * from "./++MarksKey.svelte.ts";
