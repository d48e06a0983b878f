export { default } from "./++BackingFacts.svelte.ts";
export * from "./++BackingFacts.svelte.ts";
