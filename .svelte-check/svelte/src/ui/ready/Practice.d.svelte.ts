export { default } from "./++Practice.svelte.ts";
export * from "./++Practice.svelte.ts";
