export { default } from "./++TakeAway.svelte.ts";
export * from "./++TakeAway.svelte.ts";
