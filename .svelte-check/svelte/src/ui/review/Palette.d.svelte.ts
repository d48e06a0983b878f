export { default } from "./++Palette.svelte.ts";
export * from "./++Palette.svelte.ts";
