export { default } from "./++ReadyScreen.svelte.ts";
export * from "./++ReadyScreen.svelte.ts";
