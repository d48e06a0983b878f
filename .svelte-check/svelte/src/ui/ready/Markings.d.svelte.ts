export { default } from "./++Markings.svelte.ts";
export * from "./++Markings.svelte.ts";
