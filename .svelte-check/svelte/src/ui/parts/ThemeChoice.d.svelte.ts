export { default } from "./++ThemeChoice.svelte.ts";
export * from "./++ThemeChoice.svelte.ts";
