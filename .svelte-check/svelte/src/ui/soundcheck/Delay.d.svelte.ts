export { default } from "./++Delay.svelte.ts";
export * from "./++Delay.svelte.ts";
