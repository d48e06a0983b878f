export { default } from "./++BackingScreen.svelte.ts";
export * from "./++BackingScreen.svelte.ts";
