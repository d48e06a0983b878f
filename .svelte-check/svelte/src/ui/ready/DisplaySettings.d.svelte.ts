export { default } from "./++DisplaySettings.svelte.ts";
export * from "./++DisplaySettings.svelte.ts";
