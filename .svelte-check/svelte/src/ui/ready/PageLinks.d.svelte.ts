export { default } from "./++PageLinks.svelte.ts";
export * from "./++PageLinks.svelte.ts";
