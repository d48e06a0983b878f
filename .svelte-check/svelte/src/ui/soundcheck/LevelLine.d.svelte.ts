export { default } from "./++LevelLine.svelte.ts";
export * from "./++LevelLine.svelte.ts";
