export { default } from "./++SuspectedDelay.svelte.ts";
export * from "./++SuspectedDelay.svelte.ts";
