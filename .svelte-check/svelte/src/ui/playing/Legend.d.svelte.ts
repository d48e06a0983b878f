export { default } from "./++Legend.svelte.ts";
export * from "./++Legend.svelte.ts";
