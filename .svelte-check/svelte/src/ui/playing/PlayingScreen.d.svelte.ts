export { default } from "./++PlayingScreen.svelte.ts";
export * from "./++PlayingScreen.svelte.ts";
