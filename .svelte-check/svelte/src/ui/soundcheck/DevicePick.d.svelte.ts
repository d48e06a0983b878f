export { default } from "./++DevicePick.svelte.ts";
export * from "./++DevicePick.svelte.ts";
