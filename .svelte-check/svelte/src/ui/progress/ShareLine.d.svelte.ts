export { default } from "./++ShareLine.svelte.ts";
export * from "./++ShareLine.svelte.ts";
