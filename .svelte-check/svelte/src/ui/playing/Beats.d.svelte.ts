export { default } from "./++Beats.svelte.ts";
export * from "./++Beats.svelte.ts";
