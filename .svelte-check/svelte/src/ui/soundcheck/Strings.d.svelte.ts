export { default } from "./++Strings.svelte.ts";
export * from "./++Strings.svelte.ts";
