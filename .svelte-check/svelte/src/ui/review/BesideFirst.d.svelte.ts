export { default } from "./++BesideFirst.svelte.ts";
export * from "./++BesideFirst.svelte.ts";
