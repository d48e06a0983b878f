export { default } from "./++ChordNow.svelte.ts";
export * from "./++ChordNow.svelte.ts";
