export { default } from "./++Stage.svelte.ts";
export * from "./++Stage.svelte.ts";
