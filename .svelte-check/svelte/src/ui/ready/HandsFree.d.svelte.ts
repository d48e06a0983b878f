export { default } from "./++HandsFree.svelte.ts";
export * from "./++HandsFree.svelte.ts";
