export { default } from "./++TwoTakes.svelte.ts";
export * from "./++TwoTakes.svelte.ts";
