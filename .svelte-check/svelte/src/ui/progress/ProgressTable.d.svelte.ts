export { default } from "./++ProgressTable.svelte.ts";
export * from "./++ProgressTable.svelte.ts";
