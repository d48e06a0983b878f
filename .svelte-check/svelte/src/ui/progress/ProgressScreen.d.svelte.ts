export { default } from "./++ProgressScreen.svelte.ts";
export * from "./++ProgressScreen.svelte.ts";
