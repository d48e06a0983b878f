export { default } from "./++TakeStrip.svelte.ts";
export * from "./++TakeStrip.svelte.ts";
