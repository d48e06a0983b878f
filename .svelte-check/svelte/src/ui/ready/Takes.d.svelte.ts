export { default } from "./++Takes.svelte.ts";
export * from "./++Takes.svelte.ts";
