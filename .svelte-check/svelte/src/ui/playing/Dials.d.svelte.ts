export { default } from "./++Dials.svelte.ts";
export * from "./++Dials.svelte.ts";
