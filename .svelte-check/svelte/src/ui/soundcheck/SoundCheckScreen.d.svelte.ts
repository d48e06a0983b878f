export { default } from "./++SoundCheckScreen.svelte.ts";
export * from "./++SoundCheckScreen.svelte.ts";
