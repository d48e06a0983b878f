export { default } from "./++Aims.svelte.ts";
export * from "./++Aims.svelte.ts";
