export { default } from "./++BackingControls.svelte.ts";
export * from "./++BackingControls.svelte.ts";
