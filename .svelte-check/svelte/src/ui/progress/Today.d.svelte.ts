export { default } from "./++Today.svelte.ts";
export * from "./++Today.svelte.ts";
