export { default } from "./++BeatTools.svelte.ts";
export * from "./++BeatTools.svelte.ts";
