export { default } from "./++OpenBacking.svelte.ts";
export * from "./++OpenBacking.svelte.ts";
