export { default } from "./++TakeLine.svelte.ts";
export * from "./++TakeLine.svelte.ts";
