export { default } from "./++PlayerSettings.svelte.ts";
export * from "./++PlayerSettings.svelte.ts";
