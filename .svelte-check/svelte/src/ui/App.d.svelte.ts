export { default } from "./++App.svelte.ts";
export * from "./++App.svelte.ts";
