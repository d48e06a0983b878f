export { default } from "./++TakeSentence.svelte.ts";
export * from "./++TakeSentence.svelte.ts";
