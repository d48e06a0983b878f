export { default } from "./++Sheet.svelte.ts";
export * from "./++Sheet.svelte.ts";
