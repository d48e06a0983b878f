export { default } from "./++LiveLine.svelte.ts";
export * from "./++LiveLine.svelte.ts";
