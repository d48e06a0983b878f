export { default } from "./++TakeLineDrawing.svelte.ts";
export * from "./++TakeLineDrawing.svelte.ts";
