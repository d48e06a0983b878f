export { default } from "./++SetList.svelte.ts";
export * from "./++SetList.svelte.ts";
