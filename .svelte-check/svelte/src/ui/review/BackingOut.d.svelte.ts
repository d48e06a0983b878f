export { default } from "./++BackingOut.svelte.ts";
export * from "./++BackingOut.svelte.ts";
