export { default } from "./++Header.svelte.ts";
export * from "./++Header.svelte.ts";
