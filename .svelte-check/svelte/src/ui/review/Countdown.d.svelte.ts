export { default } from "./++Countdown.svelte.ts";
export * from "./++Countdown.svelte.ts";
