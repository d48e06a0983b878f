export { default } from "./++FirstBar.svelte.ts";
export * from "./++FirstBar.svelte.ts";
