export { default } from "./++Notice.svelte.ts";
export * from "./++Notice.svelte.ts";
