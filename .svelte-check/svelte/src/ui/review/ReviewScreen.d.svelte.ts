export { default } from "./++ReviewScreen.svelte.ts";
export * from "./++ReviewScreen.svelte.ts";
