export { default } from "./++PlainButton.svelte.ts";
export * from "./++PlainButton.svelte.ts";
