export { default } from "./++Advice.svelte.ts";
export * from "./++Advice.svelte.ts";
